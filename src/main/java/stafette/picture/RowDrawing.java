package stafette.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.plan.Busy;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.time.Position;
import stafette.time.Span;

/** Draws one row of the relay: lanes, what the score gives, ribbon, bridges, labels. */
final class RowDrawing {
  private static final double LABEL_SIZE = 6.4;
  private static final double NAME_SIZE = 8.6;
  private static final double LABEL_AIR = 2.6;

  private final Relay relay;
  private final Row row;
  private final Map<Integer, Double> middles = new LinkedHashMap<>();
  private final double half;
  private final double top;
  private final Labels labels;

  /**
   * A row to be drawn.
   *
   * @param lanes from top to bottom
   * @param half half the ribbon's height
   * @param top where the row begins on the paper
   */
  RowDrawing(Relay relay, Row row, List<Lane> lanes, double half, double top) {
    this.relay = relay;
    this.row = row;
    this.half = half;
    this.top = top;
    lanes.forEach(lane -> middles.put(lane.player(), top + lane.y()));
    labels = new Labels(new Box(row.left(), top, row.right(), Double.POSITIVE_INFINITY));
  }

  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>(Ruler.of(relay.line(), row, highest(), lowest(), top));
    middles.forEach((player, y) -> addLane(player, y, marks));
    List<Mark> bridges = new ArrayList<>();
    List<Handoff> handoffs = relay.plan().handoffs();
    for (int i = 0; i < handoffs.size(); i++) {
      addHandoff(i, handoffs.get(i), bridges);
    }
    List<Segment> segments = relay.plan().segments();
    List<Mark> ribbons = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      if (isHere(relay.span(segments.get(i)))) {
        ribbons.add(segment(i, segments.get(i)));
      }
    }
    marks.addAll(bridges);
    marks.addAll(ribbons);
    return marks;
  }

  private double highest() {
    return middles.values().stream().mapToDouble(y -> y).min().orElse(top) - half * 1.6;
  }

  private double lowest() {
    return middles.values().stream().mapToDouble(y -> y).max().orElse(top) + half * 1.6;
  }

  private void addLane(int player, double y, List<Mark> marks) {
    Player who = relay.plan().brief().players().get(player);
    String name = who.name();
    double size = Math.min(NAME_SIZE, half * 1.7);
    String shown = shortened(name, size, row.left() - Paper.MARGIN - 8);
    double x = row.left() - 8 - Face.BOLD.width(shown, size);
    marks.add(new Mark.Words(shown, x, y + size * 0.36, size, Face.BOLD, Ink.FULL));
    marks.add(new Mark.Stroke(Path.line(row.left(), y, row.right(), y), 0.5, Ink.FAINT));
    for (Busy busy : who.busy()) {
      double from = row.xWithin(relay.line(), busy.fromMicros());
      double to = row.xWithin(relay.line(), busy.toMicros());
      if (to > from) {
        marks.addAll(Hatching.of(new Box(from, y - half * 0.75, to, y + half * 0.75)));
      }
    }
  }

  private static String shortened(String name, double size, double room) {
    String text = name;
    while (text.length() > 1 && Face.BOLD.width(text, size) > room) {
      text = text.substring(0, text.length() - 2).stripTrailing() + "…";
    }
    return text;
  }

  private void addHandoff(int index, Handoff handoff, List<Mark> marks) {
    Span span = relay.span(handoff);
    boolean here =
        span.start().equals(span.end()) ? row.span().contains(span.start()) : isHere(span);
    if (!here || handoff.leaves().player() == handoff.enters().player()) {
      return;
    }
    Bridge bridge =
        new Bridge(
            row.xWithin(span.start()),
            row.xWithin(span.end()),
            middle(handoff.leaves()),
            middle(handoff.enters()),
            half);
    boolean shares = handoff.shared() > 0;
    labels.take(bridge.box());
    marks.add(
        new Mark.Group(
            id("handoff", index, span),
            relay.name(handoff.leaves().player())
                + " hands over to "
                + relay.name(handoff.enters().player())
                + " at "
                + relay.at(handoff.enters().first()),
            handoffData(handoff, bridge),
            shares ? bridge.marks() : bridge.thread()));
  }

  private Map<String, String> handoffData(Handoff handoff, Bridge bridge) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put("leaves", relay.name(handoff.leaves().player()));
    data.put("enters", relay.name(handoff.enters().player()));
    data.put("first", Integer.toString(handoff.enters().first()));
    data.put("last", Integer.toString(handoff.leaves().last()));
    data.put("from", relay.at(handoff.enters().first()));
    data.put("to", relay.at(handoff.leaves().last()));
    data.put("left", SvgInk.figure(bridge.left()));
    data.put("right", SvgInk.figure(bridge.right()));
    return data;
  }

  private Mark segment(int index, Segment segment) {
    Span span = relay.span(segment);
    List<Mark> marks = new ArrayList<>();
    for (Ribbon ribbon : new Ribbons(relay, row, half).of(index, middle(segment), this::middle)) {
      marks.add(new Mark.Fill(ribbon.path(), Ink.FULL));
    }
    label(index, segment).ifPresent(marks::add);
    Plan plan = relay.plan();
    return new Mark.Group(
        id("segment", index, span),
        plan.player(segment).name()
            + ", "
            + plan.skill(segment).technique().name()
            + ", "
            + relay.at(segment.first())
            + " to "
            + relay.at(segment.last()),
        segmentData(index, segment, span),
        marks);
  }

  private Map<String, String> segmentData(int index, Segment segment, Span span) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put("player", relay.plan().player(segment).name());
    data.put("technique", relay.plan().skill(segment).technique().name());
    data.put("first", Integer.toString(segment.first()));
    data.put("last", Integer.toString(segment.last()));
    data.put("from", relay.at(segment.first()));
    data.put("to", relay.at(segment.last()));
    data.put("strain", Relay.percent(strain(index)));
    data.put("left", SvgInk.figure(row.xWithin(span.start())));
    data.put("right", SvgInk.figure(row.xWithin(span.end())));
    return data;
  }

  private double strain(int index) {
    return relay.verdict().segments().get(index).strain();
  }

  /** How near its limit, and with which technique, where a segment begins and words fit. */
  private Optional<Mark.Words> label(int index, Segment segment) {
    Span span = relay.span(segment);
    if (!row.span().contains(span.start())) {
      return Optional.empty();
    }
    double left = row.xWithin(span.start());
    double room = row.xWithin(span.end()) - left;
    String strain = Relay.percent(strain(index));
    String technique = relay.plan().skill(segment).technique().name();
    List<Mark.Words> choices = new ArrayList<>();
    for (String text : List.of(strain + "  " + technique, strain)) {
      for (double indent : new double[] {2, 10}) {
        for (double y : new double[] {above(segment), below(segment)}) {
          if (indent + Face.PLAIN.width(text, LABEL_SIZE) <= room) {
            choices.add(new Mark.Words(text, left + indent, y, LABEL_SIZE, Face.PLAIN, Ink.SOFT));
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
    return middle(segment) + half + LABEL_AIR + LABEL_SIZE * 0.72;
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
    return Optional.of(
        span.start().isBefore(start)
            ? name + "-from-bar-" + (row.bars().get(0).index() + 1)
            : name);
  }

  private boolean isHere(Span span) {
    return span.overlaps(row.span());
  }
}
