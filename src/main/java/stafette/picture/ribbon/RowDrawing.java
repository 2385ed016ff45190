package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.check.ShownTechnique;
import stafette.check.Strain;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Hatching;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Labels;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.picture.ink.Path;
import stafette.picture.ink.SvgInk;
import stafette.picture.notes.BarRow;
import stafette.plan.GivenStretch;
import stafette.plan.Handoff;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.time.Position;
import stafette.time.Span;

/** Draws one row of the relay: lanes, what the score gives, ribbon, bridges, labels. */
final class RowDrawing {
  private static final double LABEL_SIZE = 6.4;
  static final double NAME_SIZE = 8.6;
  private static final double LABEL_AIR = 2.6;
  private static final double LABEL_AIR_BELOW = 2;

  private final RelayContent relay;
  private final BarRow row;
  private final Map<Integer, Double> middles = new LinkedHashMap<>();
  private final Lanes lanes;
  private final double half;
  private final double top;
  private final Labels labels;
  private final List<Box> music;

  /**
   * A row to be drawn.
   *
   * @param top where the row begins on the paper
   * @param music the notes and rests in it, which nothing may cross
   */
  RowDrawing(RelayContent relay, BarRow row, Lanes lanes, double top, List<Box> music) {
    this.music = List.copyOf(music);
    this.relay = relay;
    this.row = row;
    this.lanes = lanes;
    this.half = lanes.half();
    this.top = top;
    lanes.lanes().forEach(lane -> middles.put(lane.player(), top + lane.y()));
    Box room = new Box(row.left(), top + lanes.top(), row.right(), top + lanes.height());
    labels = new Labels(room);
    for (Lane lane : lanes.lanes()) {
      lane.staffTop()
          .ifPresent(
              staff ->
                  labels.take(
                      new Box(
                          row.left(),
                          top + lane.y() + half + 1,
                          row.right(),
                          top + staff + lanes.staffHeight())));
    }
  }

  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>(new Ruler(relay, row, lanes, top).marks());
    middles.forEach((player, y) -> marks.add(lane(player, y)));
    for (int i = 0; i < relay.plan().handoffs().size(); i++) {
      addHandoff(i, marks);
    }
    List<Segment> segments = relay.plan().segments();
    for (int i = 0; i < segments.size(); i++) {
      if (isHere(relay.span(segments.get(i)))) {
        marks.add(segment(i, segments.get(i)));
      }
    }
    return marks;
  }

  private Mark lane(int player, double y) {
    List<Mark> marks = new ArrayList<>();
    Player who = relay.plan().brief().players().get(player);
    String name = who.name();
    double size = Math.min(NAME_SIZE, half * 1.7);
    double start = row.left() - lanes.signs();
    String shown = Face.BOLD.fitted(name, size, start - Paper.MARGIN - 9);
    double x = start - 9 - Face.BOLD.width(shown, size);
    marks.add(new Mark.Lettering(shown, x, y + size * 0.36, size, Face.BOLD, Ink.FULL));
    marks.add(new Mark.Outline(Path.line(row.left(), y, row.right(), y), 0.5, Ink.FAINT));
    for (GivenStretch busy : who.busy()) {
      double from = row.xWithin(relay.line(), busy.fromMicros());
      double to = row.xWithin(relay.line(), busy.toMicros());
      if (to > from) {
        marks.addAll(Hatching.of(new Box(from, y - half * 0.75, to, y + half * 0.75)));
      }
    }
    String title = name + ", " + who.instrument().name();
    return new Mark.MarkGroup(laneId("lane", player), title, laneData(player), marks);
  }

  /** What a player plays here, as written. */
  Mark music(int player, List<Mark> written) {
    String title = relay.name(player) + ", as written";
    return new Mark.MarkGroup(laneId("music", player), title, laneData(player), written);
  }

  private Optional<String> laneId(String kind, int player) {
    String name = kind + "-" + (player + 1);
    boolean first = row.bars().get(0).equals(relay.bars().get(0));
    return Optional.of(first ? name : name + fromBar());
  }

  private Map<String, String> laneData(int player) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put("player", relay.name(player));
    data.put("left", SvgInk.figure(row.left()));
    data.put("right", SvgInk.figure(row.right()));
    return data;
  }

  private String fromBar() {
    return "-from-bar-" + (row.bars().get(0).index() + 1);
  }

  private void addHandoff(int index, List<Mark> marks) {
    Handoff handoff = relay.plan().handoffs().get(index);
    Span span = relay.span(handoff);
    boolean empty = span.start().equals(span.end());
    if (!(empty ? row.span().contains(span.start()) : isHere(span))) {
      return;
    }
    List<Mark> ways = new ArrayList<>();
    for (RelayContent.Link link : relay.links()) {
      if (link.handoff() == index) {
        Bridge bridge = bridge(span, link);
        labels.take(bridge.box());
        ways.addAll(
            handoff.shared() <= 0
                ? bridge.thread(music)
                : lanes.haveMusic() ? bridge.edges(music) : bridge.marks());
      }
    }
    String title =
        relay.plan().names(handoff.leaves())
            + (handoff.leaves().isHocket() ? " hand over to " : " hands over to ")
            + relay.plan().names(handoff.enters())
            + " at "
            + relay.at(handoff, handoff.enters().first()).inShort();
    marks.add(new Mark.MarkGroup(id("handoff", index, span), title, data(handoff, span), ways));
  }

  private Bridge bridge(Span span, RelayContent.Link link) {
    double left = row.xWithin(span.start());
    double right = row.xWithin(span.end());
    return new Bridge(
        left,
        right,
        middle(link.leaves()),
        middle(link.enters()),
        half,
        rounding(link.leaves(), left - row.left()),
        rounding(link.enters(), row.right() - right));
  }

  /** None beside the short units of a hocket, and no more than there is room in the row. */
  private double rounding(Segment segment, double room) {
    boolean whole = segment.pattern() == Pattern.ALL;
    double most = lanes.haveMusic() ? Bridge.ROUND_BY_MUSIC : Bridge.ROUND;
    return whole ? Math.max(0, Math.min(most, room)) : 0;
  }

  private Map<String, String> data(Handoff handoff, Span span) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put("leaves", relay.plan().names(handoff.leaves()));
    data.put("enters", relay.plan().names(handoff.enters()));
    data.put("first", Integer.toString(handoff.enters().first()));
    data.put("last", Integer.toString(handoff.leaves().last()));
    data.put("from", relay.at(handoff, handoff.enters().first()).dotted());
    data.put("to", relay.at(handoff, handoff.leaves().last()).dotted());
    data.put("left", SvgInk.figure(row.xWithin(span.start())));
    data.put("right", SvgInk.figure(row.xWithin(span.end())));
    return data;
  }

  private Mark segment(int index, Segment segment) {
    Span span = relay.span(segment);
    List<Mark> marks = new ArrayList<>();
    for (Ribbon ribbon : new Ribbons(relay, index, row, half, this::middle).pieces()) {
      marks.add(new Mark.Fill(ribbon.path(), Ink.FULL));
    }
    label(index, segment).ifPresent(marks::add);
    Plan plan = relay.plan();
    return new Mark.MarkGroup(
        id("segment", index, span),
        plan.player(segment).name()
            + ", "
            + ShownTechnique.names(plan, segment)
            + ", "
            + relay.at(segment, segment.first()).inShort()
            + " to "
            + relay.at(segment, segment.last()).inShort(),
        data(index, segment, span),
        marks);
  }

  private Map<String, String> data(int index, Segment segment, Span span) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put("player", relay.plan().player(segment).name());
    data.put("technique", ShownTechnique.names(relay.plan(), segment));
    data.put("first", Integer.toString(segment.first()));
    data.put("last", Integer.toString(segment.last()));
    data.put("from", relay.at(segment, segment.first()).dotted());
    data.put("to", relay.at(segment, segment.last()).dotted());
    data.put("strain", Strain.percent(strain(index)));
    data.put("left", SvgInk.figure(row.xWithin(span.start())));
    data.put("right", SvgInk.figure(row.xWithin(span.end())));
    return data;
  }

  private double strain(int index) {
    return relay.verdict().segments().get(index).strain();
  }

  /** How near its limit, and with which technique, where a segment begins and words fit. */
  private Optional<Mark.Lettering> label(int index, Segment segment) {
    Span span = relay.span(segment);
    if (!row.span().contains(span.start())) {
      return Optional.empty();
    }
    double left = row.xWithin(span.start());
    double room = row.xWithin(span.end()) - left;
    String strain = Strain.percent(strain(index));
    String technique = relay.say(ShownTechnique.inWords(relay.plan(), segment));
    List<Mark.Lettering> choices = new ArrayList<>();
    for (String text : List.of(strain + "  " + technique, strain)) {
      for (double indent : new double[] {2, 10, 19, 28}) {
        for (double y : new double[] {above(segment), below(segment)}) {
          if (indent + Face.PLAIN.width(text, LABEL_SIZE) <= room) {
            choices.add(
                new Mark.Lettering(text, left + indent, y, LABEL_SIZE, Face.PLAIN, Ink.SOFT));
          }
        }
      }
    }
    return labels.first(choices);
  }

  private double above(Segment segment) {
    return middle(segment) - half - LABEL_AIR;
  }

  private double below(Segment segment) {
    return middle(segment) + half + LABEL_AIR_BELOW + LABEL_SIZE * 0.72;
  }

  private double middle(Segment segment) {
    Double y = middles.get(segment.player());
    if (y == null) {
      throw new IllegalStateException("a lane for each player who plays: " + segment);
    }
    return y;
  }

  /** A thing that goes on in another row has its plain name where it begins. */
  private Optional<String> id(String kind, int index, Span span) {
    Position start = row.span().start();
    String name = kind + "-" + (index + 1);
    return Optional.of(span.start().isBefore(start) ? name + fromBar() : name);
  }

  private boolean isHere(Span span) {
    return span.overlaps(row.span());
  }
}
