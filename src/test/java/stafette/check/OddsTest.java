package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

class OddsTest {
  /** Peaks are rounded to thousandths, onsets to microseconds. */
  private static final double ROUNDED = 5e-4;

  private static final Instrument PIPE = Invented.instrument("pipe");
  private static final Technique TONGUING = PIPE.techniques().get(0);
  private static final Capability AT_84 = TONGUING.limit().at(Assurance.DEFAULT);

  @Property(tries = 200)
  void odds_lie_between_0_and_1(@ForAll long seed) {
    double odds = Judge.judge(RandomPlans.any(seed)).odds();
    assertTrue(0 <= odds && odds <= 1, "odds of " + odds);
  }

  @Test
  void one_player_at_exactly_the_limit_of_84_per_cent_manages_with_84_per_cent() {
    Plan plan = new Plan(Invented.brief(atPeak(), player("One")), List.of(new Segment(0, 0, 0, 6)));
    assertEquals(0.84, Judge.judge(plan).odds(), ROUNDED);
  }

  @Test
  void two_such_players_are_independent() {
    Plan plan =
        new Plan(
            Invented.brief(atPeak(9), player("One"), player("Two")),
            List.of(new Segment(0, 0, 0, 4), new Segment(1, 0, 4, 8)));
    assertEquals(0.84 * 0.84, Judge.judge(plan).odds(), ROUNDED);
  }

  @Test
  void a_player_with_two_segments_counts_once() {
    Player measured = Invented.player("Measured", PIPE, 12, 11, 9, 8);
    Plan plan =
        new Plan(
            Invented.brief(atPeak(21), player("One"), measured),
            List.of(new Segment(0, 0, 0, 6), new Segment(1, 0, 6, 14), new Segment(0, 0, 14, 20)));
    assertEquals(0.84, Judge.judge(plan).odds(), ROUNDED);
    assertEquals(0.7403, Judge.judge(plan).oddsAtHeadroom(), ROUNDED);
  }

  @Test
  void a_player_with_measured_limits_does_not_vary() {
    Player measured = Invented.player("Measured", PIPE, 12, 11, 9, 8);
    Plan plan = new Plan(Invented.brief(atPeak(), measured), List.of(new Segment(0, 0, 0, 6)));
    assertEquals(1, Judge.judge(plan).odds());
  }

  @Test
  void half_of_all_players_reach_the_mean() {
    Line line = at(7, Rational.of(12_000 * 15L, 1000));
    Plan plan = new Plan(Invented.brief(line, player("One")), List.of(new Segment(0, 0, 0, 6)));
    assertEquals(0.5, Judge.judge(plan).odds(), ROUNDED);
  }

  @Property(tries = 200)
  void five_per_cent_faster_the_odds_are_never_higher(@ForAll long seed) {
    Verdict verdict = Judge.judge(RandomPlans.any(seed));
    assertTrue(0 <= verdict.oddsAtHeadroom() && verdict.oddsAtHeadroom() <= verdict.odds());
  }

  /**
   * The same odds as those of a plan whose line goes faster, as long as everybody has rest; no more
   * than at the plan's own tempo, where notes take more breath.
   */
  @Property(tries = 100)
  void five_per_cent_faster_the_odds_are_those_of_the_faster_plan(@ForAll long seed) {
    Plan plan = RandomPlans.holding(seed);
    TempoMark present = plan.line().tempo().at(plan.line().stroke(0).onset());
    Verdict faster = Judge.judge(AtTempo.of(plan, present.times(Rational.of(21, 20))));
    boolean nobody =
        faster.findings().stream().anyMatch(finding -> finding.kind() == Finding.FindingKind.REST);
    Verdict verdict = Judge.judge(plan);
    assertEquals(
        nobody ? 0 : Math.min(verdict.odds(), faster.odds()), verdict.oddsAtHeadroom(), ROUNDED);
  }

  /** 12 less 0.99446 times 1.5 is 10.508; 1.05 times that lies 0.6442 deviations below 12. */
  @Test
  void at_the_limit_of_84_per_cent_five_per_cent_more_leaves_74_per_cent() {
    Plan plan = new Plan(Invented.brief(atPeak(), player("One")), List.of(new Segment(0, 0, 0, 6)));
    assertEquals(0.7403, Judge.judge(plan).oddsAtHeadroom(), ROUNDED);
  }

  /** Half a second's rest at 120 is less at 126, and half a second is needed. */
  @Test
  void where_rest_gets_too_short_nobody_manages() {
    Player slowest = player("One");
    Plan plan =
        new Plan(
            Invented.brief(Invented.line(1, 4, 120), slowest, player("Two")),
            List.of(new Segment(0, 0, 0, 7), new Segment(1, 0, 7, 12), new Segment(0, 0, 12, 15)));
    assertTrue(Judge.judge(plan).odds() > 0.9);
    assertEquals(0, Judge.judge(plan).oddsAtHeadroom());
  }

  /** Seven sixteenths as fast as the peak of the 84 per cent. */
  private static Line atPeak() {
    return atPeak(7);
  }

  private static Line atPeak(int strokes) {
    return at(strokes, Rational.of(AT_84.peakMilli() * 15L, 1000));
  }

  private static Line at(int strokes, Rational quartersPerMinute) {
    return Invented.line(strokes, 4, 120, i -> Invented.A4)
        .at(TempoMap.constant(new TempoMark(BeatUnit.QUARTER, quartersPerMinute)));
  }

  private static Player player(String name) {
    return new Player(name, PIPE, Optional.empty(), List.of(new Skill(TONGUING, AT_84)), List.of());
  }
}
