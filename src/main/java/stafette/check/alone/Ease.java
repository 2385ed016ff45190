package stafette.check.alone;

import stafette.check.Tolerance;

/** How hard something is, by the largest share of a limit that it takes. */
public enum Ease {
  /** Up to 70 %. */
  COMFORTABLE("comfortable", 0.7),
  /** Up to 90 %. */
  DEMANDING("demanding", 0.9),
  /** Up to 100 %. */
  AT_THE_EDGE("at the edge", 1),
  BEYOND("beyond", Double.POSITIVE_INFINITY),
  /** The instrument doesn't have the notes, at whatever tempo. */
  OUT_OF_RANGE("out of range", Double.POSITIVE_INFINITY);

  private final String text;
  private final double most;

  Ease(String text, double most) {
    this.text = text;
    this.most = most;
  }

  public String text() {
    return text;
  }

  /** The ease of what takes that share of a limit, 1 the whole. */
  public static Ease of(double share) {
    for (Ease ease : values()) {
      if (Tolerance.within(share, ease.most)) {
        return ease;
      }
    }
    return BEYOND;
  }

  /** Whether it can be played. */
  public boolean plays() {
    return compareTo(BEYOND) < 0;
  }
}
