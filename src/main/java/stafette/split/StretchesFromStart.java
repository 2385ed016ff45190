package stafette.split;

/**
 * All stretches of a relay that one actor can take when it comes fresh and that begin with the same
 * stroke, by their last stroke.
 */
final class StretchesFromStart {
  private final int first;
  private final int[] points;
  private final SegmentsFromStart[] rows;
  private final SegmentTable[] tables;

  /**
   * @param first the first stroke
   * @param points what each stretch costs, by its last stroke from {@code first} on; {@link
   *     Relaxation#NEVER} where it can't be taken
   * @param rows for each member the segments that begin with its own first stroke
   * @param tables for each member where the rows come from
   */
  StretchesFromStart(int first, int[] points, SegmentsFromStart[] rows, SegmentTable[] tables) {
    this.first = first;
    this.points = points;
    this.rows = rows;
    this.tables = tables;
  }

  int first() {
    return first;
  }

  /** How many stretches there are, those that can't be taken included. */
  int count() {
    return points.length;
  }

  /** The last stroke that can be reached at all; before {@code first} if there is none. */
  int last() {
    return first + points.length - 1;
  }

  int points(int last) {
    return points[last - first];
  }

  boolean goes(int last) {
    return points[last - first] < Relaxation.NEVER;
  }

  /** The segments of a member. */
  SegmentsFromStart row(int member) {
    return rows[member];
  }

  SegmentTable table(int member) {
    return tables[member];
  }
}
