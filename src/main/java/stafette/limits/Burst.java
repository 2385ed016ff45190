package stafette.limits;

import java.util.Optional;
import stafette.score.Line;

/**
 * How near the last few gaps before a stroke come to a limit.
 *
 * <p>No single gap is a limit: people place two strokes close together far more easily than they
 * keep the rate. Over the last one, two, three or four gaps of a chain since the segment began, the
 * time taken must be at least what the strokes that end them need, divided by 1.5, 1.25, 1.1 and 1;
 * where two takers alternate (two hands, two fingers, two syllables) by 2, 1.5, 1.2 and 1. Two
 * kinds of chains run through a player's strokes: those of tongue or bow, or on the same key, which
 * need 1/peak each; and all notes in a row, which need 1/moving each where the pitch changes. The
 * divisors are a judgement (common practice, no source).
 *
 * <p>Needs are whole nanoseconds, rounded up once, and the divisors are fractions, so that whoever
 * compares them with times gets the same answer.
 */
public enum Burst {
  /** Strokes of tongue, bow, finger or mallet. */
  STROKES {
    @Override
    int before(Demand demand, int first, int j) {
      return demand.peakFrom(first, j);
    }

    @Override
    long needNanos(Demand demand, int j) {
      return demand.peakNeedNanos(j);
    }
  },
  /** All notes in a row. */
  NOTES {
    @Override
    int before(Demand demand, int first, int j) {
      return j > first ? j - 1 : NONE;
    }

    @Override
    long needNanos(Demand demand, int j) {
      return demand.movingNeedNanos(j);
    }
  };

  /** How many gaps are looked at together at the most. */
  public static final int MOST_GAPS = 4;

  private static final int NONE = -1;

  /** In a microsecond. */
  private static final long NANOS = 1000;

  /** By the number of gaps less one, the least common denominator of both rows of parts. */
  private static final int[] WHOLE = {6, 15, 66, 1};

  /** What of a need counts, by takers less one and gaps less one: 1/1.5 is four sixths. */
  private static final int[][] PARTS = {{4, 12, 60, 1}, {3, 10, 55, 1}};

  abstract int before(Demand demand, int first, int j);

  abstract long needNanos(Demand demand, int j);

  /**
   * The largest share of the time that the last gaps before a stroke leave which their strokes
   * need; 0 where nothing is tested, and 1 at the limit.
   *
   * @param first the stroke with which the segment begins
   */
  public double use(Demand demand, Line line, int first, int j) {
    return use(demand, line, first, j, MOST_GAPS);
  }

  private double use(Demand demand, Line line, int first, int j, int most) {
    double use = 0;
    for (int gaps = 1; gaps <= most; gaps++) {
      long need = 0;
      int at = j;
      for (int gap = 0; gap < gaps; gap++) {
        int from = before(demand, first, at);
        if (from < 0) {
          return use;
        }
        need += needNanos(demand, at) * PARTS[demand.takers(at) - 1][gaps - 1];
        at = from;
      }
      long nanos = (line.onsetMicros(j) - line.onsetMicros(at)) * NANOS;
      use = Math.max(use, (double) need / (nanos * WHOLE[gaps - 1]));
    }
    return use;
  }

  /**
   * The gaps before a stroke that take most of a limit.
   *
   * @param strokes how many belong to them, at least two
   * @param perSecond how fast they follow one another
   * @param limitPerSecond how fast so few may
   */
  public record Tightest(int strokes, double perSecond, double limitPerSecond) {}

  /** The fewest gaps that make out the use of a stroke; empty where nothing is tested. */
  public Optional<Tightest> tightest(Demand demand, Line line, int first, int j) {
    double use = use(demand, line, first, j);
    if (use == 0) {
      return Optional.empty();
    }
    int gaps = 1;
    int at = before(demand, first, j);
    while (use(demand, line, first, j, gaps) < use) {
      gaps++;
      at = before(demand, first, at);
    }
    double perSecond = gaps * 1e6 / (line.onsetMicros(j) - line.onsetMicros(at));
    return Optional.of(new Tightest(gaps + 1, perSecond, perSecond / use));
  }

  /**
   * Whether the last gaps before a stroke leave its strokes time enough. This is exact: a quotient
   * of whole numbers below 2^52, which is eighteen hours between strokes, is above 1 as a double
   * whenever the need is the larger.
   */
  public boolean holds(Demand demand, Line line, int first, int j) {
    return use(demand, line, first, j) <= 1;
  }

  /**
   * The largest share of the time of a whole chain of a stretch which its strokes need, without any
   * relief; 0 where nothing is tested.
   */
  public double ofWhole(Demand demand, Line line, int first, int last) {
    double use = 0;
    for (int j = first + 1; j <= last; j++) {
      if (isLast(demand, first, last, j)) {
        long need = 0;
        int at = j;
        for (int from = before(demand, first, at); from >= 0; from = before(demand, first, at)) {
          need += needNanos(demand, at);
          at = from;
        }
        long nanos = (line.onsetMicros(j) - line.onsetMicros(at)) * NANOS;
        use = at < j ? Math.max(use, (double) need / nanos) : use;
      }
    }
    return use;
  }

  private boolean isLast(Demand demand, int first, int last, int j) {
    for (int later = j + 1; later <= last; later++) {
      if (before(demand, first, later) == j) {
        return false;
      }
    }
    return true;
  }

  /** The first stroke on which it depends what the last gaps before one ask; itself if none. */
  public int earliest(Demand demand, int first, int j) {
    int at = j;
    for (int gap = 0; gap < MOST_GAPS; gap++) {
      int from = before(demand, first, at);
      if (from < 0) {
        return at;
      }
      at = from;
    }
    return at;
  }
}
