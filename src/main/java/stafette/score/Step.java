package stafette.score;

/** The seven letters, in the order in which octaves are counted. */
public enum Step {
  C(0),
  D(2),
  E(4),
  F(5),
  G(7),
  A(9),
  B(11);

  private final int semitones;

  Step(int semitones) {
    this.semitones = semitones;
  }

  /** Semitones above C. */
  public int semitones() {
    return semitones;
  }
}
