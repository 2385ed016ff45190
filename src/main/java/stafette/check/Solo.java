package stafette.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.limits.Breath;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.Skill;
import stafette.score.Line;

/** One fresh player who plays a whole line alone. */
final class Solo {
  private final Line line;
  private final Skill skill;
  private final Demand demand;
  private final Instrument instrument;
  private final SegmentRules rules;
  private final WholePart part;
  private final PartRules partRules;

  Solo(Line line, Instrument instrument, Skill skill) {
    this.line = line;
    this.skill = skill;
    this.instrument = instrument;
    Player player =
        new Player(instrument.name(), instrument, Optional.empty(), List.of(skill), List.of());
    Segment whole = new Segment(0, 0, 0, line.count() - 1);
    demand = Demand.of(instrument, skill.technique(), skill.capability(), line);
    rules = new SegmentRules(line, player, skill, demand, whole);
    part = new WholePart(player, List.of(Stint.of(player, skill, demand, line, whole)));
    partRules = new PartRules(line, part, 0);
  }

  boolean inRange() {
    return line.strokes().stream().allMatch(stroke -> SegmentRules.inRange(instrument, stroke));
  }

  boolean techniqueServes() {
    return TechniqueRules.obstacle(skill.technique(), line, 0, line.count() - 1, 1).isEmpty();
  }

  double highestPerSecond() {
    return rules.highestPerSecond();
  }

  double use() {
    return rules.worst().share();
  }

  double tiredness() {
    return Arrays.stream(Course.tiredness(part, 1)[0]).max().orElse(0);
  }

  double breath() {
    return instrument
        .breath()
        .map(breath -> Arrays.stream(Course.breath(part, breath, 1)[0]).max().orElse(0))
        .orElse(0.0);
  }

  /**
   * How long the player can go on, in seconds from the first onset: to the last stroke before the
   * first one that fails. If none fails, and the usual rate is above the sustained one, what is
   * left of the stamina is spent at that rate after the line's end: T = stamina / (r − sustained).
   *
   * @return empty if it can go on
   */
  OptionalDouble lastsSeconds() {
    OptionalInt failing =
        IntStream.of(firstTooFast(), firstAt(partRules.tired(1)), firstAt(partRules.breathless(1)))
            .filter(j -> j >= 0)
            .min();
    if (failing.isPresent()) {
      return OptionalDouble.of(line.onsetMicros(Math.max(0, failing.getAsInt() - 1)) / 1e6);
    }
    double rate = Demand.usualRatePerSecond(line);
    double beyond = rate - demand.sustainedMilli(line.count() - 1) / 1000.0;
    if (beyond <= 0) {
      return OptionalDouble.empty();
    }
    double[] readings = Course.tiredness(part, 1)[0];
    double left = 1 - readings[readings.length - 1];
    double more = left * skill.capability().staminaStrokes() / beyond;
    return OptionalDouble.of(line.onsetMicros(line.count() - 1) / 1e6 + more);
  }

  private int firstTooFast() {
    for (int j = 1; j < line.count(); j++) {
      if (!Tolerance.within(Strain.use(demand, line, 0, j), 1)) {
        return j;
      }
    }
    return -1;
  }

  private int firstAt(Optional<PartRules.Excess> excess) {
    return excess
        .map(
            place ->
                IntStream.range(0, line.count())
                    .filter(j -> line.onsetMicros(j) == place.micros())
                    .findFirst()
                    .orElse(0))
        .orElse(-1);
  }

  /**
   * The least factor by which all times must be stretched for the line to hold; below 1 if it can
   * go faster. Rates give it directly, tiredness only falls with slower times, and more air is
   * given back only where a silence becomes long enough to breathe in.
   *
   * @return empty if no tempo will do
   */
  OptionalDouble leastStretch() {
    double rate =
        Math.max(use(), Stretches.leastFor(stretch -> partRules.tired(stretch).isEmpty()));
    if (partRules.breathless(rate).isEmpty()) {
      return OptionalDouble.of(rate);
    }
    Breath breath = instrument.breath().orElseThrow();
    return Stretches.breaths(part, breath)
        .filter(stretch -> stretch > rate && partRules.breathless(stretch).isEmpty())
        .min();
  }

  boolean holdsAt(double stretch) {
    return Tolerance.within(use() / stretch, 1)
        && partRules.tired(stretch).isEmpty()
        && partRules.breathless(stretch).isEmpty();
  }
}
