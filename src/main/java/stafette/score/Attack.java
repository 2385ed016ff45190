package stafette.score;

/** What makes a stroke sound. */
public enum Attack {
  /** As the instrument is usually played, or however the player likes. */
  PLAIN,
  /** A string of a bowed instrument is plucked: pizzicato. */
  PLUCKED,
  /** The wood of the bow falls on the string: col legno, or col legno battuto. */
  STRUCK_WITH_WOOD,
  /** The wood of the bow is drawn over the string: col legno tratto. */
  DRAWN_WITH_WOOD,
  /** The tongue or the throat rolls while the note sounds: flutter-tonguing. */
  FLUTTERED,
  /**
   * One of the quick notes of a trill that is written out under its sign, but its first: a finger
   * moves, and nobody counts how often.
   */
  TRILLED
}
