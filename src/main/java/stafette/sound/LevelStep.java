package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import stafette.plan.Handoff;
import stafette.plan.Turn;
import stafette.score.Line;

/**
 * How much louder an overlap is in rendered sound, as ratios of mean squares: the energy of its
 * strokes by the time for which they are written. For players a little apart whole strokes are
 * counted, from the first sound of the overlap to the next stroke after it, so that two equal and
 * unrelated players make twice the energy of one, 3.01 dB. Of a single short stroke two steady
 * tones may make anything between silence and four times the energy, 6.02 dB.
 *
 * <p>Each is empty where no strokes are shared, a player is not heard, or there is nothing to
 * compare with.
 *
 * @param handoff which
 * @param overOne against the same strokes without who enters
 * @param overBefore against up to eight strokes that who leaves plays alone just before, whatever
 *     their pitches and accents
 */
public record LevelStep(Handoff handoff, OptionalDouble overOne, OptionalDouble overBefore) {
  private static final int MOST_STROKES_BEFORE = 8;

  /** The level of a ratio of energies. */
  public static OptionalDouble decibel(OptionalDouble ratio) {
    return ratio.isPresent()
        ? OptionalDouble.of(10 * Math.log10(ratio.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** The level of the mean of some ratios; empty if no step has one. */
  public static OptionalDouble meanDecibel(
      List<LevelStep> steps, Function<LevelStep, OptionalDouble> ratio) {
    return decibel(steps.stream().flatMapToDouble(step -> ratio.apply(step).stream()).average());
  }

  /**
   * The steps at all handoffs of a plan, as they are in the last take of a performance.
   *
   * @param audio of the performance
   * @param withoutOverlaps of {@link Comparison#withoutOverlaps}, the same excerpt heard the same
   *     way
   */
  public static List<LevelStep> measured(
      Performance performance, Audio audio, Audio withoutOverlaps) {
    Performance.Take take = performance.takes().get(performance.takes().size() - 1);
    Stage stage = Stage.of(take.plan(), take.hearing().seats());
    Performer performer = new Performer(take.plan(), take.excerpt(), take.hearing(), stage);
    List<LevelStep> steps = new ArrayList<>();
    for (List<Turn> turns : take.plan().relays()) {
      for (int i = 1; i < turns.size(); i++) {
        int alone = i < 2 ? 0 : turns.get(i - 2).last() + 1;
        steps.add(
            new Measuring(
                    take, performer, audio, withoutOverlaps, turns.get(i - 1), turns.get(i), alone)
                .step());
      }
    }
    return steps;
  }

  /**
   * One handoff in sound.
   *
   * @param alone the first stroke that the one who leaves does not share with anybody before
   */
  private record Measuring(
      Performance.Take take,
      Performer performer,
      Audio audio,
      Audio withoutOverlaps,
      Turn leaves,
      Turn enters,
      int alone) {
    LevelStep step() {
      Handoff handoff = new Handoff(leaves, enters);
      Optional<MeasuredStretch> both =
          handoff.shared() < 1
              ? Optional.empty()
              : stretch(leaves, enters, enters.first(), leaves.last());
      return new LevelStep(
          handoff,
          ratio(both, take.fromMicros(), both, withoutOverlaps, 0),
          ratio(both, take.fromMicros(), before(), audio, take.fromMicros()));
    }

    private OptionalDouble ratio(
        Optional<MeasuredStretch> both,
        long bothFrom,
        Optional<MeasuredStretch> other,
        Audio otherAudio,
        long otherFrom) {
      if (both.isEmpty() || other.isEmpty()) {
        return OptionalDouble.empty();
      }
      double quiet = other.get().meanSquare(otherAudio, otherFrom);
      return quiet > 0
          ? OptionalDouble.of(both.get().meanSquare(audio, bothFrom) / quiet)
          : OptionalDouble.empty();
    }

    private Optional<MeasuredStretch> before() {
      int first = enters.first();
      int from = Math.max(Math.max(alone, leaves.first()), first - MOST_STROKES_BEFORE);
      for (int j = from + 1; j < first; j++) {
        from = line().restsBefore(j) ? j : from;
      }
      return from < first ? stretch(leaves, leaves, from, first - 1) : Optional.empty();
    }

    private Line line() {
      return take.plan().brief().line(enters.relay());
    }

    /** Strokes that both turns play, if they are heard. */
    private Optional<MeasuredStretch> stretch(Turn one, Turn other, int first, int last) {
      OptionalLong from = performer.onset(one, first);
      OptionalLong otherFrom = performer.onset(other, first);
      if (from.isEmpty() || otherFrom.isEmpty()) {
        return Optional.empty();
      }
      long written = writtenEnd(last) - line().onsetMicros(first);
      return Optional.of(
          new MeasuredStretch(
              Math.min(from.getAsLong(), otherFrom.getAsLong()),
              performer.onset(other, last + 1).orElse(otherFrom.getAsLong() + written),
              written));
    }

    /** Up to the next stroke, or where the line rests, to the end of the sound. */
    private long writtenEnd(int stroke) {
      return stroke + 1 < line().count() && !line().restsBefore(stroke + 1)
          ? line().onsetMicros(stroke + 1)
          : line().endMicros(stroke);
    }
  }

  /** Where some strokes sound within a take, and for how long they are written. */
  private record MeasuredStretch(long fromMicros, long toMicros, long writtenMicros) {
    double meanSquare(Audio audio, long takeFromMicros) {
      return audio.energy(takeFromMicros + fromMicros, takeFromMicros + toMicros) / writtenMicros;
    }
  }
}
