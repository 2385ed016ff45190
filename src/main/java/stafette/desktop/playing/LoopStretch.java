package stafette.desktop.playing;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.score.Line;

/**
 * What is heard again and again, on the line's clock.
 *
 * @param fromMicros where it begins
 * @param toMicros where it ends, later than it begins
 */
public record LoopStretch(long fromMicros, long toMicros) {
  private static final long AROUND_MICROS = 2_000_000;

  /**
   * @throws IllegalArgumentException if it ends before it begins
   */
  public LoopStretch {
    if (toMicros <= fromMicros) {
      throw new IllegalArgumentException(fromMicros + " to " + toMicros + " is no stretch");
    }
  }

  /** Two seconds to either side of a handoff, at the plan's own tempo. */
  static LoopStretch round(Plan plan, int handoff) {
    Handoff now = plan.handoffs().get(handoff);
    Line line = plan.brief().line(now.enters().relay());
    long entry = line.onsetMicros(now.enters().first());
    long landing = line.endMicros(now.leaves().last());
    return new LoopStretch(
        Math.min(entry, landing) - AROUND_MICROS, Math.max(entry, landing) + AROUND_MICROS);
  }

  /** The first handoff whose entry comes at a moment or later, else the last; empty if none is. */
  static OptionalInt handoffFrom(Plan plan, long micros) {
    List<Handoff> all = plan.handoffs();
    if (all.isEmpty()) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(
        IntStream.range(0, all.size())
            .filter(i -> entryMicros(plan, all.get(i)) >= micros)
            .findFirst()
            .orElse(all.size() - 1));
  }

  private static long entryMicros(Plan plan, Handoff handoff) {
    return plan.brief().line(handoff.enters().relay()).onsetMicros(handoff.enters().first());
  }

  boolean contains(long lineMicros) {
    return lineMicros >= fromMicros && lineMicros < toMicros;
  }
}
