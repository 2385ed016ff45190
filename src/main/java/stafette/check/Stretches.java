package stafette.check;

import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import stafette.limits.Breath;

/** Factors by which the times of a score are stretched: 2 is half the tempo. */
final class Stretches {
  /** As far as anybody would change a tempo. */
  static final double LEAST = 1e-3;

  static final double MOST = 1e3;

  private static final int STEPS = 80;

  private Stretches() {}

  /**
   * The least stretch from which on something holds that no slower tempo spoils; {@link #MOST} if
   * it never does.
   */
  static double leastFor(DoublePredicate holds) {
    if (holds.test(LEAST)) {
      return LEAST;
    }
    return holds.test(MOST) ? between(MOST, LEAST, holds) : MOST;
  }

  /**
   * The last point on the way from one that holds to one that doesn't, to the precision of the
   * machine.
   */
  static double between(double holding, double failing, DoublePredicate holds) {
    double good = holding;
    double bad = failing;
    for (int step = 0; step < STEPS; step++) {
      double middle = Math.sqrt(good * bad);
      if (holds.test(middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  /** The stretches at which a silence of a part just becomes long enough to breathe in. */
  static DoubleStream breaths(WholePart part, Breath breath) {
    return Course.Air.of(part, breath).stream()
        .mapToDouble(Course.Air::silence)
        .filter(silence -> silence > 0)
        .map(silence -> breath.catchSeconds() / silence)
        .distinct()
        .sorted();
  }
}
