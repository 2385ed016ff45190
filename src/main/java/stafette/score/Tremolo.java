package stafette.score;

/** How slashes through a stem are read. */
public enum Tremolo {
  /** Three and more on bowed strings and rolled percussion are unmeasured, all others measured. */
  AS_WRITTEN,
  MEASURED,
  UNMEASURED
}
