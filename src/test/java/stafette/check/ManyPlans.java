package stafette.check;

import stafette.plan.Brief;
import stafette.plan.Plan;

/**
 * Judges many plans of one brief by the judge's own rules, without what is told beside a verdict.
 */
public final class ManyPlans {
  private final Demands demands;
  private final Brief within;
  private final Demands demandsWithin;

  public ManyPlans(Brief brief) {
    this.demands = new Demands(brief);
    this.within = brief.withinMargin();
    this.demandsWithin = new Demands(within);
  }

  /** As the verdict on the plan has it, its margin kept. */
  public boolean hold(Plan plan) {
    return Judge.findings(plan, demands, 1).isEmpty()
        && Judge.findings(new Plan(within, plan.segments()), demandsWithin, 1).isEmpty();
  }
}
