package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Span;

/**
 * A bar that is written, or several that a player counts: all rests, or all something else of its
 * part. As in any part, counting begins anew with a section, a metre, a key or a tempo.
 *
 * @param bars in order, at least one
 * @param hasOwn whether the player's part has something else there
 */
record CountedStretch(List<Bar> bars, boolean hasOwn) {
  CountedStretch {
    bars = List.copyOf(bars);
  }

  /** Whether the bars are counted, not written. */
  boolean isCounted() {
    return bars.size() > 1;
  }

  /** From the first bar of a relay to the last that a player has to read. */
  static List<CountedStretch> all(Plan plan, int player, List<Cues.Cue> cues) {
    Set<Integer> read = read(plan, player, cues);
    Line line = plan.line();
    List<CountedStretch> stretches = new ArrayList<>();
    List<Bar> open = new ArrayList<>();
    for (Bar bar : plan.brief().bars()) {
      boolean own = hasOwn(plan, player, bar);
      boolean goesOn =
          !open.isEmpty()
              && !read.contains(bar.index())
              && !beginsAnew(line, bar)
              && own == hasOwn(plan, player, open.get(0))
              && !read.contains(open.get(0).index());
      if (!goesOn && !open.isEmpty()) {
        stretches.add(new CountedStretch(open, hasOwn(plan, player, open.get(0))));
        open.clear();
      }
      open.add(bar);
      if (read.stream().allMatch(index -> index <= bar.index())) {
        break;
      }
    }
    stretches.add(new CountedStretch(open, hasOwn(plan, player, open.get(0))));
    return stretches;
  }

  /** How many bars of a relay a player rests just before a bar. */
  static int restBefore(Plan plan, int player, Bar entry) {
    Set<Integer> read = read(plan, player, List.of());
    int from = entry.index();
    while (from > plan.brief().bars().get(0).index()
        && !read.contains(from - 1)
        && !hasOwn(plan, player, plan.line().bars().get(from - 1))) {
      from--;
    }
    return entry.index() - from;
  }

  /** The bars in which the player plays, or listens for its entry. */
  private static Set<Integer> read(Plan plan, int player, List<Cues.Cue> cues) {
    Set<Integer> read = new TreeSet<>();
    Bars bars = plan.line().bars();
    plan.segmentsOf(player).stream()
        .map(plan::played)
        .forEach(played -> sounding(played).forEach(at -> read.add(bars.at(at).index())));
    cues.forEach(cue -> read.add(bars.at(cue.span().start()).index()));
    return read;
  }

  /** Where strokes begin, and where bars do in which they still sound. */
  private static List<Position> sounding(Played played) {
    List<Position> places = new ArrayList<>();
    Line line = played.line();
    for (int j = played.first(); j <= played.last(); j++) {
      Span span = line.stroke(j).span();
      Position at = span.start();
      while (at.isBefore(span.end())) {
        places.add(at);
        Position next = line.bars().at(at).span().end();
        at = next.isAfter(at) ? next : span.end();
      }
    }
    return places;
  }

  private static boolean hasOwn(Plan plan, int player, Bar bar) {
    Line line = plan.line();
    long from = line.micros(bar.span().start());
    long to = line.micros(bar.span().end());
    return plan.brief().players().get(player).busy().stream()
        .anyMatch(busy -> busy.fromMicros() < to && from < busy.toMicros());
  }

  private static boolean beginsAnew(Line line, Bar bar) {
    Bar before = line.bars().get(bar.index() - 1);
    Position start = bar.span().start();
    return line.bars().beginsSection(bar.index())
        || !before.meter().equals(bar.meter())
        || line.keys().at(before.span().start()) != line.keys().at(start)
        || !line.tempo().at(before.span().start()).equals(line.tempo().at(start));
  }
}
