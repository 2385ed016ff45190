package stafette.split;

import stafette.plan.Margin;
import stafette.plan.Player;

/**
 * A player as it is, and as it must be for what holds within the margin of tempo: limits come from
 * the one, costs from the other.
 *
 * @param player for whom the written tempo is as hard as any within the margin is for the written
 *     one
 * @param written the player at the written tempo
 * @param margin reckoned in, or none
 */
record PlayerWithinMargin(Player player, Player written, Margin margin) {}
