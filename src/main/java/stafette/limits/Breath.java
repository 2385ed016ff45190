package stafette.limits;

import java.util.Map;

/**
 * How a wind player breathes.
 *
 * @param capacitySeconds how long the share of a full breath lasts that one plans with
 * @param catchSeconds the shortest silence in which air can be taken
 * @param fullSeconds the silence that fills an empty player
 * @param use what multiplies the use of air under which condition; 1 where nothing is said
 */
public record Breath(
    double capacitySeconds, double catchSeconds, double fullSeconds, Map<Condition, Double> use) {
  public Breath {
    use = Map.copyOf(use);
  }
}
