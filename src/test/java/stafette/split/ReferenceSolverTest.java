package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Plan;

/** The search against a general constraint solver, on briefs too large to try every plan. */
class ReferenceSolverTest {
  /** In the solver's deterministic seconds; most briefs take a tenth of it. */
  private static final double PATIENCE = 1;

  private static final int LEAST_PROVEN = 200;
  private static final int LEAST_OF_A_KIND = 40;

  @Property(tries = 240, shrinking = ShrinkingMode.OFF)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void the_search_finds_what_a_constraint_solver_proves(@ForAll long seed) {
    Brief brief = MiddleBriefs.of(seed);
    ReferenceModel.Answer answer = ReferenceModel.of(brief).solve(PATIENCE);
    OptionalInt expected = cost(brief, answer);
    SplitResult searched = Splitter.split(brief, () -> false);
    boolean both = answer.proven() && !(searched instanceof SplitResult.Stopped);
    if (both) {
      assertEquals(expected, cost(searched), brief::toString);
      OptimumTest.assertStopsAboveItsBound(brief, (int) Math.floorMod(seed, 40L), expected);
    }
    Statistics.label("proven by both")
        .collect(both)
        .coverage(proven -> proven.check(true).count(count -> count >= LEAST_PROVEN));
    Statistics.label("with a plan")
        .collect(expected.isPresent())
        .coverage(
            plan -> {
              plan.check(true).count(count -> count >= LEAST_OF_A_KIND);
              plan.check(false).count(count -> count >= LEAST_OF_A_KIND);
            });
  }

  /** The cost of the solver's plan, which must hold for the judge; empty if it has none. */
  private static OptionalInt cost(Brief brief, ReferenceModel.Answer answer) {
    if (answer.segments().isEmpty()) {
      return OptionalInt.empty();
    }
    Verdict verdict = Judge.judge(new Plan(brief, answer.segments()));
    assertTrue(verdict.holds() && verdict.keepsMargin(), () -> verdict.findings().toString());
    assertEquals(answer.cost(), verdict.cost().total());
    return OptionalInt.of(answer.cost());
  }

  private static OptionalInt cost(SplitResult searched) {
    return searched.match(
        best -> OptionalInt.of(best.cost()),
        none -> OptionalInt.empty(),
        stopped -> OptionalInt.empty());
  }
}
