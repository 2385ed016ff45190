package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Plan;

class OptimumTest {
  @Property(tries = 1500)
  void the_search_finds_what_trying_every_plan_finds(@ForAll long seed) {
    compare(SmallBriefs.of(seed, 7, 3));
  }

  @Property(tries = 60)
  void it_does_so_on_longer_lines_with_more_players_too(@ForAll long seed) {
    compare(SmallBriefs.of(seed, 9, 4));
  }

  static void compare(Brief brief) {
    AllPlans all = AllPlans.of(brief);
    Assume.that(all.areComplete());
    OptionalInt expected = all.cheapest();
    SplitResult result = Splitter.split(brief, () -> false);
    OptionalInt found =
        result.match(
            best -> OptionalInt.of(costOf(best)),
            none -> OptionalInt.empty(),
            stopped -> OptionalInt.of(-1));
    assertEquals(expected, found, brief::toString);
  }

  private static int costOf(SplitResult.Best best) {
    Verdict verdict = Judge.judge(best.plan());
    assertTrue(verdict.holds(), () -> verdict.findings().toString());
    assertEquals(best.cost(), verdict.cost().total());
    return best.cost();
  }

  @Property(tries = 300)
  void a_stopped_search_gives_a_plan_that_holds_and_a_bound_below_the_optimum(
      @ForAll long seed, @ForAll byte patience) {
    Brief brief = SmallBriefs.of(seed, 9, 4);
    AtomicInteger asked = new AtomicInteger();
    SplitResult stopped = Splitter.split(brief, () -> asked.incrementAndGet() > Math.abs(patience));
    OptionalInt optimum =
        Splitter.split(brief, () -> false)
            .match(
                best -> OptionalInt.of(best.cost()),
                none -> OptionalInt.empty(),
                s -> OptionalInt.empty());
    int bound = stopped.match(best -> best.cost(), none -> Integer.MAX_VALUE, s -> s.bound());
    assertTrue(optimum.isEmpty() || bound <= optimum.getAsInt());
    stopped.match(
        best -> holds(best.plan()),
        none -> true,
        s -> s.plan().map(OptimumTest::holds).orElse(true));
  }

  private static boolean holds(Plan plan) {
    Verdict verdict = Judge.judge(plan);
    assertTrue(verdict.holds(), () -> verdict.findings().toString());
    return true;
  }
}
