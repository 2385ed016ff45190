package stafette.picture.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import stafette.picture.notes.BarLines;
import stafette.picture.notes.NoteRoom;
import stafette.picture.notes.NoteRoom.ItemRoom;
import stafette.picture.notes.SpacedBar;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * How much room a stretch takes on a staff. Beyond the least that they need, notes and rests are
 * drawn apart by how long they last, but longer ones by less than in proportion, as engravers do.
 *
 * @param leasts the least room from each place to the next, in spaces; none for counted bars
 */
record StretchRoom(CountedStretch stretch, NavigableMap<Position, Double> leasts) {
  /** How many spaces a quarter note gets beyond the least, at least where rows are filled. */
  static final double LEAST_STRETCH = 0.5;

  static final double MOST_STRETCH = 10;
  private static final double IDEAL_STRETCH = 2;

  /** What counted bars, and bars in which nothing is written, take in spaces. */
  private static final double COUNTED = 9;

  private static final double COUNTED_GIVE = 1;
  private static final double BY_LENGTH = 0.6;

  static StretchRoom of(CountedStretch stretch, List<NoteRoom> rooms) {
    NavigableMap<Position, Double> leasts = new TreeMap<>();
    if (!stretch.isCounted()) {
      Bar bar = stretch.bars().get(0);
      NavigableMap<Position, ItemRoom> items = new TreeMap<>();
      items.put(bar.span().start(), new ItemRoom(0, 0));
      rooms.forEach(
          room -> room.within(bar).forEach((at, need) -> items.merge(at, need, ItemRoom::with)));
      items.forEach(
          (at, need) -> {
            Map.Entry<Position, ItemRoom> next = items.higherEntry(at);
            leasts.put(at, need.after() + (next == null ? 0 : next.getValue().before()));
          });
      double line = BarLines.widthBefore(bar.landmarks().after());
      leasts.merge(leasts.lastKey(), line, Double::sum);
      if (leasts.size() == 1) {
        leasts.merge(bar.span().start(), COUNTED, Math::max);
      }
    }
    return new StretchRoom(stretch, leasts);
  }

  Bar first() {
    return stretch.bars().get(0);
  }

  /** In spaces. */
  double least() {
    return stretch.isCounted()
        ? COUNTED
        : leasts.values().stream().mapToDouble(least -> least).sum();
  }

  /** How many spaces it grows where a quarter note grows by one. */
  double give() {
    return stretch.isCounted()
        ? COUNTED_GIVE
        : leasts.keySet().stream().mapToDouble(this::give).sum();
  }

  private double give(Position at) {
    Position next = Optional.ofNullable(leasts.higherKey(at)).orElse(first().span().end());
    return Math.pow(next.since(at).quarters().toDouble(), BY_LENGTH);
  }

  /** How much worse a row is than one whose notes stand as well apart as can be. */
  static double unevenness(double stretch) {
    return Math.pow(Math.log(Math.max(LEAST_STRETCH, stretch) / IDEAL_STRETCH), 2);
  }

  /**
   * Its bars in a row.
   *
   * @param left the bar line at its beginning, in points
   * @param start where its first note stands
   * @param space from line to line of the staff, in points
   * @param drawnApart how many spaces a quarter note gets beyond the least
   */
  Map<Integer, SpacedBar> placed(double left, double start, double space, double drawnApart) {
    Map<Integer, SpacedBar> placed = new HashMap<>();
    NavigableMap<Position, Double> places = new TreeMap<>();
    double at = start;
    for (Map.Entry<Position, Double> each : leasts.entrySet()) {
      places.put(each.getKey(), at);
      at += (each.getValue() + drawnApart * give(each.getKey())) * space;
    }
    double right = stretch.isCounted() ? start + (least() + drawnApart * give()) * space : at;
    if (!stretch.isCounted()) {
      places.put(first().span().end(), right);
    }
    for (Bar bar : stretch.bars()) {
      boolean opens = bar.equals(first());
      placed.put(bar.index(), new SpacedBar(opens ? left : right, right, places));
    }
    return placed;
  }
}
