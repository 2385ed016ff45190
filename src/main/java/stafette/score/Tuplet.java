package stafette.score;

import stafette.time.Span;

/**
 * A group of notes in the time of another number of them.
 *
 * @param actual how many are played
 * @param normal in the time of how many
 * @param span the whole group
 * @param beamedInThrees whether its beams end after each third note, as where a sextuplet is
 *     written as two triplets under one sign
 */
public record Tuplet(int actual, int normal, Span span, boolean beamedInThrees) {
  /** A group whose beams say nothing more. */
  public Tuplet(int actual, int normal, Span span) {
    this(actual, normal, span, false);
  }

  /** Whether it is written in threes, as triplets are; a sextuplet is not, unless its beams are. */
  boolean isInThrees() {
    return beamedInThrees || (actual % 3 == 0 && actual % 2 == 1);
  }
}
