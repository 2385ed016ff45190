package stafette.score;

/**
 * Spells pitches and keys as a transposing part writes them. Reckons on the line of fifths: C is 0,
 * each fifth up is one more, so that F sharp is 6 and G flat −6.
 */
public final class Spelling {
  private static final int[] FIFTHS = {0, 2, 4, -1, 1, 3, 5};
  private static final int ENHARMONIC = 12;

  /** How far from its key's tonic a note may lie before it is respelled. */
  private static final int LOWEST = -8;

  private static final int HIGHEST = 11;

  private Spelling() {}

  /** The key that a part writes where this one sounds, from −7 to 7. */
  public static int writtenKey(int soundingFifths, Transposition transposition) {
    return withinSeven(soundingFifths - fifths(transposition));
  }

  /** The key that sounds where a part writes this one; may lie beyond seven. */
  public static int soundingKey(int writtenFifths, Transposition transposition) {
    return writtenFifths + fifths(transposition);
  }

  /**
   * The pitch as a part writes it: with the line's own spelling, in relation to the key, unless
   * that would need a double accidental or lie far from the key.
   *
   * @param soundingFifths the key in which it sounds
   * @param partFifths the key that the part writes there
   */
  public static Pitch written(
      Pitch sounding, Transposition transposition, int soundingFifths, int partFifths) {
    Pitch moved = sounding.movedBy(transposition.inverse());
    int expected = soundingFifths - fifths(transposition);
    int shifts = Math.round((partFifths - expected) / (float) ENHARMONIC);
    int place = place(moved) + ENHARMONIC * shifts;
    while (place - partFifths <= LOWEST) {
      place += ENHARMONIC;
    }
    while (place - partFifths >= HIGHEST) {
      place -= ENHARMONIC;
    }
    while (alter(place) > 1) {
      place -= ENHARMONIC;
    }
    while (alter(place) < -1) {
      place += ENHARMONIC;
    }
    return pitchAt(place, moved.midi());
  }

  /** A perfect fifth is one, a major second two, an octave none. */
  private static int fifths(Transposition interval) {
    return 7 * interval.chromatic() - ENHARMONIC * interval.diatonic();
  }

  private static int withinSeven(int fifths) {
    int key = fifths;
    while (key > 7) {
      key -= ENHARMONIC;
    }
    while (key < -7) {
      key += ENHARMONIC;
    }
    return key;
  }

  private static int place(Pitch pitch) {
    return FIFTHS[pitch.step().ordinal()] + 7 * pitch.alter();
  }

  private static int alter(int place) {
    return Math.floorDiv(place + 1, 7);
  }

  private static Pitch pitchAt(int place, int midi) {
    int alter = alter(place);
    int natural = place - 7 * alter;
    for (Step step : Step.values()) {
      if (FIFTHS[step.ordinal()] == natural) {
        return new Pitch(step, alter, Math.floorDiv(midi - alter, ENHARMONIC) - 1);
      }
    }
    throw new IllegalStateException("no letter on the line of fifths at " + natural);
  }
}
