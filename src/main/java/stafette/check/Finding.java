package stafette.check;

import stafette.score.Place;
import stafette.words.Sentence;

/**
 * One rule that a plan breaks.
 *
 * @param kind which rule
 * @param place where
 * @param message a sentence that begins with the place and ends with what to try
 */
public record Finding(FindingKind kind, Place place, Sentence message) {
  /** The rules, by what they are about. */
  public enum FindingKind {
    /** Every stroke by one player outside the overlaps, by two inside, never by three. */
    SHAPE,
    /** How many strokes two players share. */
    OVERLAP,
    /** What the instrument can sound. */
    RANGE,
    /** The highest rate in a burst. */
    PEAK,
    /** Turns that are too short for their speed. */
    TURN,
    /** The highest rate of changing notes. */
    MOVING,
    /** Strokes beyond the rate that can go on. */
    TIREDNESS,
    /** Strokes taken in turn that are too close for two players. */
    INTERLOCKING,
    /** Air. */
    BREATH,
    /** Rest before an entry. */
    REST,
    /** What the score already gives the player. */
    BUSY,
    /** Notes for which the player has no technique, or no twin strings. */
    TECHNIQUE,
    /** What was to be kept. */
    LOCK
  }

  static Finding at(FindingKind kind, Place place, Sentence sentence) {
    return new Finding(kind, place, Sentence.of("{0}: {1}", place, sentence));
  }
}
