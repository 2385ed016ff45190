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
 *     + end · f²                            once, at its last stroke
 * points = ⌊x + ½⌋
 * </pre>
 *
 * where u is the {@link #use} at a stroke and f the {@link Tiredness} after the last one. To be
 * exact and free of any order, each summand is rounded once to a millionth of a point and the
 * millionths are added as whole numbers; so whoever reckons a segment's cost with these functions
 * gets the same figure.
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

  /** What a segment's end at that tiredness costs, in millionths of a point. */
  public static long endMicropoints(double tiredness, Weights weights) {
    return Math.round(weights.end() * tiredness * tiredness * MICROPOINTS);
  }

  /** Whole points, half rounded up. */
  public static int points(long micropoints) {
    return Math.toIntExact((micropoints + MICROPOINTS / 2) / MICROPOINTS);
  }
}
