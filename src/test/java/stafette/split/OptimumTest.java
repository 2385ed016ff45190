package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;

class OptimumTest {
  @Property(tries = 1500)
  void the_search_finds_what_trying_every_plan_finds(@ForAll long seed) {
    compare(SmallBriefs.of(seed, 7, 3));
  }

  @Property(tries = 60)
  void it_does_so_on_longer_lines_with_more_players_too(@ForAll long seed) {
    compare(SmallBriefs.of(seed, 9, 4));
  }

  /**
   * One of two players could play to the end and leave the other idle, which costs more than to
   * hand over: the dear end must not stand before the cheap one.
   */
  @Test
  void a_stretch_to_the_end_of_the_line_hides_no_shorter_one() {
    compare(SmallBriefs.of(-3015, 7, 3));
  }

  /** Two turns of one player, the second of which would tire it too much if it stood alone. */
  @Test
  void a_turn_may_hold_only_after_another() {
    compare(SmallBriefs.of(-4_616_053_567_048L, 7, 3));
  }

  static void compare(Brief brief) {
    AllPlans all = AllPlans.of(brief);
    Assume.that(all.areComplete());
    OptionalInt expected = all.cheapest();
    SplitResult result = Splitter.split(brief, () -> false);
    assertEquals(expected, costOf(result), brief::toString);
  }

  private static OptionalInt costOf(SplitResult result) {
    return result.match(
        best -> OptionalInt.of(costOf(best)),
        none -> OptionalInt.empty(),
        stopped -> OptionalInt.of(-1));
  }

  private static int costOf(SplitResult.Best best) {
    Verdict verdict = Judge.judge(best.plan());
    assertTrue(verdict.holds() && verdict.keepsMargin(), () -> verdict.findings().toString());
    assertEquals(best.cost(), verdict.cost().total());
    return best.cost();
  }

  @Property(tries = 300)
  void a_stopped_search_gives_a_plan_that_holds_and_a_bound_below_the_optimum(
      @ForAll long seed, @ForAll byte patience) {
    Brief brief = SmallBriefs.of(seed, 7, 3);
    AllPlans all = AllPlans.of(brief);
    Assume.that(all.areComplete());
    assertStopsAboveItsBound(brief, Math.abs(patience) % 12, all.cheapest());
  }

  /**
   * A search that is told to stop after some questions gives a plan that holds, at its cost, and a
   * bound that the optimum does not undercut; no plan exists where none is said to.
   */
  static void assertStopsAboveItsBound(Brief brief, int questions, OptionalInt optimum) {
    AtomicInteger asked = new AtomicInteger();
    SplitResult result = Splitter.split(brief, () -> asked.incrementAndGet() > questions);
    if (!(result instanceof SplitResult.Stopped stopped)) {
      assertEquals(optimum, costOf(result), brief::toString);
      return;
    }
    assertTrue(stopped.bound() <= optimum.orElse(Integer.MAX_VALUE), brief::toString);
    assertTrue(stopped.bound() <= stopped.cost().orElse(Integer.MAX_VALUE), brief::toString);
    assertEquals(stopped.cost().isPresent(), stopped.plan().isPresent());
    stopped
        .plan()
        .ifPresent(plan -> costOf(new SplitResult.Best(plan, stopped.cost().orElseThrow())));
  }
}
