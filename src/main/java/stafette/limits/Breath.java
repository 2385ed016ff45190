package stafette.limits;

import java.util.Map;

/**
 * How a wind player breathes.
 *
 * @param capacitySeconds how long the share of a full breath lasts that one plans with; in the
 *     tables, what 84 of 100 players have
 * @param catchSeconds the shortest silence in which air can be taken
 * @param fullSeconds the silence that fills an empty player
 * @param spread the standard deviation of the capacity between players, as a share of its mean; 0
 *     for somebody's own figure
 * @param use what multiplies the use of air under which condition; 1 where nothing is said
 */
public record Breath(
    double capacitySeconds,
    double catchSeconds,
    double fullSeconds,
    double spread,
    Map<Condition, Double> use) {
  /** Labelled default of the planning model: the spread of the capacity between players. */
  public static final double DEFAULT_SPREAD = 0.15;

  public Breath {
    use = Map.copyOf(use);
  }

  /** How the population breathes of which the tables tell. */
  public Breath(
      double capacitySeconds, double catchSeconds, double fullSeconds, Map<Condition, Double> use) {
    this(capacitySeconds, catchSeconds, fullSeconds, DEFAULT_SPREAD, use);
  }

  /**
   * How somebody breathes, to the millisecond, of whom another share of the population has as much
   * air or more.
   *
   * @param planned the share that has this capacity
   */
  public Breath at(Assurance planned, Assurance wanted) {
    double capacity = capacitySeconds * (1 + spread * wanted.z()) / (1 + spread * planned.z());
    double rounded = Math.round(capacity * 1000) / 1000.0;
    return new Breath(rounded, catchSeconds, fullSeconds, spread, use);
  }

  /**
   * Somebody who has as much trouble with a line as it stands as this one has if all its silences
   * are multiplied by one factor and all its sounds by another.
   */
  public Breath where(double silences, double sounds) {
    return new Breath(
        capacitySeconds / sounds, catchSeconds / silences, fullSeconds / silences, spread, use);
  }
}
