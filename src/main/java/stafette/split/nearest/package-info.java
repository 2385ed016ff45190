/**
 * Lowers: where no plan holds for the share of players that was asked for, the plan for the largest
 * share there is. May import the core down to {@code split.why}.
 *
 * <p>Decisions: the margin of tempo is given up before the share, since a plan without reserve is
 * valid. Shares go down by steps, and what one share can't do a larger one can't either, so the
 * largest is sought by halves. How long it is sought is counted in what searches do, never in time:
 * a busy machine finds the same.
 */
@NullMarked
package stafette.split.nearest;

import org.jspecify.annotations.NullMarked;
