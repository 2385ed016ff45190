package stafette.split;

/**
 * All segments of one kind of player with one technique that begin with the same stroke, by their
 * last stroke. What a player brings along is added in constant time: tiredness inside a segment is
 * a sum of changes floored at 0, so a player who comes with f has at stroke j the larger of f +
 * drift(j) and what a fresh player has (Lindley's recursion, 1952), and stays within the whole up
 * to j if f + rise(j) does. Air likewise.
 */
final class Row {
  /** No segment at all. */
  static final Row EMPTY =
      new Row(
          0,
          new int[0],
          new long[0],
          new long[0],
          new long[0],
          new long[0],
          new long[0],
          new long[0],
          new int[0]);

  private final int first;
  private final int[] points;
  private final long[] drift;
  private final long[] rise;
  private final long[] fresh;
  private final long[] airDrift;
  private final long[] airRise;
  private final long[] airFresh;
  private final int[] lastLoad;

  /**
   * Arrays by last stroke, from {@code first} on, all of the same length; those of the air are
   * empty for players without breath.
   *
   * @param points cost of the segment
   * @param drift change of tiredness since the first stroke, without the floor
   * @param rise the highest drift so far
   * @param fresh tiredness of a fresh player
   * @param lastLoad the last stroke that loads
   */
  Row(
      int first,
      int[] points,
      long[] drift,
      long[] rise,
      long[] fresh,
      long[] airDrift,
      long[] airRise,
      long[] airFresh,
      int[] lastLoad) {
    this.first = first;
    this.points = points;
    this.drift = drift;
    this.rise = rise;
    this.fresh = fresh;
    this.airDrift = airDrift;
    this.airRise = airRise;
    this.airFresh = airFresh;
    this.lastLoad = lastLoad;
  }

  /** The last stroke a fresh player can reach; before {@code first} if none. */
  int last() {
    return first + points.length - 1;
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
    return drift[last - first];
  }

  /**
   * The last stroke that a player reaches who is so tired, and has spent so much air, when it makes
   * the first one.
   */
  int reach(long tiredness, long air) {
    int reach = lastWithin(rise, Shares.WHOLE - tiredness);
    return first
        + (airRise.length == 0 ? reach : Math.min(reach, lastWithin(airRise, Shares.WHOLE - air)));
  }

  long tiredness(int last, long atFirst) {
    return Math.max(atFirst + drift[last - first], fresh[last - first]);
  }

  long air(int last, long before) {
    return airDrift.length == 0
        ? 0
        : Math.max(before + airDrift[last - first], airFresh[last - first]);
  }

  int lastLoad(int last) {
    return lastLoad[last - first];
  }

  /** The last index of a rising array with a value not above the most; -1 if there is none. */
  private static int lastWithin(long[] rising, long most) {
    int low = -1;
    int high = rising.length - 1;
    while (low < high) {
      int middle = (low + high + 1) >> 1;
      if (rising[middle] <= most) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
