package stafette.check;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/**
 * Walks from one tempo to another as long as a player has strength and air enough.
 *
 * <p>What a player has spent is read off after every stroke or sound, with the plan and without it.
 * Each single reading passes the limit at most once on the way, if the way does not cross a tempo
 * at which a silence becomes too short to breathe in: tiredness only grows with the tempo; breath,
 * while the same silences count, is made of sums, minima and maxima of terms that are proportional
 * to the time, or that many above a full breath. So where the readings within the limit are the
 * same at both ends of a stretch, they are so all along, and any other stretch is halved until it
 * is short.
 */
final class TempoBoundSearch {
  private static final double SHORT = 1e-10;

  private final DoubleFunction<Stream<double[][]>> readings;
  private final DoubleFunction<Boolean> holds;

  /**
   * @param readings by factor of the present tempo
   * @param holds whether nothing fails at a factor; depends only on which readings are within 1
   */
  TempoBoundSearch(DoubleFunction<Stream<double[][]>> readings, DoubleFunction<Boolean> holds) {
    this.readings = readings;
    this.holds = holds;
  }

  /** The last factor before the first failure on the way, {@code to} if there is none. */
  double reach(double from, double to) {
    return reach(from, within(from), to, within(to));
  }

  private double reach(double from, BitSet withinFrom, double to, BitSet withinTo) {
    if (withinFrom.equals(withinTo)) {
      return to;
    }
    if (Math.abs(to - from) <= SHORT * from) {
      return holds.apply(to) ? to : from;
    }
    double middle = (from + to) / 2;
    BitSet withinMiddle = within(middle);
    double reached = reach(from, withinFrom, middle, withinMiddle);
    return reached == middle ? reach(middle, withinMiddle, to, withinTo) : reached;
  }

  private BitSet within(double factor) {
    BitSet result = new BitSet();
    double[] all =
        readings.apply(factor).flatMap(Arrays::stream).flatMapToDouble(Arrays::stream).toArray();
    for (int i = 0; i < all.length; i++) {
      result.set(i, Tolerance.within(all[i], 1));
    }
    return result;
  }
}
