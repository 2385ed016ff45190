package stafette.picture.ribbon;

import java.util.Optional;

/**
 * A player's place in a row, below the row's top, in points.
 *
 * @param player index among the brief's players
 * @param y the middle of the ribbon
 * @param staffTop the top line of the staff, if music is written
 */
record Lane(int player, double y, Optional<Double> staffTop) {}
