package stafette.picture.notes;

import java.util.List;
import java.util.Map;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Bars side by side, what musicians call a system.
 *
 * @param bars at least one
 * @param left where the first one begins, in points
 * @param pointsPerQuarter how wide a quarter note is
 * @param lead room between a bar line and the first note, in points
 * @param signs more room than that for what stands between them, in points, by the bar's index
 * @param spaced where the bars stand and what is in them, by index, if they are not spaced by time
 */
public record BarRow(
    List<Bar> bars,
    double left,
    double pointsPerQuarter,
    double lead,
    Map<Integer, Double> signs,
    Map<Integer, SpacedBar> spaced) {
  public BarRow {
    bars = List.copyOf(bars);
    signs = Map.copyOf(signs);
    spaced = Map.copyOf(spaced);
  }

  /** A row that is spaced by time. */
  public BarRow(
      List<Bar> bars,
      double left,
      double pointsPerQuarter,
      double lead,
      Map<Integer, Double> signs) {
    this(bars, left, pointsPerQuarter, lead, signs, Map.of());
  }

  /** A row without signs between a bar line and the first note. */
  public BarRow(List<Bar> bars, double left, double pointsPerQuarter, double lead) {
    this(bars, left, pointsPerQuarter, lead, Map.of());
  }

  public Span span() {
    return new Span(bars.get(0).span().start(), bars.get(bars.size() - 1).span().end());
  }

  /** Where the last bar line is. */
  public double right() {
    return right(bars.get(bars.size() - 1));
  }

  /** The bar line at a bar's beginning. */
  public double left(Bar bar) {
    SpacedBar own = spaced.get(bar.index());
    return own == null ? x(bar.index() - bars.get(0).index(), bar.span().start()) : own.left();
  }

  /** The bar line at a bar's end. */
  public double right(Bar bar) {
    SpacedBar own = spaced.get(bar.index());
    return own == null
        ? left(bar)
            + lead
            + signs(bar)
            + bar.span().length().quarters().toDouble() * pointsPerQuarter
        : own.right();
  }

  /** Whether a bar is counted, not written. */
  public boolean isCounted(Bar bar) {
    SpacedBar own = spaced.get(bar.index());
    return own != null && own.isCounted();
  }

  /** Where a time within the row stands. */
  public double x(Position position) {
    int begun = 0;
    for (int low = 0, high = bars.size() - 1; low <= high; ) {
      int middle = (low + high) >>> 1;
      if (bars.get(middle).span().start().isAfter(position)) {
        high = middle - 1;
      } else {
        begun = middle + 1;
        low = middle + 1;
      }
    }
    SpacedBar own = spaced.get(bars.get(Math.max(0, begun - 1)).index());
    return own == null ? x(begun, position) : own.x(position);
  }

  /**
   * Where a time stands in a row that is spaced by time.
   *
   * @param begun how many bars have room for what stands before their first note
   */
  private double x(int begun, Position position) {
    return left + leads(begun) + quartersTo(position) * pointsPerQuarter;
  }

  /** The room for signs in a bar, beside the lead. */
  double signs(Bar bar) {
    return signs.getOrDefault(bar.index(), 0.0);
  }

  /** What so many bars take before their first notes. */
  private double leads(int count) {
    double sum = count * lead;
    for (Map.Entry<Integer, Double> sign : signs.entrySet()) {
      if (sign.getKey() < bars.get(0).index() + count) {
        sum += sign.getValue();
      }
    }
    return sum;
  }

  private double quartersTo(Position position) {
    return position.quarters().minus(span().start().quarters()).toDouble();
  }

  /** A time, brought to the row's nearer end if it lies outside. */
  public double xWithin(Position position) {
    return Math.max(left, Math.min(right(), x(position)));
  }

  /** A time on the line's clock, which may run unevenly; brought within the row. */
  public double xWithin(Line line, long micros) {
    for (Bar bar : bars) {
      for (Span beat : bar.beats()) {
        long from = line.micros(beat.start());
        long to = line.micros(beat.end());
        if (micros < to) {
          double share = Math.max(0, micros - from) / (double) (to - from);
          return x(beat.start()) + share * (endX(bar, beat) - x(beat.start()));
        }
      }
    }
    return right();
  }

  private double endX(Bar bar, Span beat) {
    return beat.end().isBefore(bar.span().end()) ? x(beat.end()) : right(bar);
  }
}
