package stafette.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Seat;

/**
 * What was asked and what came of it, ready to be written down.
 *
 * @param score where the line stands
 * @param brief what was asked
 * @param seats of those players whose seats are known, by name
 * @param freed those players who leave out for the line what the score gives them
 * @param result "optimal", "stopped" or "none"
 * @param judged the plan and what the judge says of it; empty if there is none
 * @param bound no plan costs less; empty if there is no plan at all
 * @param searchSeconds how long the search took
 * @param window between which tempi the plan holds, if that was asked for
 * @param remarks why there is no plan and what would help; empty if there is one
 * @param remedies what would make a plan possible, each tried out
 * @param program the program that made it, with its version
 */
public record PlanReport(
    ScoreFile score,
    Brief brief,
    Map<String, Seat> seats,
    Set<String> freed,
    String result,
    Optional<Judged> judged,
    Optional<Integer> bound,
    double searchSeconds,
    Optional<Window> window,
    List<String> remarks,
    List<Remedy> remedies,
    String program) {
  public PlanReport {
    seats = Map.copyOf(seats);
    freed = Set.copyOf(freed);
    remarks = List.copyOf(remarks);
    remedies = List.copyOf(remedies);
  }

  /**
   * A change under which there is a plan.
   *
   * @param option what to type, or to do
   * @param sentence what comes of it
   */
  public record Remedy(String option, String sentence) {}

  /** A plan with its verdict. */
  public record Judged(Plan plan, Verdict verdict) {}

  /**
   * The slowest and the fastest tempo between which a plan holds, as marks for people.
   *
   * @param slowest such as "dotted quarter = 71"; empty if no tempo is too slow
   * @param fastest such as "dotted quarter = 101"
   * @param slowestLimit what stands in the way of a slower one; empty if nothing does
   * @param fastestLimit what stands in the way of a faster one
   */
  public record Window(
      Optional<String> slowest,
      String fastest,
      Optional<String> slowestLimit,
      String fastestLimit) {}
}
