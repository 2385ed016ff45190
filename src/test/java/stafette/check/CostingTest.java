package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Source;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Transposition;

/** Costs reckoned by hand from the weights of {@link Invented#WEIGHTS}. */
class CostingTest {
  private static final Instrument PIPE = Invented.instrument("pipe");

  /** A brass instrument, five decibels louder, on which A4 lies above the comfortable range. */
  private static final Instrument HORN =
      new Instrument(
          "horn",
          List.of(),
          "brass",
          Optional.of(new Range(48, 96)),
          Optional.of(new Range(48, 68)),
          Transposition.NONE,
          "G2",
          95,
          Optional.empty(),
          61,
          List.of(Invented.tonguing("tonguing")),
          Source.COMMON_PRACTICE);

  private static final Player PIPER = Invented.player("Piper", PIPE, 10, 7, 20, 8);
  private static final Player HORNIST = Invented.player("Hornist", HORN, 8, 7, 20, 8);

  /** Two bars of sixteenths at 120, 8 a second; four points of cover on the second bar. */
  private static final Line LINE = covered();

  private static Line covered() {
    Line plain = Invented.line(2, 4, 120);
    List<Integer> cover = IntStream.range(0, plain.count()).mapToObj(j -> j == 16 ? 4 : 0).toList();
    return new Line(plain.source(), plain.strokes(), cover, plain.bars(), plain.tempo());
  }

  private static Cost cost(Segment... segments) {
    return Costing.of(new Plan(Invented.brief(LINE, PIPER, HORNIST), List.of(segments)));
  }

  /**
   * Piper: 16 strokes at u = 0.8 cost 6 · (1/3)² each, 10.667; f = 16 · (1 − 7/8) / 20 = 0.1 at the
   * end costs 0.4. Hornist: 15 strokes at u = 1 cost 90; f = 15/8/20 costs 0.35; 16 strokes out of
   * the comfortable range cost 2 each. Handoff: 12 less 4 of cover; blend 20 and 5 · (5 − 3).
   */
  @Test
  void a_plan_part_by_part() {
    Cost cost = cost(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 31));
    assertEquals(List.of(new SegmentCost(11, 0), new SegmentCost(90, 32)), cost.segments());
    assertEquals(List.of(new HandoffCost(8, 0, 0, 0, 30)), cost.handoffs());
    assertEquals(50, cost.players());
    assertEquals(11 + 90 + 32 + 38 + 50, cost.total());
  }

  @Test
  void entries_and_landings_are_paid_by_their_place_in_the_bar() {
    assertEquals(new HandoffCost(12, 5, 0, 0, 30), handoffAt(8, 8), "on a beat");
    assertEquals(new HandoffCost(12, 40, 30, 0, 30), handoffAt(10, 10), "on half a beat");
    assertEquals(new HandoffCost(12, 100, 80, 0, 30), handoffAt(11, 11), "elsewhere");
  }

  @Test
  void strokes_shared_beside_the_landing_note_are_paid() {
    assertEquals(new HandoffCost(8, 100, 0, 15, 30), handoffAt(13, 16));
  }

  private static HandoffCost handoffAt(int entry, int landing) {
    return cost(new Segment(0, 0, 0, landing), new Segment(1, 0, entry, 31)).handoffs().get(0);
  }

  @Test
  void the_same_instrument_blends_for_nothing() {
    Player second = Invented.player("Second", PIPE, 10, 7, 20, 8);
    Plan plan =
        new Plan(
            Invented.brief(LINE, PIPER, second),
            List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 31)));
    assertEquals(0, Costing.of(plan).handoffs().get(0).blend());
  }

  @Test
  void strain_is_rounded_half_up_once() {
    assertEquals(0, Strain.points(499_999));
    assertEquals(1, Strain.points(500_000));
    assertEquals(1, Strain.points(1_499_999));
  }

  @Test
  void strain_is_as_if_the_player_came_fresh() {
    Brief brief = Invented.brief(LINE, PIPER);
    SegmentCost first = Costing.segment(brief, new Segment(0, 0, 0, 15));
    SegmentCost second = Costing.segment(brief, new Segment(0, 0, 16, 31));
    assertEquals(first, second);
  }
}
