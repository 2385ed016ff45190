package stafette.check.join;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import stafette.check.RandomPlans;
import stafette.limits.Instrument;
import stafette.plan.Handoff;
import stafette.plan.LevelSteps;
import stafette.plan.Plan;
import stafette.score.Dynamic;
import stafette.words.Sentence;

/** What holds of the reports on any plan. */
class JoinPropertiesTest {
  @Property(tries = 300)
  void there_is_one_report_for_each_handoff_in_order(@ForAll long seed) {
    Plan plan = RandomPlans.any(seed);
    List<Handoff> reported = JoinReport.of(plan).stream().map(JoinReport::handoff).toList();
    assertEquals(plan.handoffs(), reported);
  }

  @Property(tries = 300)
  void advice_names_just_what_the_reports_have_to_do(@ForAll long seed) {
    Plan plan = RandomPlans.any(seed);
    Set<Sentence> toDo =
        JoinReport.of(plan).stream()
            .flatMap(join -> join.toDo().stream())
            .collect(Collectors.toSet());
    List<JoinAdvice> advice = JoinAdvice.of(plan);
    assertEquals(toDo, advice.stream().map(JoinAdvice::what).collect(Collectors.toSet()));
    assertEquals(toDo.size(), advice.size());
    assertTrue(advice.stream().noneMatch(each -> each.at().isEmpty()));
  }

  @Property
  void a_balance_makes_up_for_the_difference_within_half_a_step_where_dynamics_reach(
      @ForAll @DoubleRange(min = 70, max = 104) double one,
      @ForAll @DoubleRange(min = 70, max = 104) double other,
      @ForAll Dynamic written) {
    LevelBalance.of(instrument(one), instrument(other), written)
        .ifPresent(
            balance -> {
              int steps = balance.softerPlays().ordinal() - balance.louderPlays().ordinal();
              double left = balance.decibel() - steps * LevelSteps.STEP_DECIBEL;
              assertTrue(Math.abs(left) <= LevelSteps.STEP_DECIBEL / 2 + 1e-9, balance.toString());
              assertTrue(balance.louderPlays().compareTo(written) <= 0);
              assertTrue(balance.softerPlays().compareTo(written) >= 0);
            });
  }

  @Property
  void it_is_the_same_balance_whoever_enters(
      @ForAll @DoubleRange(min = 0, max = 200) double one,
      @ForAll @DoubleRange(min = 0, max = 200) double other,
      @ForAll Dynamic written) {
    assertEquals(
        LevelBalance.of(instrument(one), instrument(other), written).map(JoinPropertiesTest::plays),
        LevelBalance.of(instrument(other), instrument(one), written)
            .map(JoinPropertiesTest::plays));
  }

  private static List<Dynamic> plays(LevelBalance balance) {
    return Stream.of(balance.louderPlays(), balance.softerPlays()).toList();
  }

  @Property
  void equal_instruments_never_need_balance(
      @ForAll @DoubleRange(min = 0, max = 200) double level, @ForAll Dynamic written) {
    assertEquals(Optional.empty(), LevelBalance.of(instrument(level), instrument(level), written));
  }

  private static Instrument instrument(double level) {
    return JoinReportTest.player("Player", "pipe", level).instrument();
  }
}
