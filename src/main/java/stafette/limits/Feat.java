package stafette.limits;

import java.util.OptionalDouble;

/**
 * What a player just manages: a rate for so long.
 *
 * @param words as somebody said it
 * @param perSecond strokes a second, above zero
 * @param seconds how long, above zero; empty for a moment, a burst of five strokes
 */
public record Feat(String words, double perSecond, OptionalDouble seconds) {
  /** How long, a moment being no time. */
  double lasting() {
    return seconds.orElse(0);
  }

  /** How many strokes that are. */
  double strokes() {
    return perSecond * lasting();
  }
}
