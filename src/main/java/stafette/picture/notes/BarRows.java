package stafette.picture.notes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.time.Bar;

/**
 * Breaks bars into rows, all on one scale: as few rows as leave a quarter note its room, but no
 * more than are seen at a glance, until it would get too narrow to be read.
 */
public final class BarRows {
  private static final double IDEAL_POINTS_PER_QUARTER = 15;
  private static final double LEAST_POINTS_PER_QUARTER = 5.2;
  private static final double MOST_POINTS_PER_QUARTER = 44;
  private static final double MOST_STRETCH = 1.7;
  private static final int PHRASE = 4;

  private final List<Bar> bars;
  private final double left;
  private final double width;
  private final double lead;
  private final RowSigns signs;

  /** How much room a bar needs for signs before its first note, beside the lead. */
  public interface RowSigns {
    /**
     * The room in points.
     *
     * @param opensRow whether the signs of key and time stand before the row anyway
     */
    double room(Bar bar, boolean opensRow);
  }

  /**
   * Rows to be made.
   *
   * @param left where rows begin
   * @param width how much room they have
   * @param lead room between a bar line and the first note
   */
  public BarRows(List<Bar> bars, double left, double width, double lead, RowSigns signs) {
    this.signs = signs;
    this.lead = lead;
    this.bars = List.copyOf(bars);
    this.left = left;
    this.width = width;
  }

  /** All bars in one row. */
  public List<BarRow> single(double pointsPerQuarter) {
    return List.of(row(bars, pointsPerQuarter));
  }

  /** Rows for ribbons alone, at most so many where that can be read. */
  public List<BarRow> broken(int atAGlance) {
    int ideal = rowsAt(IDEAL_POINTS_PER_QUARTER);
    int least = rowsAt(LEAST_POINTS_PER_QUARTER);
    int rows = Math.max(least, Math.min(ideal, Math.max(1, atAGlance)));
    return rows(even(rows), MOST_POINTS_PER_QUARTER);
  }

  /**
   * Rows in which a quarter note has at least so much room, as far as one bar fits the width; one
   * note alone, or few in long bars, ask for none.
   */
  public List<BarRow> spaced(double asked) {
    double pointsPerQuarter = Math.max(asked, LEAST_POINTS_PER_QUARTER);
    List<List<Bar>> filled = filled(pointsPerQuarter);
    List<List<Bar>> even = even(filled.size());
    boolean fits = even.stream().allMatch(group -> scale(group) >= pointsPerQuarter);
    return rows(fits ? even : filled, pointsPerQuarter * MOST_STRETCH);
  }

  /** In each row as many bars as fit. */
  private List<List<Bar>> filled(double pointsPerQuarter) {
    List<List<Bar>> groups = new ArrayList<>();
    int first = 0;
    for (int end = 1; end <= bars.size(); end++) {
      if (end == bars.size() || scale(bars.subList(first, end + 1)) < pointsPerQuarter) {
        groups.add(bars.subList(first, end));
        first = end;
      }
    }
    return groups;
  }

  private int rowsAt(double pointsPerQuarter) {
    double points = quarters(bars) * pointsPerQuarter + leads(bars);
    return Math.max(1, (int) Math.ceil(points / width));
  }

  /** At most so many rows of as many bars each, whole phrases in long ones. */
  private List<List<Bar>> even(int rows) {
    int each = (bars.size() + rows - 1) / rows;
    if (each > 2 * PHRASE) {
      each = (each + PHRASE - 1) / PHRASE * PHRASE;
    }
    List<List<Bar>> groups = new ArrayList<>();
    for (int i = 0; i < bars.size(); i += each) {
      groups.add(bars.subList(i, Math.min(bars.size(), i + each)));
    }
    return groups;
  }

  private List<BarRow> rows(List<List<Bar>> groups, double mostPointsPerQuarter) {
    double scale = mostPointsPerQuarter;
    for (List<Bar> group : groups) {
      scale = Math.min(scale, scale(group));
    }
    double pointsPerQuarter = scale;
    return groups.stream().map(group -> row(group, pointsPerQuarter)).toList();
  }

  /** The points that a quarter note gets where some bars fill a row. */
  private double scale(List<Bar> group) {
    return (width - leads(group)) / quarters(group);
  }

  private BarRow row(List<Bar> group, double pointsPerQuarter) {
    Map<Integer, Double> rooms = new HashMap<>();
    for (Bar bar : group) {
      double room = signs.room(bar, bar.equals(group.get(0)));
      if (room > 0) {
        rooms.put(bar.index(), room);
      }
    }
    return new BarRow(group, left, pointsPerQuarter, lead, rooms);
  }

  private double leads(List<Bar> group) {
    double sum = group.size() * lead;
    for (Bar bar : group) {
      sum += signs.room(bar, bar.equals(group.get(0)));
    }
    return sum;
  }

  private static double quarters(List<Bar> bars) {
    return bars.stream().mapToDouble(bar -> bar.span().length().quarters().toDouble()).sum();
  }
}
