package stafette.score;

/** Where the bow meets the string. */
public enum Contact {
  /** Where it usually does, or wherever the player likes. */
  PLAIN,
  /** Sul ponticello. */
  AT_THE_BRIDGE,
  /** Sul tasto. */
  OVER_THE_FINGERBOARD
}
