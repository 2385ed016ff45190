package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stafette.check.Verdict;
import stafette.picture.ink.Box;
import stafette.picture.ink.Hatching;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.Staff;
import stafette.picture.notes.TimeSignature;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Stroke;
import stafette.time.Bar;
import stafette.time.Span;

/**
 * The pieces that a picture of a relay is made of, for whoever lays its lanes out otherwise than
 * pages do: a screen. Both look alike, since both are these shapes.
 */
public final class RelayPieces {
  private final RelayContent relay;
  private final StaffLines staffs;

  private RelayPieces(RelayContent relay) {
    this.relay = relay;
    staffs = StaffLines.of(relay);
  }

  public static RelayPieces of(Plan plan, Verdict verdict) {
    return new RelayPieces(RelayContent.of(plan, verdict, Optional.empty()));
  }

  /** All bars in which something of the relay sounds. */
  public List<Bar> bars() {
    return relay.bars();
  }

  /** The time signature that begins with a bar: "6/8"; empty where it goes on. */
  public Optional<String> newMeter(Bar bar) {
    return staffs.newMeter(bar).map(meter -> String.join("/", TimeSignature.figures(meter)));
  }

  /** From the first stroke that the player of a segment really plays to the end of the last. */
  public Span segmentSpan(int segment) {
    return relay.span(relay.plan().segments().get(segment));
  }

  /** What both play at a handoff; where they share nothing, the silence between. */
  public Span handoffSpan(int handoff) {
    return relay.span(relay.plan().handoffs().get(handoff));
  }

  /**
   * The ribbon of a segment within a row.
   *
   * @param half half the ribbon's height
   * @param middle the middle of any segment's lane
   */
  public List<Mark> ribbon(int segment, BarRow row, double half, ToDoubleFunction<Segment> middle) {
    return new Ribbons(relay, segment, row, half, middle)
        .pieces().stream().<Mark>map(piece -> new Mark.Fill(piece.path(), Ink.FULL)).toList();
  }

  /**
   * The ways from lane to lane at a handoff: bridges over what is shared, threads over silence.
   *
   * @param music what stands on the lanes, if that is music: then only edges are drawn, and none
   *     across it
   */
  public List<Mark> ways(
      int handoff,
      BarRow row,
      double half,
      ToDoubleFunction<Segment> middle,
      Optional<List<Box>> music) {
    List<Mark> marks = new ArrayList<>();
    Span span = handoffSpan(handoff);
    boolean shares = relay.plan().handoffs().get(handoff).shared() > 0;
    for (RelayContent.Link link : relay.links()) {
      if (link.handoff() == handoff) {
        Bridge bridge =
            new Bridge(
                row.xWithin(span.start()),
                row.xWithin(span.end()),
                middle.applyAsDouble(link.leaves()),
                middle.applyAsDouble(link.enters()),
                half,
                rounding(link.leaves()),
                rounding(link.enters()));
        marks.addAll(
            shares
                ? music.map(bridge::edges).orElseGet(bridge::marks)
                : bridge.thread(music.orElse(List.of())));
      }
    }
    return marks;
  }

  private static double rounding(Segment segment) {
    return segment.pattern() == Pattern.ALL ? Bridge.ROUND : 0;
  }

  /** What the score already gives somebody. */
  public static List<Mark> hatching(Box box) {
    return Hatching.of(box);
  }

  /** The notes that a player plays within a row, without the staff that they stand on. */
  public List<Mark> notes(int player, BarRow row, double staffTop) {
    return staffs.plays(player, row) ? staffs.notes(player, row, staffTop) : List.of();
  }

  /** The five lines of a player's staff. */
  public List<Mark> staff(int player, double staffTop, double left, double right) {
    return staffs.wholeStaff(player, staffTop).lines(left, right);
  }

  /**
   * Clef and key signature of a player's staff, on lines of their own.
   *
   * @param bar in which the key holds
   * @param left where they begin
   */
  public List<Mark> clefAndKey(int player, Bar bar, double staffTop, double left) {
    List<Mark> marks =
        new ArrayList<>(staff(player, staffTop, left, left + clefAndKeyWidth(player, bar)));
    marks.addAll(staffs.clefAndKey(player, bar, staffTop, left));
    return marks;
  }

  public double clefAndKeyWidth(int player, Bar bar) {
    return staffs.clefAndKeyWidth(player, bar);
  }

  /**
   * What a player plays in one bar, all that its height depends on.
   *
   * @param staff with its top line at zero
   * @param strokes that begin in the bar
   */
  public record BarOfNotes(int player, Bar bar, Staff staff, List<Stroke> strokes) {
    public BarOfNotes {
      strokes = List.copyOf(strokes);
    }
  }

  /** All bars in which a player plays something. */
  public List<BarOfNotes> barsOfNotes(int player) {
    Map<Bar, List<Stroke>> byBar = new LinkedHashMap<>();
    for (Segment segment : relay.plan().segmentsOf(player)) {
      Played played = relay.plan().played(segment);
      for (Stroke stroke : played.all()) {
        Bar bar = played.line().bars().at(stroke.onset());
        byBar.computeIfAbsent(bar, each -> new ArrayList<>()).add(stroke);
      }
    }
    Staff staff = staffs.wholeStaff(player, 0);
    return byBar.entrySet().stream()
        .map(entry -> new BarOfNotes(player, entry.getKey(), staff, entry.getValue()))
        .toList();
  }

  /** From the top line of the staff to the highest and the lowest ink; at least the staff. */
  public Box reach(BarOfNotes music) {
    BarRow row = new BarRow(List.of(music.bar()), 0, staffs.pointsPerQuarter(), 0);
    return notes(music.player(), row, 0).stream()
        .map(Mark::bounds)
        .reduce(new Box(0, 0, row.right(), 4 * staffs.space()), Box::with);
  }

  /** The least width of a quarter note at which no two notes touch. */
  public double pointsPerQuarterForMusic() {
    return staffs.pointsPerQuarter();
  }
}
