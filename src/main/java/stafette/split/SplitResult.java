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

  /** The turns in a fixed order that its plan makes, where they were preferred to the cheapest. */
  default Optional<InRotation> rotation() {
    return match(Best::inRotation, none -> Optional.empty(), Stopped::inRotation);
  }

  /** No plan costs less; empty if there is none. */
  default OptionalInt leastCost() {
    return match(
        best -> OptionalInt.of(best.inRotation().map(InRotation::cheapestCost).orElse(best.cost())),
        none -> OptionalInt.empty(),
        stopped -> OptionalInt.of(stopped.bound()));
  }

  /**
   * A regular rotation that was preferred to a cheaper plan.
   *
   * @param unit how much each turn takes, in words: "2 bars"
   * @param cheapestCost what the cheapest plan that was found costs, in points
   * @param limit how much more was allowed
   */
  record InRotation(String unit, int cheapestCost, int limit) {}

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
   * No plan costs less, but for the cheapest one that a rotation is preferred to.
   *
   * @param cost of the plan, in points
   */
  record Best(Plan plan, int cost, Optional<InRotation> inRotation) implements SplitResult {
    /** A plan that is no rotation, or is the cheapest anyhow. */
    public Best(Plan plan, int cost) {
      this(plan, cost, Optional.empty());
    }

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
  record Stopped(Optional<Plan> plan, OptionalInt cost, int bound, Optional<InRotation> inRotation)
      implements SplitResult {
    /** A plan, if any, that no rotation is preferred to. */
    public Stopped(Optional<Plan> plan, OptionalInt cost, int bound) {
      this(plan, cost, bound, Optional.empty());
    }

    @Override
    public <T> T match(
        Function<? super Best, ? extends T> best,
        Function<? super None, ? extends T> none,
        Function<? super Stopped, ? extends T> stopped) {
      return stopped.apply(this);
    }
  }
}
