package stafette.check.ear;

/** Levels and delays of sound: textbook physics. */
public final class Acoustics {
  /**
   * 331.3 + 0.606 · T metres a second, the usual linear formula for dry air, at T = 20 degrees
   * Celsius: 343.42.
   */
  static final double METRES_PER_SECOND = 331.3 + 0.606 * 20;

  private Acoustics() {}

  /**
   * The level of two sources together whose waves are unrelated, as those of two players are: 10 ·
   * log10(10^(L1/10) + 10^(L2/10)). Two equal ones make 3.01 decibels more than either.
   */
  public static double togetherDecibel(double one, double other) {
    return 10 * Math.log10(Math.pow(10, one / 10) + Math.pow(10, other / 10));
  }

  /** How late sound arrives, 2.91 milliseconds a metre. */
  public static double delayMillis(double metres) {
    return metres / METRES_PER_SECOND * 1000;
  }
}
