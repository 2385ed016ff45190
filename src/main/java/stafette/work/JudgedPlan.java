package stafette.work;

import stafette.check.Judge;
import stafette.check.TempoWindow;
import stafette.check.Verdict;
import stafette.plan.Plan;

/**
 * A plan with all that is to be said about it.
 *
 * @param plan who plays what
 * @param verdict what the judge says
 * @param window the tempi between which it holds
 */
public record JudgedPlan(Plan plan, Verdict verdict, java.util.Optional<TempoWindow> window) {
  public static JudgedPlan of(Plan plan) {
    return of(plan, Judge.judge(plan));
  }

  static JudgedPlan of(Plan plan, Verdict verdict) {
    return new JudgedPlan(plan, verdict, TempoWindow.of(plan));
  }
}
