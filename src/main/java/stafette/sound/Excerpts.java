package stafette.sound;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.Span;

/** Which stretch of the score is heard. */
public final class Excerpts {
  private static final long AROUND_MICROS = 2_500_000;

  private Excerpts() {}

  /** From the first bar line before the plan's first stroke to the end of its last sound. */
  public static Span whole(Plan plan) {
    List<Span> spans = plan.brief().lines().stream().map(Line::span).toList();
    Position first = spans.stream().map(Span::start).min(Comparator.naturalOrder()).orElseThrow();
    Position last = spans.stream().map(Span::end).max(Comparator.naturalOrder()).orElseThrow();
    return new Span(plan.line().bars().at(first).span().start(), last);
  }

  /** Some two and a half seconds to either side of a handoff, from a beat on, within the line. */
  public static Span round(Plan plan, Handoff handoff) {
    Line line = plan.brief().line(handoff.enters().relay());
    int entry = handoff.enters().first();
    int landing = handoff.leaves().last();
    long from = line.onsetMicros(Math.min(entry, landing)) - AROUND_MICROS;
    long to = line.onsetMicros(Math.max(entry, landing)) + AROUND_MICROS;
    int[] within =
        IntStream.range(0, line.count())
            .filter(j -> line.onsetMicros(j) >= from && line.onsetMicros(j) <= to)
            .toArray();
    Position onset = line.stroke(within[0]).onset();
    Position beat = line.bars().at(onset).beatStart(onset);
    Position start = whole(plan).start();
    return new Span(
        beat.isBefore(start) ? start : beat, line.stroke(within[within.length - 1]).span().end());
  }
}
