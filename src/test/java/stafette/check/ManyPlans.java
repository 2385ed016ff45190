package stafette.check;

import stafette.plan.Brief;
import stafette.plan.Plan;

/**
 * Judges many plans of one brief by the judge's own rules, without what is told beside a verdict.
 */
public final class ManyPlans {
  private final Demands demands;

  public ManyPlans(Brief brief) {
    this.demands = new Demands(brief);
  }

  /** As the verdict on the plan has it. */
  public boolean hold(Plan plan) {
    return Judge.findings(plan, demands, 1).isEmpty();
  }
}
