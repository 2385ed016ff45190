package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.bench.Rosters;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.split.rotate.RotationOrCheapest;

/** What a search tells while it is under way. */
class ProgressTest {
  @Property(tries = 60)
  void what_is_told_only_gets_better_and_ends_with_the_answer(@ForAll long seed) {
    assertBetterAndBetter(SmallBriefs.of(seed, 20, 4));
  }

  @Property(tries = 60)
  void so_does_what_is_told_of_regular_rotations(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 4);
    assertBetterAndBetter(brief.with(brief.rules().favouring(Favour.REGULAR, Invented.WEIGHTS)));
  }

  /**
   * The cheapest plan is told, not the rotation preferred to it, which may cost more. A bound lies
   * below 0 where cover is worth more than a handoff costs.
   */
  private static void assertBetterAndBetter(Brief brief) {
    List<Splitter.Progress> told = new ArrayList<>();
    SplitResult result = RotationOrCheapest.of(brief, new Workbench(), () -> false, told::add);
    int cost = Integer.MAX_VALUE;
    int bound = Integer.MIN_VALUE;
    for (Splitter.Progress progress : told) {
      assertTrue(progress.bound() >= bound, told::toString);
      assertTrue(progress.cost().orElse(Integer.MAX_VALUE) <= cost, told::toString);
      assertTrue(progress.bound() <= progress.cost().orElse(Integer.MAX_VALUE), told::toString);
      assertEquals(progress.cost().isPresent(), progress.plan().isPresent());
      progress.plan().ifPresent(plan -> assertHolds(plan, progress.cost().orElseThrow()));
      bound = progress.bound();
      cost = progress.cost().orElse(cost);
    }
    Optional<Plan> last = told.isEmpty() ? Optional.empty() : told.get(told.size() - 1).plan();
    Optional<SplitResult.InRotation> rotation = result.rotation();
    if (rotation.isPresent()) {
      assertEquals(
          rotation.get().cheapestCost(), cost, "a rotation that is preferred costs no less");
    } else {
      assertEquals(result.found(), last);
    }
  }

  private static void assertHolds(Plan plan, int cost) {
    Verdict verdict = Judge.judge(plan);
    assertTrue(verdict.holds() && verdict.keepsMargin(), () -> verdict.findings().toString());
    assertEquals(cost, verdict.cost().total());
  }

  /** It takes seconds to prove; it is stopped as soon as it has told enough. */
  @Test
  void a_long_search_tells_of_its_first_plan_and_then_of_better_plans_and_bounds() {
    List<Splitter.Progress> told = new ArrayList<>();
    SplitResult result =
        RotationOrCheapest.of(
            Rosters.mixed(64, 4),
            new Workbench(),
            () -> plans(told) > 1 && bounds(told) > 2,
            told::add);
    assertFalse(result instanceof SplitResult.None);
    assertTrue(plans(told) > 1 && bounds(told) > 2, told::toString);
  }

  private static long plans(List<Splitter.Progress> told) {
    return told.stream().flatMapToInt(progress -> progress.cost().stream()).distinct().count();
  }

  private static long bounds(List<Splitter.Progress> told) {
    return told.stream().mapToInt(Splitter.Progress::bound).distinct().count();
  }
}
