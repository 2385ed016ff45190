package stafette.musicxml.read;

import java.util.Optional;
import stafette.time.Rational;

/**
 * A mark that holds from a place on.
 *
 * @param offset quarters from the start of its bar; a direction's own offset may lead out of it
 * @param staff the staff for which it stands; empty for all
 * @param left what it leaves in force
 */
record PlacedMark<T>(Rational offset, Optional<Integer> staff, T left) {}
