package stafette.time;

/**
 * How strong a place in the bar is; {@link #ordinal()} is the number used in costs, 0 the
 * strongest.
 */
public enum Rank {
  /** The first of a bar. */
  BAR,
  /** On a beat. */
  BEAT,
  /** On half a beat, or on one of the three, five or seven values of one that has so many. */
  HALF,
  /** Anywhere else. */
  ELSEWHERE
}
