package stafette.score;

import java.util.List;

/** The seven letters, in the order in which octaves are counted. */
public enum Step {
  C(0),
  D(2),
  E(4),
  F(5),
  G(7),
  A(9),
  B(11);

  /** In the order in which sharps are added to a key, flats the other way round. */
  private static final List<Step> SHARPENED = List.of(F, C, G, D, A, E, B);

  private final int semitones;

  Step(int semitones) {
    this.semitones = semitones;
  }

  /** Semitones above C. */
  public int semitones() {
    return semitones;
  }

  /**
   * How a key alters it: 1 sharp, −1 flat, else 0.
   *
   * @param fifths so many sharps, or flats if below zero
   */
  public int alterIn(int fifths) {
    int place = SHARPENED.indexOf(this);
    int fromLast = SHARPENED.size() - 1 - place;
    return place < fifths ? 1 : fromLast < -fifths ? -1 : 0;
  }
}
