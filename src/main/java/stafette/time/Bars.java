package stafette.time;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The bars of a score in order, without gaps; at least one. */
public final class Bars implements Iterable<Bar> {
  private static final Pattern COUNT = Pattern.compile("[0-9]{1,9}");

  private final List<Bar> bars;
  private final Optional<String> title;
  private final Map<String, Integer> printed = new HashMap<>();
  private final NavigableSet<Integer> restarts = new TreeSet<>();

  /**
   * Bars of a score whose first movement has no title of its own.
   *
   * @throws IllegalArgumentException if there is no bar, or one does not begin where the one before
   *     ends
   */
  public Bars(List<Bar> bars) {
    this(bars, Optional.empty());
  }

  /**
   * The bars of a score.
   *
   * @param title of its first movement
   * @throws IllegalArgumentException if there is no bar, or one does not begin where the one before
   *     ends
   */
  public Bars(List<Bar> bars, Optional<String> title) {
    this.bars = List.copyOf(bars);
    this.title = title;
    if (bars.isEmpty()) {
      throw new IllegalArgumentException("a score needs a bar");
    }
    for (int i = 1; i < bars.size(); i++) {
      if (!bars.get(i).span().start().equals(bars.get(i - 1).span().end())) {
        throw new IllegalArgumentException(
            "bar " + bars.get(i) + " does not follow " + bars.get(i - 1));
      }
    }
    readNumbers();
  }

  /** A movement begins where counted numbers fall back to 0 or 1. */
  private void readNumbers() {
    int last = 0;
    for (Bar bar : bars) {
      printed.merge(bar.number(), 1, Integer::sum);
      if (COUNT.matcher(bar.number()).matches()) {
        int number = Integer.parseInt(bar.number());
        if (number <= 1 && number < last) {
          restarts.add(bar.index());
        }
        last = number;
      }
    }
  }

  /** So many full bars of one metre, numbered from 1. */
  public static Bars regular(Meter meter, int count) {
    List<Bar> bars = new ArrayList<>();
    Position start = Position.START;
    for (int i = 0; i < count; i++) {
      Span span = Span.of(start, meter.length());
      bars.add(new Bar(i, Integer.toString(i + 1), span, meter, Length.ZERO));
      start = span.end();
    }
    return new Bars(bars);
  }

  public int count() {
    return bars.size();
  }

  /** From the start of the first bar to the end of the last. */
  public Span span() {
    return new Span(get(0).span().start(), get(count() - 1).span().end());
  }

  public Bar get(int index) {
    return bars.get(index);
  }

  /**
   * The bar within which a position falls; the first or the last one for positions outside the
   * score.
   */
  public Bar at(Position position) {
    int low = 0;
    int high = bars.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (position.isBefore(bars.get(middle).span().start())) {
        high = middle - 1;
      } else {
        low = middle;
      }
    }
    return bars.get(low);
  }

  /** Whether just one bar has this number. */
  public boolean isPrintedOnce(String number) {
    return printed.getOrDefault(number, 0) == 1;
  }

  /**
   * Whether a bar begins a section, by a double bar or a repeat sign before it or a rehearsal mark.
   */
  public boolean beginsSection(int index) {
    return get(index).landmarks().opens() || (index > 0 && get(index - 1).landmarks().closes());
  }

  /** The movement to which a bar belongs; empty if the score has only one. */
  public Optional<Movement> movementOf(Bar bar) {
    if (restarts.isEmpty()) {
      return Optional.empty();
    }
    int number = 1 + restarts.headSet(bar.index(), true).size();
    return Optional.of(new Movement(number, title.filter(first -> number == 1)));
  }

  /** Where each movement but the first begins. */
  public List<Position> movementStarts() {
    return restarts.stream().map(index -> bars.get(index).span().start()).toList();
  }

  public Rank rankOf(Position position) {
    return at(position).rankOf(position);
  }

  public BarBeat nameOf(Position position) {
    return at(position).nameOf(position);
  }

  @Override
  public Iterator<Bar> iterator() {
    return bars.iterator();
  }
}
