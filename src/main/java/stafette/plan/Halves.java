package stafette.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stafette.score.Line;

/**
 * A line dealt out to the two players of a hocket: unit by unit, in turn. The units are counted
 * from the line's beginning, so each stretch of it is dealt out the same way.
 *
 * <p>A unit is a stroke, a beat, or a group: a three where the beat is divided into threes, else
 * two strokes of a beat. A unit never reaches over a bar line or a beat.
 */
public final class Halves {
  /**
   * Onsets of two players that are to interlock by strokes or groups lie at least so far apart:
   * three times the smallest published standard deviation of the difference between two players'
   * onsets, 27 ms (R. A. Rasch, "Synchronization in performed ensemble music", Acustica 43, 1979,
   * 121-131, woodwind trio), so that they hardly ever change places. That it takes three is our
   * judgement.
   */
  public static final long LEAST_APART_MICROS = 3 * 27_000;

  private final Line whole;
  private final List<Line> dealt;
  private final int[] half;
  private final int[][] before;
  private final boolean[] even;
  private final long[] apart;

  private Halves(Line whole, Hocket hocket) {
    this.whole = whole;
    int count = whole.count();
    half = new int[count];
    before = new int[2][count + 1];
    even = new boolean[count];
    apart = new long[count];
    Arrays.fill(apart, Long.MAX_VALUE);
    List<List<Integer>> kept = List.of(new ArrayList<>(), new ArrayList<>());
    int unit = 0;
    int inBeat = 0;
    for (int j = 0; j < count; j++) {
      inBeat = whole.sameBeat(j) ? inBeat + 1 : 0;
      unit += j > 0 && begins(hocket, j, inBeat) ? 1 : 0;
      half[j] = unit & 1;
      kept.get(half[j]).add(j);
      before[0][j + 1] = kept.get(0).size();
      before[1][j + 1] = kept.get(1).size();
    }
    markEvenBeats();
    if (hocket == Hocket.STROKE || hocket == Hocket.GROUP) {
      measureApart();
    }
    dealt = kept.stream().map(strokes -> part(strokes, hocket)).toList();
  }

  /** The halves of a line by such units; all of it is the first half where there is no hocket. */
  public static Halves of(Line line, Hocket hocket) {
    return new Halves(line, hocket);
  }

  private boolean begins(Hocket hocket, int j, int inBeat) {
    return switch (hocket) {
      case NO -> false;
      case STROKE -> true;
      case BEAT -> inBeat == 0;
      case GROUP ->
          inBeat == 0
              || (whole.placeInThree(j) >= 0 ? whole.placeInThree(j) == 0 : inBeat % 2 == 0);
    };
  }

  private void markEvenBeats() {
    int from = 0;
    while (from < half.length) {
      int to = from + 1;
      while (to < half.length && whole.sameBeat(to)) {
        to++;
      }
      boolean cutShort = to == half.length || whole.restsBefore(to);
      for (int j = from; j < to; j++) {
        even[j] = cutShort || (to - from) % 2 == 0;
      }
      from = to;
    }
  }

  private void measureApart() {
    for (int j = 1; j < half.length; j++) {
      if (half[j] != half[j - 1]) {
        long gap = whole.onsetMicros(j) - whole.onsetMicros(j - 1);
        apart[j - 1] = Math.min(apart[j - 1], gap);
        apart[j] = gap;
      }
    }
  }

  private Line part(List<Integer> strokes, Hocket hocket) {
    return hocket == Hocket.NO || strokes.isEmpty()
        ? whole
        : whole.only(strokes, hocket != Hocket.STROKE);
  }

  /** What the player of a segment plays: the line itself, or its part of a hocket. */
  public Played of(Segment segment) {
    if (segment.pattern() == Pattern.ALL) {
      return new Played(whole, segment.first(), segment.last());
    }
    int mine = halfOf(segment);
    return new Played(dealt.get(mine), from(mine, segment.first()), to(mine, segment.last()));
  }

  /** Which half the player of a hocket segment takes, 0 or 1. */
  public int halfOf(Segment segment) {
    int first = half[segment.first()];
    return segment.pattern() == Pattern.ODD ? first : 1 - first;
  }

  /** One of the two halves, 0 or 1, as a line of its own. */
  public Line line(int which) {
    return dealt.get(which);
  }

  /** Which half a stroke of the line belongs to, 0 or 1. */
  public int halfOf(int stroke) {
    return half[stroke];
  }

  /**
   * The first stroke of a half that is not before a stroke of the line, as numbered in the half;
   * the half's count if there is none.
   */
  public int from(int which, int stroke) {
    return before[which][stroke];
  }

  /** The last stroke of a half that is not after a stroke of the line; -1 if there is none. */
  public int to(int which, int stroke) {
    return before[which][stroke + 1] - 1;
  }

  /** Whether both players have something to play between two strokes. */
  public boolean bothPlay(int first, int last) {
    return to(0, last) >= from(0, first) && to(1, last) >= from(1, first);
  }

  /**
   * Whether a hocket by strokes may take the beat that a stroke stands in: it has an even number of
   * them, so that nobody changes between on and off the beat; the last beat before a silence or the
   * end may be cut short.
   */
  public boolean evenBeat(int stroke) {
    return even[stroke];
  }

  /**
   * How far a stroke lies from the nearer of its neighbours that the other player of a hocket by
   * strokes or groups has, in microseconds; {@link Long#MAX_VALUE} if there is none.
   */
  public long apartMicros(int stroke) {
    return apart[stroke];
  }

  /**
   * Whether a stroke is far enough from those of the other player for the two to interlock.
   *
   * @param stretch by how much all times are stretched
   */
  public boolean interlocks(int stroke, double stretch) {
    return apart[stroke] * stretch >= LEAST_APART_MICROS;
  }
}
