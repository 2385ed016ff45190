package stafette.score;

/**
 * An interval: from a written pitch to the sounding one.
 *
 * @param diatonic letters up, octaves included
 * @param chromatic semitones up, octaves included
 */
public record Transposition(int diatonic, int chromatic) {
  public static final Transposition NONE = new Transposition(0, 0);

  /** From the sounding pitch back to the written one. */
  public Transposition inverse() {
    return new Transposition(-diatonic, -chromatic);
  }
}
