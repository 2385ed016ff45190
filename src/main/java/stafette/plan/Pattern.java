package stafette.plan;

/** Which strokes of its stretch a segment's player takes. */
public enum Pattern {
  ALL,
  /** The first, the third and so on of the hocket's units. */
  ODD,
  /** The second, the fourth and so on. */
  EVEN
}
