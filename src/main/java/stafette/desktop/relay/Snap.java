package stafette.desktop.relay;

import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import stafette.score.Line;
import stafette.time.Rank;

/** Which stroke a place on the screen or a key means. */
final class Snap {
  private final Line line;

  Snap(Line line) {
    this.line = line;
  }

  /** The stroke that begins nearest to a time. */
  int stroke(double quarters) {
    return nearest(quarters, stroke -> true);
  }

  /** The stroke on a beat that begins nearest; the nearest of all if none stands on a beat. */
  int beat(double quarters) {
    return IntStream.range(0, line.count()).anyMatch(this::isOnBeat)
        ? nearest(quarters, this::isOnBeat)
        : stroke(quarters);
  }

  /** The next stroke on a beat before or after one; the line's end where there is none. */
  int beatFrom(int stroke, int direction) {
    int at = stroke + direction;
    while (at > 0 && at < line.count() - 1 && !isOnBeat(at)) {
      at += direction;
    }
    return Math.max(0, Math.min(line.count() - 1, at));
  }

  int strokeFrom(int stroke, int direction) {
    return Math.max(0, Math.min(line.count() - 1, stroke + direction));
  }

  private boolean isOnBeat(int stroke) {
    return line.rank(stroke).compareTo(Rank.BEAT) <= 0;
  }

  private int nearest(double quarters, IntPredicate which) {
    return IntStream.range(0, line.count())
        .filter(which)
        .boxed()
        .min(Comparator.comparingDouble(stroke -> Math.abs(quarters(stroke) - quarters)))
        .orElseThrow();
  }

  private double quarters(int stroke) {
    return line.stroke(stroke).onset().quarters().toDouble();
  }
}
