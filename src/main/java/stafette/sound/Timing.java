package stafette.sound;

/** How exactly strokes come where they are written. */
public enum Timing {
  /** As players would: apart by the published figures for trios, and by their seats. */
  ENSEMBLE,
  /**
   * As written but for up to 4 ms, less than the 6 ms that are just noticed (Friberg and Sundberg
   * 1995): enough that equal synthetic voices don't add up as one wave.
   */
  TOGETHER,
  /** As written. */
  WRITTEN
}
