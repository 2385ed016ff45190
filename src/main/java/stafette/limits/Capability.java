package stafette.limits;

/**
 * What one player can do with one technique, in thousandths, rounded against the player.
 *
 * @param peakMilli highest rate for a moment, thousandths of a stroke a second, above zero
 * @param sustainedMilli the rate that can go on, thousandths of a stroke a second
 * @param staminaMilli strokes beyond sustained from fresh to spent, in thousandths, above zero
 * @param recoveryMillis rest from spent to fresh, thousandths of a second, above zero
 * @param movingMilli highest rate of changing notes, thousandths of a note a second, or {@link
 *     #UNLIMITED}
 */
public record Capability(
    int peakMilli, int sustainedMilli, int staminaMilli, int recoveryMillis, int movingMilli) {
  /** No limit of its own to changing notes. */
  public static final int UNLIMITED = Integer.MAX_VALUE;

  /** A capability with other figures, rounded down to thousandths. */
  public Capability at(double peakPerSecond, double sustainedPerSecond, double staminaStrokes) {
    return new Capability(
        milli(peakPerSecond),
        milli(sustainedPerSecond),
        milli(staminaStrokes),
        recoveryMillis,
        movingMilli);
  }

  /**
   * Somebody who has as much trouble with a line as it stands as this one has if all its gaps and
   * rests are multiplied by a factor not above 1.
   */
  public Capability where(double gaps) {
    return new Capability(
        (int) Math.floor(peakMilli * gaps),
        (int) Math.floor(sustainedMilli * gaps),
        staminaMilli,
        (int) Math.ceil(recoveryMillis / gaps),
        movingMilli == UNLIMITED ? UNLIMITED : (int) Math.floor(movingMilli * gaps));
  }

  private static int milli(double figure) {
    return (int) Math.floor(figure * 1000 + 1e-6);
  }

  public double peakPerSecond() {
    return peakMilli / 1000.0;
  }

  public double sustainedPerSecond() {
    return sustainedMilli / 1000.0;
  }

  public double staminaStrokes() {
    return staminaMilli / 1000.0;
  }

  public double recoverySeconds() {
    return recoveryMillis / 1000.0;
  }
}
