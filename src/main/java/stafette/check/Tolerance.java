package stafette.check;

/** Comparisons in the player's favour, by one part in a thousand million. */
public final class Tolerance {
  public static final double SHARE = 1e-9;

  private Tolerance() {}

  public static boolean within(double value, double most) {
    return value <= most * (1 + SHARE);
  }

  public static boolean reaches(double value, double least) {
    return value >= least * (1 - SHARE);
  }
}
