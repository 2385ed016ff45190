package stafette.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Position;

/**
 * The number of each bar of a line in its phrase, counted from 0 at the line's first full bar; bars
 * before that count back from −1. A phrase begins anew where the metre changes, where a section of
 * the score begins, where a pattern of bars returns, and where one repeated pitch or harmony gives
 * way to another. (Judgement: joins are heard least where music begins anew.)
 */
final class Phrases {
  private final List<Stroke> strokes;
  private final Bars bars;
  private final int firstBar;
  private final int lastBar;
  private final Map<Integer, List<Struck>> contents = new HashMap<>();

  /** What sounds where in a bar. */
  private record Struck(Length into, Set<Integer> keys) {}

  private Phrases(List<Stroke> strokes, Bars bars) {
    this.strokes = strokes;
    this.bars = bars;
    firstBar = bars.at(strokes.get(0).onset()).index();
    lastBar = bars.at(strokes.get(strokes.size() - 1).onset()).index();
    for (Stroke stroke : strokes) {
      Bar bar = bars.at(stroke.onset());
      contents
          .computeIfAbsent(bar.index(), index -> new ArrayList<>())
          .add(new Struck(stroke.onset().since(bar.span().start()), stroke.keys()));
    }
  }

  /** For each stroke the number of its bar in its phrase. */
  static int[] of(List<Stroke> strokes, Bars bars) {
    Phrases phrases = new Phrases(strokes, bars);
    int[] numbers = phrases.numbers();
    return strokes.stream()
        .mapToInt(stroke -> numbers[bars.at(stroke.onset()).index() - phrases.firstBar])
        .toArray();
  }

  private int[] numbers() {
    int[] numbers = new int[lastBar - firstBar + 1];
    int start = firstFullBar();
    for (int bar = firstBar; bar <= lastBar; bar++) {
      start = bar > start && beginsAnew(start, bar) ? bar : start;
      numbers[bar - firstBar] = bar - start;
    }
    return numbers;
  }

  /** The first bar whose beginning the line plays; the bar after, where it begins within one. */
  private int firstFullBar() {
    Position onset = strokes.get(0).onset();
    Bar bar = bars.at(onset);
    boolean whole = onset.equals(bar.span().start()) && bar.lead().isZero();
    return whole ? firstBar : firstBar + 1;
  }

  private boolean beginsAnew(int start, int bar) {
    return !bars.get(bar).meter().equals(bars.get(bar - 1).meter())
        || bars.beginsSection(bar)
        || givesWay(bar)
        || returns(start, bar);
  }

  /** Whether one pitch or harmony was repeated in the bar before, and another one is in this. */
  private boolean givesWay(int bar) {
    Set<Set<Integer>> before = harmonies(bar - 1);
    Set<Set<Integer>> here = harmonies(bar);
    return before.size() == 1 && here.size() == 1 && !before.equals(here);
  }

  private Set<Set<Integer>> harmonies(int bar) {
    return contents.getOrDefault(bar, List.of()).stream()
        .map(Struck::keys)
        .collect(Collectors.toSet());
  }

  /** Whether the bars from the start of the phrase, which are not all alike, are played again. */
  private boolean returns(int start, int bar) {
    int period = bar - start;
    return period > 1
        && bar + period - 1 <= lastBar
        && IntStream.range(0, period).allMatch(i -> content(start + i).equals(content(bar + i)))
        && IntStream.range(1, period).anyMatch(i -> !content(start + i).equals(content(start)));
  }

  private List<Struck> content(int bar) {
    return contents.getOrDefault(bar, List.of());
  }
}
