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
  /** On half a beat, or on a third of one in compound time. */
  HALF,
  /** Anywhere else. */
  ELSEWHERE
}
