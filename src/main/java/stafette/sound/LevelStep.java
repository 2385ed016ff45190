package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Turn;
import stafette.score.Line;

/**
 * How much louder an overlap is in rendered sound than the strokes before it.
 *
 * <p>The energy from the first sound of the overlap to the next stroke after it is divided by the
 * written time of its strokes; so is that of up to eight strokes of the player who leaves, which
 * nobody shares. The ratio of the two is the step. For players a little apart this counts whole
 * strokes, so that equal and unrelated ones make twice the energy, 3.01 dB. Of a single short
 * stroke two steady tones may make anything between silence and four times the energy, 6.02 dB.
 *
 * @param handoff which
 * @param ratio of the mean squares, overlap to before; empty where no strokes are shared, none
 *     stand alone before them, or a player is not heard
 */
public record LevelStep(Handoff handoff, OptionalDouble ratio) {
  private static final int MOST_STROKES_BEFORE = 8;

  public OptionalDouble decibel() {
    return ratio.isPresent()
        ? OptionalDouble.of(10 * Math.log10(ratio.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** The level of the mean ratio of several steps; empty if none of them has one. */
  public static OptionalDouble meanDecibel(List<LevelStep> steps) {
    OptionalDouble mean = steps.stream().flatMapToDouble(step -> step.ratio().stream()).average();
    return mean.isPresent()
        ? OptionalDouble.of(10 * Math.log10(mean.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** The steps at all handoffs of the plan, as they are in the last take of a performance. */
  public static List<LevelStep> measured(Performance performance, Audio audio) {
    Performance.Take take = performance.takes().get(performance.takes().size() - 1);
    Plan plan = take.plan();
    Performer performer =
        new Performer(plan, take.excerpt(), take.hearing(), Stage.of(plan, take.hearing().seats()));
    List<LevelStep> steps = new ArrayList<>();
    List<List<Turn>> relays = plan.relays();
    for (List<Turn> turns : relays) {
      for (int i = 1; i < turns.size(); i++) {
        int alone = i < 2 ? 0 : turns.get(i - 2).last() + 1;
        Measuring measuring = new Measuring(take, performer, audio, turns.get(i - 1), turns.get(i));
        steps.add(new LevelStep(measuring.handoff(), measuring.ratio(alone)));
      }
    }
    return steps;
  }

  /** One handoff in sound. */
  private record Measuring(
      Performance.Take take, Performer performer, Audio audio, Turn leaves, Turn enters) {
    Handoff handoff() {
      return new Handoff(leaves, enters);
    }

    /**
     * @param alone the first stroke that the one who leaves does not share with anybody before
     */
    OptionalDouble ratio(int alone) {
      int first = enters.first();
      int from = Math.max(Math.max(alone, leaves.first()), first - MOST_STROKES_BEFORE);
      for (int j = from + 1; j < first; j++) {
        from = line().restsBefore(j) ? j : from;
      }
      if (handoff().shared() < 1 || from >= first) {
        return OptionalDouble.empty();
      }
      Optional<Double> before = meanSquare(leaves, leaves, from, first - 1);
      Optional<Double> both = meanSquare(leaves, enters, first, leaves.last());
      return before.isPresent() && both.isPresent() && before.get() > 0
          ? OptionalDouble.of(both.get() / before.get())
          : OptionalDouble.empty();
    }

    private Line line() {
      return take.plan().brief().line(enters.relay());
    }

    /** Of strokes that both play, by the written time. */
    private Optional<Double> meanSquare(Turn one, Turn other, int first, int last) {
      OptionalLong from = performer.onset(one, first);
      OptionalLong otherFrom = performer.onset(other, first);
      if (from.isEmpty() || otherFrom.isEmpty()) {
        return Optional.empty();
      }
      long written = writtenEnd(last) - line().onsetMicros(first);
      long start = Math.min(from.getAsLong(), otherFrom.getAsLong());
      long end = performer.onset(other, last + 1).orElse(otherFrom.getAsLong() + written);
      return Optional.of(
          audio.energy(take.fromMicros() + start, take.fromMicros() + end) / written);
    }

    /** Up to the next stroke, or where the line rests, to the end of the sound. */
    private long writtenEnd(int stroke) {
      return stroke + 1 < line().count() && !line().restsBefore(stroke + 1)
          ? line().onsetMicros(stroke + 1)
          : line().endMicros(stroke);
    }
  }
}
