package stafette.time;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** The bars of a score in order, without gaps; at least one. */
public final class Bars implements Iterable<Bar> {
  private final List<Bar> bars;

  /**
   * @throws IllegalArgumentException if there is no bar, or one does not begin where the one before
   *     ends
   */
  public Bars(List<Bar> bars) {
    this.bars = List.copyOf(bars);
    if (bars.isEmpty()) {
      throw new IllegalArgumentException("a score needs a bar");
    }
    for (int i = 1; i < bars.size(); i++) {
      if (!bars.get(i).span().start().equals(bars.get(i - 1).span().end())) {
        throw new IllegalArgumentException(
            "bar " + bars.get(i) + " does not follow " + bars.get(i - 1));
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
    return bars.stream().filter(bar -> bar.number().equals(number)).limit(2).count() == 1;
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
