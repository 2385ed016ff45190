package stafette.check;

import java.util.Optional;
import stafette.plan.Plan;

/**
 * A plan with all that is to be said about it.
 *
 * @param plan who plays what
 * @param verdict what the judge says
 * @param window the tempi between which it holds
 */
public record JudgedPlan(Plan plan, Verdict verdict, Optional<TempoWindow> window) {
  /** The verdict alone, at once, while a plan is being changed: its tempi are not looked for. */
  public static JudgedPlan atOnce(Plan plan) {
    return new JudgedPlan(plan, Judge.judge(plan), Optional.empty());
  }

  public static JudgedPlan of(Plan plan) {
    return of(plan, Judge.judge(plan));
  }

  public static JudgedPlan of(Plan plan, Verdict verdict) {
    return new JudgedPlan(plan, verdict, TempoWindow.of(plan));
  }
}
