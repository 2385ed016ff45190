package stafette.split.why;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.split.Workbench;
import stafette.split.rotate.RotationOrCheapest;

/**
 * Whether there is a plan at all.
 *
 * @param plan the first one found, rarely the cheapest
 * @param proven false if the search was stopped before it found one or knew that there is none
 */
public record AnyPlan(Optional<Plan> plan, boolean proven) {
  /**
   * Searches until the first plan is found.
   *
   * @param stop asked often; ends the search if it says yes
   */
  public static AnyPlan of(Brief brief, BooleanSupplier stop) {
    return of(brief, new Workbench(), stop);
  }

  /**
   * Searches until the first plan is found, with what earlier searches for the line have worked
   * out.
   *
   * @param stop asked often; ends the search if it says yes
   */
  public static AnyPlan of(Brief brief, Workbench workbench, BooleanSupplier stop) {
    AtomicBoolean found = new AtomicBoolean();
    return RotationOrCheapest.of(
            brief,
            workbench,
            () -> found.get() || stop.getAsBoolean(),
            progress -> found.set(progress.plan().isPresent()))
        .match(
            best -> new AnyPlan(Optional.of(best.plan()), true),
            none -> new AnyPlan(Optional.empty(), true),
            stopped -> new AnyPlan(stopped.plan(), stopped.plan().isPresent()));
  }

  /** Proven that there is none. */
  public boolean isImpossible() {
    return proven && plan.isEmpty();
  }
}
