package stafette.desktop.relay;

import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.Rank;

/** Which stroke a place on the screen or a key means. */
final class Snap {
  private final Line line;
  private final IntToDoubleFunction edge;

  private Snap(Line line, IntToDoubleFunction edge) {
    this.line = line;
    this.edge = edge;
  }

  /** By where strokes begin. */
  static Snap toOnsets(Line line) {
    return new Snap(line, stroke -> quarters(line.stroke(stroke).onset()));
  }

  /** By where strokes end. */
  static Snap toEnds(Line line) {
    return new Snap(line, stroke -> quarters(line.stroke(stroke).span().end()));
  }

  /** The stroke nearest to a time in quarters. */
  int stroke(double quarters) {
    return nearest(quarters, stroke -> true);
  }

  /** The nearest stroke on a beat; the nearest of all if none stands on a beat. */
  int beat(double quarters) {
    return all().anyMatch(this::isOnBeat) ? nearest(quarters, this::isOnBeat) : stroke(quarters);
  }

  /** The nearest stroke on a beat if one is as near as that, else the nearest of all. */
  int magnetic(double quarters, double reach) {
    int beat = beat(quarters);
    return distance(beat, quarters) <= reach ? beat : stroke(quarters);
  }

  /** The next stroke on a beat before or after one; the line's end where there is none. */
  int beatFrom(int stroke, int direction) {
    int at = stroke + direction;
    while (at > 0 && at < line.count() - 1 && !isOnBeat(at)) {
      at += direction;
    }
    return within(at);
  }

  int strokeFrom(int stroke, int direction) {
    return within(stroke + direction);
  }

  private int within(int stroke) {
    return Math.max(0, Math.min(line.count() - 1, stroke));
  }

  private boolean isOnBeat(int stroke) {
    return line.rank(stroke).compareTo(Rank.BEAT) <= 0;
  }

  private IntStream all() {
    return IntStream.range(0, line.count());
  }

  private int nearest(double quarters, IntPredicate which) {
    return all()
        .filter(which)
        .boxed()
        .min(Comparator.comparingDouble(stroke -> distance(stroke, quarters)))
        .orElseThrow();
  }

  private double distance(int stroke, double quarters) {
    return Math.abs(edge.applyAsDouble(stroke) - quarters);
  }

  private static double quarters(Position position) {
    return position.quarters().toDouble();
  }
}
