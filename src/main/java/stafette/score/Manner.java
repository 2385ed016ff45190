package stafette.score;

/** How a stroke is made, as far as the score says so. */
public enum Manner {
  /** As the instrument is usually played, or however the player likes. */
  PLAIN,
  /** The string of a bowed instrument is plucked: pizzicato. */
  PLUCKED
}
