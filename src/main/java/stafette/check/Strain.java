package stafette.check;

import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * What effort costs. A segment's strain, as if its player came fresh, is
 *
 * <pre>
 * x = Σ strain · ((u − knee)/(1 − knee))²  over its strokes but the first with u &gt; knee
 *     + spent · s²                          once, at its last stroke
 * points = ⌊x + ½⌋
 * </pre>
 *
 * where u is the {@link #use} at a stroke and s what tiredness or breath have passed their knees
 * after the last one, as {@link #endMicropoints} has it. To be exact and free of any order, each
 * summand is rounded once to a millionth of a point and the millionths are added as whole numbers;
 * so whoever reckons a segment's cost with these functions gets the same figure.
 */
public final class Strain {
  private static final long MICROPOINTS = 1_000_000;

  private Strain() {}

  /**
   * The larger of the shares of peak and moving limit that stroke {@code j} takes when the player
   * began with {@code first}; 0 where neither is tested.
   */
  public static double use(Demand demand, Line line, int first, int j) {
    return Math.max(
        Burst.STROKES.use(demand, line, first, j), Burst.NOTES.use(demand, line, first, j));
  }

  /** A share of a limit in words, rounded up, so that nothing beyond the limit is "100 %". */
  public static String percent(double share) {
    return wholePercent(share) + " %";
  }

  /** A share of a limit in whole per cent, rounded up. */
  public static int wholePercent(double share) {
    return (int) Math.ceil(share * 100 - 1e-9);
  }

  /** What one stroke at that use costs, in millionths of a point. */
  public static long strokeMicropoints(double use, Weights weights) {
    if (use <= weights.knee()) {
      return 0;
    }
    double beyond = (use - weights.knee()) / (1 - weights.knee());
    return Math.round(weights.strain() * beyond * beyond * MICROPOINTS);
  }

  /**
   * What a segment's end costs whose player came fresh, in millionths of a point.
   *
   * @param tiredness after its last stroke
   * @param breath the share of air spent at the end of its last sound
   */
  public static long endMicropoints(double tiredness, double breath, Weights weights) {
    double spent =
        Math.max(beyond(tiredness, weights.tiredKnee()), beyond(breath, weights.breathKnee()));
    return Math.round(weights.spent() * spent * spent * MICROPOINTS);
  }

  private static double beyond(double share, double knee) {
    return Math.max(0, (share - knee) / (1 - knee));
  }

  /** Whole points, half rounded up. */
  public static int points(long micropoints) {
    return Math.toIntExact((micropoints + MICROPOINTS / 2) / MICROPOINTS);
  }
}
