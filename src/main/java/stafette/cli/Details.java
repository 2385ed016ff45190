package stafette.cli;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import stafette.check.JudgedPlan;
import stafette.plan.Plan;
import stafette.plan.Seat;

/**
 * What is told of a plan beyond the usual.
 *
 * @param explain whether its cost is explained, and all there is to see to at joins told
 * @param seats of players whose seats are known; with any, or with an explanation, it is told what
 *     the handoffs may do to the ear
 * @param searchSeconds how long the search took; empty where there was none
 */
record Details(boolean explain, Map<String, Seat> seats, OptionalDouble searchSeconds) {
  /** With how long the search took, where there was one. */
  Details searched(double seconds) {
    return new Details(explain, seats, OptionalDouble.of(seconds));
  }

  /** Blocks with an empty line after each; empty if nothing was asked for. */
  String of(JudgedPlan judged) {
    String cost =
        explain
            ? PlanText.odds(judged)
                + search()
                + "\n"
                + CostText.of(judged.plan(), judged.verdict().cost())
                + "\n"
            : "";
    String ear = explain || !seats.isEmpty() ? EarText.of(judged.plan(), seats) : "";
    String joins = explain ? EarText.joins(judged.plan()) : "";
    return cost + ear + (ear.isEmpty() ? "" : "\n") + joins + (joins.isEmpty() ? "" : "\n");
  }

  private String search() {
    return searchSeconds.isPresent()
        ? String.format(Locale.ROOT, "Search     took %.2f s%n", searchSeconds.getAsDouble())
        : "";
  }

  /** What is to be done at joins, unless all of it is explained anyway. */
  String joinsToMend(Plan plan) {
    return explain ? "" : EarText.joinsToMend(plan);
  }
}
