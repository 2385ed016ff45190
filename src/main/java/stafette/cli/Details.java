package stafette.cli;

import java.util.Map;
import stafette.check.JudgedPlan;
import stafette.plan.Plan;
import stafette.plan.Seat;

/**
 * What is told of a plan beyond the usual.
 *
 * @param explain whether its cost is explained, and all there is to see to at joins told
 * @param seats of players whose seats are known; with any, or with an explanation, it is told what
 *     the handoffs may do to the ear
 */
record Details(boolean explain, Map<String, Seat> seats) {
  /** Blocks with an empty line after each; empty if nothing was asked for. */
  String of(JudgedPlan judged) {
    String cost =
        explain
            ? PlanText.odds(judged)
                + "\n"
                + CostText.of(judged.plan(), judged.verdict().cost())
                + "\n"
            : "";
    String ear = explain || !seats.isEmpty() ? EarText.of(judged.plan(), seats) : "";
    String joins = explain ? EarText.joins(judged.plan()) : "";
    return cost + ear + (ear.isEmpty() ? "" : "\n") + joins + (joins.isEmpty() ? "" : "\n");
  }

  /** What is to be done at joins, unless all of it is explained anyway. */
  String joinsToMend(Plan plan) {
    return explain ? "" : EarText.joinsToMend(plan);
  }
}
