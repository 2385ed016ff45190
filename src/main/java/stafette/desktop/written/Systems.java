package stafette.desktop.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.BarRows;
import stafette.time.Bar;

/**
 * Breaks bars into rows. Bars that don't follow each other stand in different rows.
 *
 * @param left where a row begins whose first bar that is
 * @param width of a row with all that stands before its first bar
 * @param lead room between a bar line and the first note
 * @param signs room for what changes at a bar
 * @param leastPerQuarter the least width of a quarter note
 */
record Systems(
    ToDoubleFunction<Bar> left,
    double width,
    double lead,
    BarRows.RowSigns signs,
    double leastPerQuarter) {
  /** Up to where the last row of a run is drawn out to the full width. */
  private static final double MOST_STRETCH = 1.6;

  List<BarRow> of(List<Bar> bars) {
    List<BarRow> rows = new ArrayList<>();
    List<Bar> open = new ArrayList<>();
    for (Bar bar : bars) {
      if (!open.isEmpty() && (!follows(open, bar) || !hasRoom(open, bar))) {
        rows.add(row(open));
        open = new ArrayList<>();
      }
      open.add(bar);
    }
    rows.add(row(open));
    return rows;
  }

  private static boolean follows(List<Bar> open, Bar bar) {
    return bar.index() == open.get(open.size() - 1).index() + 1;
  }

  private boolean hasRoom(List<Bar> open, Bar bar) {
    List<Bar> all = new ArrayList<>(open);
    all.add(bar);
    return perQuarter(all) >= leastPerQuarter;
  }

  private double left(List<Bar> bars) {
    return left.applyAsDouble(bars.get(0));
  }

  /** At which bars fill a row. */
  private double perQuarter(List<Bar> bars) {
    double quarters =
        bars.stream().mapToDouble(bar -> bar.span().length().quarters().toDouble()).sum();
    double before = rooms(bars).values().stream().mapToDouble(room -> room).sum();
    return Math.max(1, width - left(bars) - lead * bars.size() - before) / quarters;
  }

  private Map<Integer, Double> rooms(List<Bar> bars) {
    return bars.stream()
        .collect(Collectors.toMap(Bar::index, bar -> signs.room(bar, bar.equals(bars.get(0)))));
  }

  private BarRow row(List<Bar> bars) {
    double full = perQuarter(bars);
    double most = Math.max(leastPerQuarter, 1) * MOST_STRETCH;
    return new BarRow(bars, left(bars), Math.min(full, most), lead, rooms(bars));
  }
}
