package stafette.split.rotate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/** How much of the line one turn of a regular rotation takes. */
public enum RotationUnit {
  EIGHT_BARS(8, "8 bars"),
  SIX_BARS(6, "6 bars"),
  FOUR_BARS(4, "4 bars"),
  THREE_BARS(3, "3 bars"),
  TWO_BARS(2, "2 bars"),
  BAR(1, "1 bar"),
  /** Where the middle of a bar falls on no beat, the bar stays whole. */
  HALF_BAR(1, "half a bar"),
  BEAT(1, "a beat");

  private static final Rational HALF = Rational.of(1, 2);

  private final int step;
  private final String text;

  RotationUnit(int step, String text) {
    this.step = step;
    this.text = text;
  }

  /** "2 bars", "half a bar". */
  public String text() {
    return text;
  }

  /** The units among which the cheapest rotation of all is sought where one is favoured. */
  static List<RotationUnit> favoured() {
    return List.of(FOUR_BARS, TWO_BARS, BAR, HALF_BAR, BEAT);
  }

  /**
   * The first stroke of each unit, counted from the first full bar of the line; what comes before
   * it joins the first unit.
   */
  List<Integer> startsFromFullBar(Line line) {
    Position start = line.stroke(0).onset();
    List<Position> all =
        StreamSupport.stream(line.bars().spliterator(), false)
            .filter(bar -> bar.lead().isZero() && !bar.span().start().isBefore(start))
            .flatMap(bar -> boundaries(bar).stream())
            .toList();
    return starts(line, all);
  }

  /** Whether fewer bars are left for the last of the units than each of the others has. */
  boolean leavesRemainder(Line line, List<Integer> starts) {
    int last = line.bars().at(line.stroke(starts.get(starts.size() - 1)).onset()).index();
    int end = line.bars().at(line.stroke(line.count() - 1).onset()).index();
    return step > 1 && end - last + 1 < step;
  }

  /**
   * The first stroke of each unit, the line's first stroke before all. A pickup shorter than half a
   * bar (half a beat, if beats are counted) belongs to the unit after it; so do units without a
   * stroke.
   */
  List<Integer> starts(Line line) {
    return starts(line, boundaries(line));
  }

  private List<Integer> starts(Line line, List<Position> boundaries) {
    List<Integer> starts = new ArrayList<>(List.of(0));
    for (int i = step; i < boundaries.size(); i += step) {
      int stroke = firstFrom(line, boundaries.get(i), starts.get(starts.size() - 1));
      if (stroke > starts.get(starts.size() - 1) && stroke < line.count()) {
        starts.add(stroke);
      }
    }
    return starts;
  }

  private static int firstFrom(Line line, Position boundary, int from) {
    int stroke = from;
    while (stroke < line.count() && line.stroke(stroke).onset().isBefore(boundary)) {
      stroke++;
    }
    return stroke;
  }

  /** From the boundary at which the first unit begins. */
  private List<Position> boundaries(Line line) {
    List<Position> all = new ArrayList<>();
    for (Bar bar : line.bars()) {
      all.addAll(boundaries(bar));
    }
    Position start = line.stroke(0).onset();
    int next = 0;
    while (next < all.size() && !all.get(next).isAfter(start)) {
      next++;
    }
    return all.subList(next > 0 && belongsBefore(all, next, start) ? next - 1 : next, all.size());
  }

  /** Whether at least half of a span between two boundaries is left where the line starts. */
  private static boolean belongsBefore(List<Position> all, int next, Position start) {
    Position before = all.get(next - 1);
    if (next == all.size()) {
      return true;
    }
    Length half = all.get(next).since(before).times(HALF);
    return start.since(before).compareTo(half) <= 0;
  }

  private List<Position> boundaries(Bar bar) {
    if (this == BEAT) {
      return beats(bar);
    }
    List<Position> result = new ArrayList<>();
    if (bar.lead().isZero()) {
      result.add(bar.span().start());
    }
    if (this == HALF_BAR) {
      Rational into = bar.meter().length().times(HALF).quarters().minus(bar.lead().quarters());
      beats(bar).stream()
          .filter(beat -> beat.quarters().minus(bar.span().start().quarters()).equals(into))
          .filter(beat -> !result.contains(beat))
          .forEach(result::add);
    }
    return result;
  }

  private static List<Position> beats(Bar bar) {
    return bar.beats().stream()
        .map(Span::start)
        .filter(start -> bar.beatStart(start).equals(start))
        .toList();
  }
}
