package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Plan;

class ReferenceSolverTest {
  private static final double PATIENCE = 1;

  @Property(tries = 100)
  void small(@ForAll long seed) {
    compare(MiddleBriefs.of(seed));
  }

  private static void compare(Brief brief) {
    long t0 = System.nanoTime();
    ReferenceModel model = ReferenceModel.of(brief);
    long t1 = System.nanoTime();
    ReferenceModel.Answer answer = model.solve(PATIENCE);
    long t2 = System.nanoTime();
    OptionalInt found =
        Splitter.split(brief, () -> false)
            .match(
                best -> OptionalInt.of(best.cost()),
                none -> OptionalInt.empty(),
                stopped -> OptionalInt.of(-1));
    long t3 = System.nanoTime();
    System.out.printf(
        "%d strokes %d players build %d ms solve %d ms search %d ms proven %s cost %d%n",
        brief.line().count(),
        brief.players().size(),
        (t1 - t0) / 1000000,
        (t2 - t1) / 1000000,
        (t3 - t2) / 1000000,
        answer.proven(),
        answer.cost());
    if (!answer.segments().isEmpty()) {
      Verdict verdict = Judge.judge(new Plan(brief, answer.segments()));
      assertTrue(verdict.holds(), () -> verdict.findings().toString());
      assertEquals(answer.cost(), verdict.cost().total());
    }
    if (answer.proven()) {
      OptionalInt expected =
          answer.segments().isEmpty() ? OptionalInt.empty() : OptionalInt.of(answer.cost());
      assertEquals(expected, found, brief::toString);
    }
    Statistics.collect(answer.proven(), answer.segments().isEmpty());
  }
}
