package stafette.limits;

import java.util.OptionalDouble;

/**
 * How fast a technique goes in a population of professional players.
 *
 * @param peakPerSecond mean of the highest rate for a moment, strokes a second
 * @param deviationPerSecond its standard deviation between players
 * @param sustainedPerSecond mean of the rate that can go on; 0 if none can
 * @param staminaStrokes strokes beyond "sustained" that a fresh player can spend; if empty, what
 *     eight seconds at peak spend
 * @param recoverySeconds rest from spent to fresh
 * @param movingPerSecond mean of the highest rate of changing notes; empty if the technique sets no
 *     limit of its own to them
 */
public record Limit(
    double peakPerSecond,
    double deviationPerSecond,
    double sustainedPerSecond,
    OptionalDouble staminaStrokes,
    double recoverySeconds,
    OptionalDouble movingPerSecond) {
  /** Labelled default of the planning model: seconds at peak that spend the whole stamina. */
  public static final double DEFAULT_STAMINA_SECONDS = 8;

  /** Labelled default of the planning model: sustained as a share of peak. */
  public static final double DEFAULT_SUSTAINED_SHARE = 0.86;

  /** Labelled default of the planning model: seconds of rest from spent to fresh. */
  public static final double DEFAULT_RECOVERY_SECONDS = 8;

  /**
   * The limit for a player of whom that share of the population is as good or better. Sustained and
   * moving rates have the same relative spread as the peak.
   */
  public Capability at(Assurance assurance) {
    double peak = Math.max(0.001, peakPerSecond + assurance.z() * deviationPerSecond);
    int peakMilli = floorMilli(peak);
    int sustainedMilli = floorMilli(peakMilli / 1000.0 * sustainedPerSecond / peakPerSecond);
    int staminaMilli =
        staminaStrokes.isPresent()
            ? floorMilli(staminaStrokes.getAsDouble())
            : floorMilli((peakMilli - sustainedMilli) / 1000.0 * DEFAULT_STAMINA_SECONDS);
    int movingMilli =
        movingPerSecond.isPresent()
            ? floorMilli(peakMilli / 1000.0 * movingPerSecond.getAsDouble() / peakPerSecond)
            : Capability.UNLIMITED;
    int recoveryMillis = (int) Math.ceil(recoverySeconds * 1000 - 1e-6);
    return new Capability(
        Math.max(1, peakMilli),
        sustainedMilli,
        Math.max(1, staminaMilli),
        recoveryMillis,
        movingMilli);
  }

  /** The mean stamina, in strokes beyond sustained. */
  public double stamina() {
    return staminaStrokes.orElse((peakPerSecond - sustainedPerSecond) * DEFAULT_STAMINA_SECONDS);
  }

  /** How long the mean peak can be kept up, above zero. */
  public double secondsAtPeak() {
    double beyond = peakPerSecond - sustainedPerSecond;
    return beyond > 0 && staminaStrokes.isPresent()
        ? staminaStrokes.getAsDouble() / beyond
        : DEFAULT_STAMINA_SECONDS;
  }

  /** Rates and stamina multiplied by a factor, the spread with them. */
  public Limit times(double factor) {
    return new Limit(
        peakPerSecond * factor,
        deviationPerSecond * factor,
        sustainedPerSecond * factor,
        times(staminaStrokes, factor),
        recoverySeconds,
        times(movingPerSecond, factor));
  }

  private static OptionalDouble times(OptionalDouble figure, double factor) {
    return figure.isPresent() ? OptionalDouble.of(figure.getAsDouble() * factor) : figure;
  }

  /** With another highest rate of changing notes. */
  public Limit moving(OptionalDouble perSecond) {
    return new Limit(
        peakPerSecond,
        deviationPerSecond,
        sustainedPerSecond,
        staminaStrokes,
        recoverySeconds,
        perSecond);
  }

  private static int floorMilli(double value) {
    return (int) Math.floor(value * 1000 + 1e-6);
  }
}
