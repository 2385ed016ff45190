package stafette.time;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The tempo of a whole score: marks at positions, each in force until the next. The first holds
 * from the start of the score, wherever it stands.
 */
public final class TempoMap {
  /**
   * So long may the fractions get in which marks are reckoned. A hundred odd marks stay below it;
   * thousands, as played tempi leave them, would make numbers of megabytes.
   */
  private static final int MOST_BITS = 1_536;

  /**
   * Where the fractions get too long, a mark is put on the nearest of so many parts of a second.
   */
  private static final Rational PARTS = Rational.of(1_000_000_000_000_000_000L);

  private final List<Position> positions = new ArrayList<>();
  private final List<TempoMark> marks = new ArrayList<>();
  private final List<Rational> secondsAtMark = new ArrayList<>();

  private TempoMap(NavigableMap<Position, TempoMark> changes) {
    Rational seconds = Rational.ZERO;
    for (Map.Entry<Position, TempoMark> change : changes.entrySet()) {
      Position at = positions.isEmpty() ? Position.START : change.getKey();
      if (!positions.isEmpty()) {
        int last = positions.size() - 1;
        seconds =
            plain(seconds.plus(marks.get(last).seconds(at.since(positions.get(last)).quarters())));
      }
      positions.add(at);
      marks.add(change.getValue());
      secondsAtMark.add(seconds);
    }
  }

  private static Rational plain(Rational seconds) {
    return seconds.denominator().bitLength() <= MOST_BITS
        ? seconds
        : Rational.of(seconds.times(PARTS).rounded(), BigInteger.ONE).dividedBy(PARTS);
  }

  /** A map of the given marks; quarter = 120 throughout when there are none. */
  public static TempoMap of(Map<Position, TempoMark> changes) {
    return new TempoMap(
        changes.isEmpty()
            ? new TreeMap<>(Map.of(Position.START, TempoMark.QUARTER_120))
            : new TreeMap<>(changes));
  }

  public static TempoMap constant(TempoMark mark) {
    return of(Map.of(Position.START, mark));
  }

  public TempoMark at(Position position) {
    return marks.get(indexAt(position));
  }

  /**
   * Seconds from the start of the score to a position; below zero for one before the start, where a
   * pickup's first beat may begin.
   */
  public Rational secondsAt(Position position) {
    int index = indexAt(position);
    Rational quarters = position.quarters().minus(positions.get(index).quarters());
    return secondsAtMark.get(index).plus(marks.get(index).seconds(quarters));
  }

  public Rational secondsOf(Span span) {
    return secondsAt(span.end()).minus(secondsAt(span.start()));
  }

  /**
   * The marks in force within a span, the one at its start included, by the position from which
   * each holds there.
   */
  public NavigableMap<Position, TempoMark> within(Span span) {
    NavigableMap<Position, TempoMark> result = new TreeMap<>();
    result.put(span.start(), at(span.start()));
    for (int i = 0; i < positions.size(); i++) {
      if (span.contains(positions.get(i))) {
        result.put(positions.get(i), marks.get(i));
      }
    }
    return Collections.unmodifiableNavigableMap(result);
  }

  /** Every tempo multiplied by a factor above zero. */
  public TempoMap times(Rational factor) {
    NavigableMap<Position, TempoMark> scaled = new TreeMap<>();
    for (int i = 0; i < positions.size(); i++) {
      scaled.put(positions.get(i), marks.get(i).times(factor));
    }
    return new TempoMap(scaled);
  }

  /**
   * This map with the tempo at {@code position} brought to {@code mark} and every other tempo
   * scaled with it.
   */
  public TempoMap scaledTo(Position position, TempoMark mark) {
    return times(mark.quartersPerMinute().dividedBy(at(position).quartersPerMinute()));
  }

  private int indexAt(Position position) {
    int index = Collections.binarySearch(positions, position);
    return Math.max(0, index >= 0 ? index : -index - 2);
  }
}
