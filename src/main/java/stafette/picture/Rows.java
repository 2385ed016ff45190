package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import stafette.time.Bar;

/**
 * Breaks bars into rows, all on one scale: as few rows as leave a quarter note its room, but no
 * more than are seen at a glance, until it would get too narrow to be read.
 */
final class Rows {
  private static final double IDEAL_POINTS_PER_QUARTER = 15;
  private static final double LEAST_POINTS_PER_QUARTER = 5.2;
  private static final double MOST_POINTS_PER_QUARTER = 44;
  private static final int PHRASE = 4;

  private final List<Bar> bars;
  private final double left;
  private final double width;

  /**
   * Rows to be made.
   *
   * @param left where rows begin
   * @param width how much room they have
   */
  Rows(List<Bar> bars, double left, double width) {
    this.bars = List.copyOf(bars);
    this.left = left;
    this.width = width;
  }

  /** All bars in one row. */
  List<Row> single(double pointsPerQuarter) {
    return List.of(new Row(bars, left, pointsPerQuarter));
  }

  /** Rows for ribbons alone, at most so many where that can be read. */
  List<Row> broken(int atAGlance) {
    int ideal = (int) Math.ceil(quarters(bars) * IDEAL_POINTS_PER_QUARTER / width);
    int most = (int) Math.ceil(quarters(bars) * LEAST_POINTS_PER_QUARTER / width);
    return evenly(Math.max(most, Math.min(ideal, Math.max(1, atAGlance))));
  }

  /** Rows in which a quarter note has at least so much room, as far as one bar fits the width. */
  List<Row> spaced(double pointsPerQuarter) {
    return evenly((int) Math.ceil(quarters(bars) * pointsPerQuarter / width));
  }

  private List<Row> evenly(int rows) {
    int each = Math.max(1, (bars.size() + rows - 1) / Math.max(1, rows));
    if (each > 2 * PHRASE) {
      each = (each + PHRASE - 1) / PHRASE * PHRASE;
    }
    List<List<Bar>> groups = new ArrayList<>();
    for (int i = 0; i < bars.size(); i += each) {
      groups.add(bars.subList(i, Math.min(bars.size(), i + each)));
    }
    double longest = groups.stream().mapToDouble(Rows::quarters).max().orElse(1);
    double scale = Math.min(MOST_POINTS_PER_QUARTER, width / longest);
    return groups.stream().map(group -> new Row(group, left, scale)).toList();
  }

  private static double quarters(List<Bar> bars) {
    return bars.stream().mapToDouble(bar -> bar.span().length().quarters().toDouble()).sum();
  }
}
