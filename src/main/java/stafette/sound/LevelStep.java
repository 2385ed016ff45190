package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;

/**
 * How much louder it is while two players share strokes than if the one who leaves played them
 * alone, measured in what was rendered. The energies of two unrelated sources add up, so two equal
 * ones make 10 · log10(2) = 3.01 decibels (textbook physics); the same voice twice, in step, would
 * make 6.02. Over one short stroke two pitches beat, and anything between may come out; over many
 * strokes the mean holds.
 *
 * @param handoff which
 * @param decibel the step; empty where nothing is shared
 */
public record LevelStep(Handoff handoff, OptionalDouble decibel) {
  /** All steps of a plan, with what they come to together. */
  public record Measured(List<LevelStep> steps, OptionalDouble together) {
    public Measured {
      steps = List.copyOf(steps);
    }
  }

  /**
   * Measures in a rendering of the whole plan, beside renderings of each player alone.
   *
   * @throws UnusableBank as {@link Synthesis#render} does
   */
  public static Measured measure(Plan plan, Performer performer, Synthesis synthesis)
      throws UnusableBank {
    Performance whole = performer.asPlanned();
    Audio everybody = synthesis.render(whole);
    List<Audio> alone = new ArrayList<>();
    for (Chair chair : whole.chairs()) {
      alone.add(synthesis.render(whole.only(chair::equals)));
    }
    List<LevelStep> steps = new ArrayList<>();
    double before = 0;
    double both = 0;
    for (Handoff handoff : plan.handoffs()) {
      if (handoff.shared() == 0) {
        steps.add(new LevelStep(handoff, OptionalDouble.empty()));
        continue;
      }
      Line line = plan.brief().line(handoff.enters().relay());
      long from = performer.clock().performed(line.onsetMicros(handoff.enters().first()));
      long to = performer.clock().performed(line.endMicros(handoff.leaves().last()));
      double leaving = 0;
      for (Segment segment : handoff.leaves().segments()) {
        leaving += alone.get(segment.player()).energy(from, to);
      }
      double sum = everybody.energy(from, to);
      steps.add(new LevelStep(handoff, decibel(sum, leaving)));
      before += leaving;
      both += sum;
    }
    return new Measured(steps, decibel(both, before));
  }

  private static OptionalDouble decibel(double more, double less) {
    return more > 0 && less > 0
        ? OptionalDouble.of(10 * Math.log10(more / less))
        : OptionalDouble.empty();
  }
}
