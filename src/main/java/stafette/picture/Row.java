package stafette.picture;

import java.util.List;
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
 */
public record Row(List<Bar> bars, double left, double pointsPerQuarter, double lead) {
  public Row {
    bars = List.copyOf(bars);
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
    int before = bar.index() - bars.get(0).index();
    return left + before * lead + quartersTo(bar.span().start()) * pointsPerQuarter;
  }

  /** The bar line at a bar's end. */
  public double right(Bar bar) {
    return left(bar) + lead + bar.span().length().quarters().toDouble() * pointsPerQuarter;
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
    return left + begun * lead + quartersTo(position) * pointsPerQuarter;
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
          double length = beat.length().quarters().toDouble() * pointsPerQuarter;
          return x(beat.start()) + share * length;
        }
      }
    }
    return right();
  }
}
