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
import stafette.plan.GivenStretch;
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
    return Costing.of(new Plan(Invented.brief(LINE, PIPER, HORNIST.proposed()), List.of(segments)));
  }

  /**
   * Piper: of 16 strokes after the first the third has u = 0.8 / 1.1, and costs 0.050; 13 have u =
   * 0.8 and cost 6 · (1/3)² each, 8.667; f = 0.1 at the end is free. Hornist, u = 1: the second has
   * 1 / 1.25, 0.667; the third 1 / 1.1, 2.915; 12 cost 6 each; 16 strokes out of the comfortable
   * range cost 2 each. Handoff: 12 less 4 of cover; 12 after one bar of a phrase; blend 20 and 5 ·
   * (5 − 3).
   */
  @Test
  void a_plan_part_by_part() {
    Cost cost = cost(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 31));
    assertEquals(List.of(new SegmentCost(9, 0, 0), new SegmentCost(76, 0, 32)), cost.segments());
    assertEquals(List.of(new HandoffCost(8, 0, 0, 12, 0, 30)), cost.handoffs());
    assertEquals(25, cost.players(), "only one of them was proposed");
    assertEquals(9 + 76 + 32 + 50 + 25, cost.total());
  }

  @Test
  void a_player_who_was_named_is_able_and_has_nothing_to_play_is_paid_for() {
    Segment all = new Segment(0, 0, 0, 31);
    Player tired = Invented.player("Tired", PIPE, 7, 5, 20, 8);
    assertEquals(30, idle(Invented.player("Other", PIPE, 10, 7, 20, 8), all));
    assertEquals(0, idle(Invented.player("Other", PIPE, 10, 7, 20, 8).proposed(), all));
    assertEquals(0, idle(tired, all), "no bar of it goes");
    Player busy =
        Invented.player("Busy", PIPE, 10, 7, 20, 8)
            .busyWith(List.of(new GivenStretch(-1_000_000, 9_000_000, List.of(0L))));
    assertEquals(30, idle(busy, all), "what the score gives is left aside");
  }

  private static int idle(Player other, Segment... segments) {
    return Costing.of(new Plan(Invented.brief(LINE, PIPER, other), List.of(segments))).idle();
  }

  @Test
  void entries_and_landings_are_paid_by_their_place_in_the_bar() {
    assertEquals(new HandoffCost(12, 5, 0, 12, 0, 30), handoffAt(8, 8), "on a beat");
    assertEquals(new HandoffCost(12, 40, 30, 12, 0, 30), handoffAt(10, 10), "on half a beat");
    assertEquals(new HandoffCost(12, 100, 80, 12, 0, 30), handoffAt(11, 11), "elsewhere");
  }

  @Test
  void strokes_shared_beside_the_landing_note_are_paid() {
    assertEquals(new HandoffCost(8, 100, 0, 12, 15, 30), handoffAt(13, 16));
  }

  @Test
  void a_handoff_after_four_bars_is_free_and_after_two_costs_half() {
    Line line = Invented.line(8, 4, 120);
    assertEquals(12, Costing.phrase(line, 16, 16, Invented.WEIGHTS), "one bar");
    assertEquals(6, Costing.phrase(line, 32, 32, Invented.WEIGHTS), "two");
    assertEquals(0, Costing.phrase(line, 64, 64, Invented.WEIGHTS), "four");
    assertEquals(12, Costing.phrase(line, 68, 68, Invented.WEIGHTS), "inside a bar");
  }

  /** A turn of a quarter of a bar: 24 · (2 − 0.5) / 2 = 18; of a whole one nothing. */
  @Test
  void a_turn_shorter_than_a_bar_or_two_seconds_costs_by_what_it_lacks() {
    assertEquals(18, Costing.shortPoints(LINE, 0, 4, Invented.WEIGHTS));
    assertEquals(0, Costing.shortPoints(LINE, 0, 16, Invented.WEIGHTS));
    Line slow = Invented.line(2, 4, 60);
    assertEquals(0, Costing.shortPoints(slow, 0, 8, Invented.WEIGHTS), "two seconds");
    assertEquals(24, Costing.shortPoints(LINE, 3, 3, Invented.WEIGHTS), "one note, handed on");
  }

  /** 120 · ((0.7 − 0.4) / 0.6)² = 30 and 120 · ((0.75 − 0.5) / 0.5)² = 30; below the knees 0. */
  @Test
  void what_is_spent_at_the_end_costs_from_its_knee_on() {
    assertEquals(30_000_000, Strain.endMicropoints(0.7, 0, Invented.WEIGHTS));
    assertEquals(30_000_000, Strain.endMicropoints(0, 0.75, Invented.WEIGHTS));
    assertEquals(30_000_000, Strain.endMicropoints(0.7, 0.6, Invented.WEIGHTS), "the larger");
    assertEquals(0, Strain.endMicropoints(0.4, 0.5, Invented.WEIGHTS));
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
    assertEquals(first.strain(), second.strain());
    assertEquals(2, first.shortTurn(), "one sixteenth short of a bar, to its landing note");
    assertEquals(0, second.shortTurn(), "the last turn lasts to the end of its sound");
  }
}
