package stafette.split;

import java.util.List;

/**
 * A lower bound on what the rest of the line costs a crew: the same problem with everybody always
 * rested, solved backward.
 *
 * <pre>
 * S(a, i, e) = least over ends e' &gt; e of cost(a, i, e') + E(a, e')     a begins with i, the one before ends with e
 * E(a, e)    = least over starts i and followers b of handoff(a, b, i, e) + S(b, i, e);  0 at the line's end
 * </pre>
 *
 * <p>Time is linear in the line, in the overlap's width and in the square of the number of kinds
 * and techniques.
 */
final class Relaxation {
  /** More than any plan costs; sums of two of them still fit. */
  static final int NEVER = 1 << 28;

  private final Crew crew;
  private final Handoffs handoffs;
  private final int count;
  private final int[][][] toEnd;
  private final int[][][][] toStart;

  Relaxation(Crew crew, Handoffs handoffs, int count) {
    this.crew = crew;
    this.handoffs = handoffs;
    this.count = count;
    List<PlayerKind> kinds = crew.kinds();
    toEnd = new int[kinds.size()][][];
    toStart = new int[kinds.size()][][][];
    for (int kind = 0; kind < kinds.size(); kind++) {
      boolean present = crew.counts().get(kind) > 0;
      int skills = present ? kinds.get(kind).tables().size() : 0;
      toEnd[kind] = new int[skills][count];
      toStart[kind] = new int[skills][count][];
      for (int skill = 0; skill < skills; skill++) {
        for (int start = 0; start < count; start++) {
          toStart[kind][skill][start] = new int[handoffs.latestEnd(start) - start + 2];
        }
      }
    }
    solve();
  }

  /** E: what follows a segment that ends with {@code end}. */
  int fromEnd(int kind, int skill, int end) {
    return toEnd[kind][skill][end];
  }

  /**
   * S: a segment that begins with {@code start} after one that ends with {@code before}, and what
   * follows it.
   */
  int fromStart(int kind, int skill, int start, int before) {
    return toStart[kind][skill][start][before - start + 1];
  }

  /** The bound for the whole line. */
  int whole() {
    int least = NEVER;
    for (int kind = 0; kind < toStart.length; kind++) {
      for (int skill = 0; skill < toStart[kind].length; skill++) {
        least = Math.min(least, fromStart(kind, skill, 0, -1));
      }
    }
    return least;
  }

  private void solve() {
    for (int end = count - 1; end >= 0; end--) {
      for (int start = handoffs.earliest(end);
          start <= Math.min(end, handoffs.latest(end));
          start++) {
        fillStart(start, end);
      }
      if (end + 1 < count) {
        fillStart(end + 1, end);
      }
      fillEnd(end);
    }
    fillStart(0, -1);
  }

  private void fillStart(int start, int before) {
    for (int kind = 0; kind < toStart.length; kind++) {
      for (int skill = 0; skill < toStart[kind].length; skill++) {
        int[] known = toStart[kind][skill][start];
        int index = before - start + 1;
        Row row = crew.kinds().get(kind).tables().get(skill).row(start);
        known[index] =
            index + 1 < known.length && known[index + 1] > 0
                ? Math.min(known[index + 1], withEnd(kind, skill, row, before + 1))
                : leastEnd(kind, skill, row, Math.max(start, before + 1));
      }
    }
  }

  private int leastEnd(int kind, int skill, Row row, int from) {
    int least = NEVER;
    for (int end = from; end <= row.last(); end++) {
      least = Math.min(least, row.points(end) + toEnd[kind][skill][end]);
    }
    return least;
  }

  private int withEnd(int kind, int skill, Row row, int end) {
    return end > row.last() ? NEVER : row.points(end) + toEnd[kind][skill][end];
  }

  private void fillEnd(int end) {
    for (int kind = 0; kind < toEnd.length; kind++) {
      for (int skill = 0; skill < toEnd[kind].length; skill++) {
        toEnd[kind][skill][end] = end == count - 1 ? 0 : leastHandoff(kind, end);
      }
    }
  }

  private int leastHandoff(int kind, int end) {
    int least = NEVER;
    for (int start = handoffs.earliest(end);
        start <= Math.min(end, handoffs.latest(end));
        start++) {
      least = Math.min(least, leastNext(kind, start, end));
    }
    return handoffs.overSilence(end) ? Math.min(least, leastNext(kind, end + 1, end)) : least;
  }

  private int leastNext(int kind, int start, int end) {
    int least = NEVER;
    for (int next = 0; next < toStart.length; next++) {
      if (crew.follows(kind, next) && toStart[next].length > 0) {
        int handoff = handoffs.cost(kind, next, start, end);
        for (int skill = 0; skill < toStart[next].length; skill++) {
          least = Math.min(least, handoff + fromStart(next, skill, start, end));
        }
      }
    }
    return Math.min(NEVER, least);
  }
}
