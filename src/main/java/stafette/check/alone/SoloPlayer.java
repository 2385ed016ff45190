package stafette.check.alone;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import stafette.check.PlayingSimulation;
import stafette.check.SegmentRules;
import stafette.check.Stint;
import stafette.check.Strain;
import stafette.check.TechniqueRules;
import stafette.check.TirednessAndBreath;
import stafette.check.Tolerance;
import stafette.check.WholePart;
import stafette.check.Wording;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.Skill;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMark;

/**
 * One fresh player who plays a whole line with one technique, at its own tempo or another.
 *
 * <p>A tempo is a factor of the line's own. Rates bound it from above in closed form, tiredness
 * does so by bisection, as it only grows with the tempo. Breath does not: a faster line takes less
 * air, and leaves no time to breathe. But between two tempi at which a silence becomes too short to
 * breathe in, the air spent is proportional to the time, so the fastest tempo of all is that bound
 * or one of these.
 */
final class SoloPlayer {
  /** Faster than that many times a line's own tempo nobody asks. */
  private static final double MOST_FACTOR = 100;

  private static final double LEAST_FACTOR = 1e-3;
  private static final int BISECTIONS = 60;

  private final Line line;
  private final Technique technique;
  private final Capability capability;
  private final Demand demand;
  private final SegmentRules rules;
  private final WholePart part;
  private final TirednessAndBreath spending;
  private final double use;
  private final double usualPerSecond;

  SoloPlayer(Line line, Instrument instrument, Technique technique, Capability capability) {
    this.line = line;
    this.technique = technique;
    this.capability = capability;
    Skill skill = new Skill(technique, capability);
    Player player =
        new Player(instrument.name(), instrument, Optional.empty(), List.of(skill), List.of());
    Segment whole = new Segment(0, 0, 0, line.count() - 1);
    demand = Demand.of(instrument, technique, capability, line);
    Played played = new Played(line, 0, line.count() - 1);
    rules = new SegmentRules(played, player, skill, demand, whole);
    part = new WholePart(player, List.of(Stint.of(player, skill, demand, played, whole)));
    spending = new TirednessAndBreath(List.of(line), part);
    use = rules.worst().share();
    usualPerSecond = Demand.usualRatePerSecond(line);
  }

  /** The same player with the same technique on another line. */
  SoloPlayer with(Line other) {
    return new SoloPlayer(other, instrument(), technique, capability);
  }

  Line line() {
    return line;
  }

  Instrument instrument() {
    return part.player().instrument();
  }

  Technique technique() {
    return technique;
  }

  Capability capability() {
    return capability;
  }

  Ease ease() {
    if (!inRange()) {
      return Ease.OUT_OF_RANGE;
    }
    return serves() ? Ease.of(Math.max(use, Math.max(tiredness(), breath()))) : Ease.BEYOND;
  }

  private boolean inRange() {
    return strokesOutOfRange().findAny().isEmpty();
  }

  double highestPerSecond() {
    return rules.highestPerSecond();
  }

  double use() {
    return use;
  }

  double tiredness() {
    return highest(PlayingSimulation.tiredness(part, 1));
  }

  double breath() {
    return lungs().map(lungs -> highest(PlayingSimulation.breath(part, lungs, 1))).orElse(0.0);
  }

  /** Whether groups and strings are there for the technique, at whatever tempo. */
  private boolean serves() {
    return TechniqueRules.obstacle(technique, line, 0, line.count() - 1, 1).isEmpty();
  }

  /**
   * The onset of the first stroke that fails, in seconds; 0 if that is the first one whose rate is
   * tested at all, or the technique does not serve; empty if all strokes hold.
   */
  OptionalDouble lastsSeconds() {
    if (!serves()) {
      return OptionalDouble.of(0);
    }
    LongStream failures =
        Stream.of(spending.tired(1), spending.breathless(1))
            .flatMap(Optional::stream)
            .mapToLong(TirednessAndBreath.Excess::micros);
    LongStream outside = strokesOutOfRange().mapToLong(line::onsetMicros).limit(1);
    return LongStream.concat(LongStream.concat(failures, outside), tooFast().stream())
        .mapToDouble(micros -> micros / 1e6)
        .min();
  }

  /**
   * The fastest mark at the line's start at which the player holds out, whole beats in the unit in
   * force there; at most {@value #MOST_FACTOR} times the present tempo.
   */
  Optional<TempoMark> fastestTempo() {
    if (!inRange() || !serves()) {
      return Optional.empty();
    }
    OptionalDouble fastest = fastestFactor();
    if (fastest.isEmpty()) {
      return Optional.empty();
    }
    Position start = line.stroke(0).onset();
    TempoMark present = line.tempo().at(start);
    double most = present.times(Wording.exactly(fastest.getAsDouble())).perMinute().toDouble();
    double perMinute = present.perMinute().toDouble();
    return LongStream.iterate(
            (long) Math.floor(most * (1 + Tolerance.SHARE)), n -> n > 0, n -> n - 1)
        .filter(beats -> playsAt(beats / perMinute))
        .mapToObj(beats -> new TempoMark(present.unit(), Rational.of(beats)))
        .filter(mark -> with(line.at(line.tempo().scaledTo(start, mark))).playsAt(1))
        .findFirst();
  }

  private OptionalDouble fastestFactor() {
    double most = Math.min(MOST_FACTOR, 1 / use);
    double bound = spending.tired(1 / most).isEmpty() ? most : tirelessUpTo(most);
    DoubleStream breathing = lungs().stream().flatMapToDouble(this::breathingUpTo);
    return DoubleStream.concat(breathing.filter(factor -> factor < bound), DoubleStream.of(bound))
        .boxed()
        .sorted(Comparator.reverseOrder())
        .mapToDouble(Double::doubleValue)
        .filter(this::playsAt)
        .findFirst();
  }

  private double tirelessUpTo(double most) {
    double holds = LEAST_FACTOR;
    double fails = most;
    for (int step = 0; step < BISECTIONS; step++) {
      double middle = Math.sqrt(holds * fails);
      if (spending.tired(1 / middle).isEmpty()) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return holds;
  }

  /** For each silence the fastest tempo at which it is long enough to breathe in. */
  private DoubleStream breathingUpTo(Breath lungs) {
    return PlayingSimulation.Air.of(part, lungs).stream()
        .mapToDouble(PlayingSimulation.Air::silence)
        .filter(silence -> silence > 0)
        .map(silence -> silence / lungs.catchSeconds())
        .distinct();
  }

  private boolean playsAt(double factor) {
    return Tolerance.reaches(usualPerSecond * factor, technique.lowestPerSecond())
        && Tolerance.within(use * factor, 1)
        && spending.tired(1 / factor).isEmpty()
        && spending.breathless(1 / factor).isEmpty();
  }

  private OptionalLong tooFast() {
    boolean first = true;
    for (int j = 1; j < line.count(); j++) {
      double use = Strain.use(demand, line, 0, j);
      if (!Tolerance.within(use, 1)) {
        return OptionalLong.of(first ? 0 : line.onsetMicros(j));
      }
      first &= use == 0;
    }
    return OptionalLong.empty();
  }

  private IntStream strokesOutOfRange() {
    return IntStream.range(0, line.count())
        .filter(j -> !SegmentRules.inRange(part.player().instrument(), line.stroke(j)));
  }

  private Optional<Breath> lungs() {
    return part.player().instrument().breath();
  }

  private static double highest(double[][] readings) {
    return Arrays.stream(readings).flatMapToDouble(Arrays::stream).max().orElse(0);
  }
}
