package stafette.musicxml.read;

import java.util.Optional;
import java.util.function.UnaryOperator;
import stafette.time.Rational;

/**
 * A mark that holds from a place on.
 *
 * @param offset quarters from the start of its bar; a direction's own offset may lead out of it
 * @param staff the staff for which it stands; empty for all
 * @param change what it makes of what was in force
 */
record PlacedMark<T>(Rational offset, Optional<Integer> staff, UnaryOperator<T> change) {}
