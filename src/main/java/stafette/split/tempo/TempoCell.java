package stafette.split.tempo;

import java.util.Optional;
import stafette.plan.Plan;

/**
 * What so many of the players can do at a tempo.
 *
 * @param plan the cheapest plan found that uses at most so many
 * @param proven whether no plan is cheaper; without a plan, whether none exists
 */
public record TempoCell(Optional<Plan> plan, boolean proven) {
  static final TempoCell NONE = new TempoCell(Optional.empty(), true);
  static final TempoCell UNKNOWN = new TempoCell(Optional.empty(), false);

  /** How many players a plan uses. */
  static int playersUsed(Plan plan) {
    return (int) plan.segments().stream().map(segment -> segment.player()).distinct().count();
  }
}
