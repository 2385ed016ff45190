package stafette.split.tempo;

import java.util.Optional;
import stafette.plan.Plan;
import stafette.time.TempoMark;

/**
 * The fastest tempo at which so many players hold.
 *
 * @param players at most so many
 * @param mark a mark of the table or a whole one; empty if no mark of the table has a plan
 * @param plan one for that tempo, with as few players as were found to be enough
 * @param proven whether the next mark up has no plan; without a mark, whether none of the table has
 */
public record FastestTempo(
    int players, Optional<TempoMark> mark, Optional<Plan> plan, boolean proven) {}
