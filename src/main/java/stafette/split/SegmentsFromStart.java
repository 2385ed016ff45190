package stafette.split;

/**
 * All segments of one kind of player in one way that begin with the same stroke, by their last
 * stroke. What a player brings along is added in constant time: tiredness inside a segment is a sum
 * of changes floored at 0, so a player who comes with f has at stroke j the larger of f + drift(j)
 * and what a fresh player has (Lindley's recursion, 1952), and stays within the whole up to j if f
 * + rise(j) does. Air likewise.
 */
final class SegmentsFromStart {
  /** Stands for the last strokes that load where every stroke does. */
  static final int[] EACH_LOADS = {};

  private static final Running NONE = new Running(new long[0], new long[0], new long[0]);

  /** No segment at all. */
  static final SegmentsFromStart EMPTY =
      new SegmentsFromStart(0, new int[0], NONE, NONE, EACH_LOADS);

  private final int first;
  private final int[] points;
  private final Running effort;
  private final Running air;
  private final int[] lastLoad;

  /**
   * How something that is spent goes along, by last stroke; three arrays of the same length.
   *
   * <p>{@code drift} is the change since the first stroke, without the floor; {@code rise} the
   * highest drift so far; {@code fresh} what a fresh player has spent.
   */
  static final class Running {
    private final long[] drift;
    private final long[] rise;
    private final long[] fresh;

    Running(long[] drift, long[] rise, long[] fresh) {
      this.drift = drift;
      this.rise = rise;
      this.fresh = fresh;
    }

    private boolean isFree() {
      return drift.length == 0;
    }

    private long after(int k, long brought) {
      return Math.max(brought + drift[k], fresh[k]);
    }

    private boolean allows(int k, long brought) {
      return rise[k] <= RoundedUnits.MOST - brought;
    }

    /** The last index that can be reached; -1 if there is none. */
    private int reach(long brought) {
      int low = -1;
      int high = rise.length - 1;
      while (low < high) {
        int middle = (low + high + 1) >> 1;
        if (allows(middle, brought)) {
          low = middle;
        } else {
          high = middle - 1;
        }
      }
      return low;
    }
  }

  /**
   * Arrays by last stroke, from {@code first} on, all of the same length.
   *
   * @param points cost of the segment
   * @param effort how tiredness goes along
   * @param air how air is spent; empty for players without breath
   * @param lastLoad the last stroke that loads, or {@link #EACH_LOADS}
   */
  SegmentsFromStart(int first, int[] points, Running effort, Running air, int[] lastLoad) {
    this.first = first;
    this.points = points;
    this.effort = effort;
    this.air = air;
    this.lastLoad = lastLoad;
  }

  /** The last stroke a fresh player can reach; before {@code first} if none. */
  int last() {
    return first + points.length - 1;
  }

  /** Whether a turn up to a stroke that can be reached is long enough for its speed. */
  boolean goes(int last) {
    return points(last) < Relaxation.NEVER;
  }

  int points(int last) {
    return points[last - first];
  }

  /** The points of all segments, by their last stroke; not to be changed. */
  int[] allPoints() {
    return points;
  }

  /** The change of tiredness from the first stroke on, its grace notes left out. */
  long drift(int last) {
    return effort.drift[last - first];
  }

  /**
   * The last stroke that a player reaches who is so tired, and has spent so much air, when it makes
   * the first one.
   */
  int reach(long tiredness, long airSpent) {
    int reach = effort.reach(tiredness);
    return first + (air.isFree() ? reach : Math.min(reach, air.reach(airSpent)));
  }

  /** Whether such a player reaches a stroke. */
  boolean reaches(int last, long tiredness, long airSpent) {
    int k = last - first;
    return k < points.length
        && effort.allows(k, tiredness)
        && (air.isFree() || air.allows(k, airSpent));
  }

  long tiredness(int last, long atFirst) {
    return effort.after(last - first, atFirst);
  }

  long air(int last, long before) {
    return air.isFree() ? 0 : air.after(last - first, before);
  }

  int lastLoad(int last) {
    return lastLoad == EACH_LOADS ? last : lastLoad[last - first];
  }
}
