package stafette.desktop.relay;

import java.util.List;
import java.util.stream.IntStream;
import stafette.check.Reserves;
import stafette.check.Strain;
import stafette.check.Verdict;
import stafette.desktop.texts.Texts;
import stafette.picture.RelayPieces;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * A plan with all that its picture needs, worked out once.
 *
 * @param reserves for each player
 * @param bars all in which something sounds
 * @param clock from times to places
 * @param rhythm of the first relay's line
 * @param texts for what stands in words
 */
record ShownPlan(
    Plan plan,
    Verdict verdict,
    RelayPieces pieces,
    List<Reserves> reserves,
    List<Bar> bars,
    Clock clock,
    Rhythm rhythm,
    Texts texts) {
  ShownPlan {
    reserves = List.copyOf(reserves);
    bars = List.copyOf(bars);
  }

  static ShownPlan of(Plan plan, Verdict verdict, Texts texts) {
    RelayPieces pieces = RelayPieces.of(plan, verdict);
    Clock clock = new Clock(plan.line(), pieces.bars());
    Rhythm rhythm = new Rhythm(plan.line());
    return new ShownPlan(
        plan, verdict, pieces, Reserves.of(plan), pieces.bars(), clock, rhythm, texts);
  }

  List<Segment> segments() {
    return plan.segments();
  }

  int lanes() {
    return plan.brief().players().size();
  }

  double strain(int segment) {
    return verdict.segments().get(segment).strain();
  }

  /** What can stand beside a segment, the fullest first: "96 % double tonguing". */
  List<String> labels(int segment) {
    String strain = Strain.percent(strain(segment));
    String technique = texts.say(plan.skill(segments().get(segment)).technique());
    return List.of(strain + "  " + technique, strain);
  }

  /** From where on a segment is not bridged to the one before. */
  Position free(int segment) {
    return handoffs()
        .filter(
            handoff ->
                plan.handoffs().get(handoff).enters().segments().contains(segments().get(segment)))
        .mapToObj(handoff -> pieces.handoffSpan(handoff).end())
        .findFirst()
        .orElseGet(() -> pieces.segmentSpan(segment).start());
  }

  /** Whether notes would not touch one another. */
  boolean hasRoomForMusic(TimeScale time) {
    return time.pixelsPerQuarter() >= pieces.pointsPerQuarterForMusic() * LaneScale.MUSIC;
  }

  /** The handoffs among all of the plan, by number. */
  IntStream handoffs() {
    return IntStream.range(0, plan.handoffs().size());
  }
}
