package stafette.picture;

/**
 * A player's place in a row.
 *
 * @param player index among the brief's players
 * @param y the middle of the ribbon, below the row's top, in points
 */
record Lane(int player, double y) {}
