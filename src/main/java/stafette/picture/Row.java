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
 */
record Row(List<Bar> bars, double left, double pointsPerQuarter) {
  Row {
    bars = List.copyOf(bars);
  }

  Span span() {
    return new Span(bars.get(0).span().start(), bars.get(bars.size() - 1).span().end());
  }

  double right() {
    return x(span().end());
  }

  double x(Position position) {
    double quarters = position.quarters().minus(span().start().quarters()).toDouble();
    return left + quarters * pointsPerQuarter;
  }

  /** A position, brought to the row's nearer end if it lies outside. */
  double xWithin(Position position) {
    return Math.max(left, Math.min(right(), x(position)));
  }

  /** A time on the line's clock, which may run unevenly; brought within the row. */
  double xWithin(Line line, long micros) {
    for (Bar bar : bars) {
      for (Span beat : bar.beats()) {
        long from = line.micros(beat.start());
        long to = line.micros(beat.end());
        if (micros < to) {
          double share = Math.max(0, micros - from) / (double) (to - from);
          return x(beat.start()) + share * (x(beat.end()) - x(beat.start()));
        }
      }
    }
    return right();
  }
}
