package stafette.score;

/** How slashes through a stem are read. */
public enum Tremolo {
  /**
   * By the tempo on bowed strings and rolled percussion, flutter-tonguing where a word asks a wind
   * for it, all others measured.
   */
  AS_WRITTEN,
  MEASURED,
  UNMEASURED
}
