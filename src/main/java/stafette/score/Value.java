package stafette.score;

import java.util.Optional;
import stafette.time.Length;

/**
 * One written note value.
 *
 * @param length how long it lasts, the tuplet reckoned in
 * @param tuplet the group to which it belongs
 */
public record Value(Length length, Optional<Tuplet> tuplet) {}
