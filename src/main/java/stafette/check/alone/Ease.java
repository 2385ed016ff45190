package stafette.check.alone;

/**
 * How hard something is, by how many of 100 professional players manage it; the borders are whole
 * standard deviations.
 */
public enum Ease {
  COMFORTABLE("comfortable", 98),
  DEMANDING("demanding", 84),
  AT_THE_EDGE("at the edge", 50),
  FOR_THE_FEW("for the few", 16),
  BEYOND("beyond", 0),
  /** The instrument doesn't have the notes, at whatever tempo. */
  OUT_OF_RANGE("out of range", 0);

  private final String text;
  private final double least;

  Ease(String text, double least) {
    this.text = text;
    this.least = least;
  }

  public String text() {
    return text;
  }

  /** How many of 100 players manage at least. */
  double least() {
    return least;
  }

  /** The ease of what so many of 100 players manage. */
  public static Ease of(double share) {
    for (Ease ease : values()) {
      if (share >= ease.least) {
        return ease;
      }
    }
    return BEYOND;
  }

  /** Whether fewer than half manage, so that help is wanted. */
  public boolean needsHelp() {
    return compareTo(FOR_THE_FEW) >= 0;
  }

  /** Whether at least a few can play it. */
  public boolean plays() {
    return compareTo(BEYOND) < 0;
  }
}
