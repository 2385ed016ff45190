package stafette.picture.notes;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import stafette.time.Position;

/**
 * Where a bar of a row stands, and where what is written in it.
 *
 * @param left the bar line at its beginning, in points
 * @param right the bar line at its end; the same if it is counted together with one before
 * @param places where notes and rests begin; none if it is counted, not written
 */
public record SpacedBar(double left, double right, NavigableMap<Position, Double> places) {
  public SpacedBar {
    places = Collections.unmodifiableNavigableMap(new TreeMap<>(places));
  }

  boolean isCounted() {
    return places.isEmpty();
  }

  /** A time between two places stands between them. */
  double x(Position at) {
    Map.Entry<Position, Double> from = places.floorEntry(at);
    Map.Entry<Position, Double> to = places.higherEntry(at);
    if (from == null || to == null) {
      return from == null ? left : from.getValue();
    }
    double share =
        at.since(from.getKey()).quarters().toDouble()
            / to.getKey().since(from.getKey()).quarters().toDouble();
    return from.getValue() + share * (to.getValue() - from.getValue());
  }
}
