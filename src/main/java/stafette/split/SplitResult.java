package stafette.split;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import stafette.plan.Plan;

/**
 * What a search ends with: a plan and its proof, the proof that there is none, or what it had when
 * it was stopped.
 */
public sealed interface SplitResult {
  /** Applies the function of the case at hand. */
  <T> T match(
      Function<? super Best, ? extends T> best,
      Function<? super None, ? extends T> none,
      Function<? super Stopped, ? extends T> stopped);

  /** The best plan that it has. */
  default Optional<Plan> found() {
    return match(best -> Optional.of(best.plan()), none -> Optional.empty(), Stopped::plan);
  }

  /** Whether what it says holds for a plan: it found just that, or none at all. */
  default boolean speaksOf(Optional<Plan> plan) {
    return found().isEmpty() || found().equals(plan);
  }

  /** Whether its plan is proven to be the best. */
  default boolean isBest() {
    return match(best -> true, none -> false, stopped -> false);
  }

  /** Whether it is proven that there is no plan. */
  default boolean isNone() {
    return match(best -> false, none -> true, stopped -> false);
  }

  /**
   * No plan costs less.
   *
   * @param cost in points
   */
  record Best(Plan plan, int cost) implements SplitResult {
    @Override
    public <T> T match(
        Function<? super Best, ? extends T> best,
        Function<? super None, ? extends T> none,
        Function<? super Stopped, ? extends T> stopped) {
      return best.apply(this);
    }
  }

  /**
   * There is no plan.
   *
   * @param reasons why, and what to try; at least one
   */
  record None(List<Reason> reasons) implements SplitResult {
    public None {
      reasons = List.copyOf(reasons);
    }

    @Override
    public <T> T match(
        Function<? super Best, ? extends T> best,
        Function<? super None, ? extends T> none,
        Function<? super Stopped, ? extends T> stopped) {
      return none.apply(this);
    }
  }

  /**
   * The search was stopped.
   *
   * @param plan the best found, if any
   * @param cost its cost, if any
   * @param bound no plan costs less
   */
  record Stopped(Optional<Plan> plan, OptionalInt cost, int bound) implements SplitResult {
    @Override
    public <T> T match(
        Function<? super Best, ? extends T> best,
        Function<? super None, ? extends T> none,
        Function<? super Stopped, ? extends T> stopped) {
      return stopped.apply(this);
    }
  }
}
