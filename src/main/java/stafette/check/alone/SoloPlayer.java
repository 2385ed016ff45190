package stafette.check.alone;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import stafette.check.Finding;
import stafette.check.PlayingSimulation;
import stafette.check.SegmentRules;
import stafette.check.ShownTechnique;
import stafette.check.Stint;
import stafette.check.Strain;
import stafette.check.TechniqueRules;
import stafette.check.TirednessAndBreath;
import stafette.check.Tolerance;
import stafette.check.WholePart;
import stafette.check.Wording;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.limits.Way;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMark;

/**
 * One fresh player who plays a whole line in one way, at its own tempo or another.
 *
 * <p>The share of players who manage is found by bisection, for every limit is monotone in it.
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

  /** Fewer than one of a thousand are nobody, more than 999 everybody. */
  private static final double NOBODY = 0.1;

  private static final double EVERYBODY = 99.9;
  private static final int SHARE_BISECTIONS = 14;

  private final Line line;
  private final Player player;
  private final int way;
  private final Assurance planned;
  private final Demand demand;
  private final Segment whole;
  private final Played played;
  private final SegmentRules rules;
  private final WholePart part;
  private final TirednessAndBreath spending;
  private final double use;

  /**
   * @param skills what the player brings, for the share planned
   * @param way index among the ways of such a player
   */
  SoloPlayer(Line line, Instrument instrument, List<Skill> skills, int way, Assurance planned) {
    this.line = line;
    this.way = way;
    this.planned = planned;
    player = new Player(instrument.name(), instrument, Optional.empty(), skills, List.of());
    whole = new Segment(0, way, 0, line.count() - 1);
    played = new Played(line, 0, line.count() - 1);
    demand = Demand.of(instrument, player.ways().get(way), line);
    rules = new SegmentRules(played, player, player.ways().get(way), demand, whole);
    part = WholePart.of(player, List.of(Stint.of(player, demand, played, whole)));
    spending = new TirednessAndBreath(List.of(line), part);
    use = rules.worst().share();
  }

  /** The same player on another line. */
  SoloPlayer with(Line other) {
    return new SoloPlayer(other, instrument(), player.skills(), way, planned);
  }

  Line line() {
    return line;
  }

  Instrument instrument() {
    return player.instrument();
  }

  List<ShownTechnique> techniques() {
    return ShownTechnique.of(
        instrument(), player.ways().get(way), line, played.first(), played.last());
  }

  /** How many of 100 players manage, from 0 to 100. */
  double share() {
    if (!inRange() || !serves() || !isPedalled() || !manages(NOBODY)) {
      return 0;
    }
    if (manages(EVERYBODY)) {
      return 100;
    }
    boolean asPlanned = manages(planned.percent());
    double holds = asPlanned ? planned.percent() : NOBODY;
    double fails = asPlanned ? EVERYBODY : planned.percent();
    for (int step = 0; step < SHARE_BISECTIONS; step++) {
      double middle = (holds + fails) / 2;
      if (manages(middle)) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return holds;
  }

  private boolean manages(double percent) {
    Player somebody = player.at(planned, new Assurance(percent));
    Way own = somebody.ways().get(way);
    Demand asked = demand.with(own);
    if (!Tolerance.within(
        new SegmentRules(played, somebody, own, asked, whole).worst().share(), 1)) {
      return false;
    }
    TirednessAndBreath spent =
        new TirednessAndBreath(
            List.of(line),
            WholePart.of(somebody, List.of(Stint.of(somebody, asked, played, whole))));
    return spent.tired(1).isEmpty() && spent.breathless(1).isEmpty();
  }

  Ease ease(double share) {
    return inRange() ? Ease.of(share) : Ease.OUT_OF_RANGE;
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

  Optional<Burst.Tightest> burst() {
    return rules.tightest();
  }

  Assurance planned() {
    return planned;
  }

  double tiredness() {
    return highest(PlayingSimulation.tiredness(part, 1));
  }

  double breath() {
    return lungs().map(lungs -> highest(PlayingSimulation.breath(part, lungs, 1))).orElse(0.0);
  }

  /** Whether there are techniques and strings for all notes, at whatever tempo. */
  boolean serves() {
    return uncovered().isEmpty()
        && (!player.ways().get(way).twinStrings()
            || TechniqueRules.twins(line, played.first(), played.last()));
  }

  /** Whether the pedals of a harp are in time at this tempo. */
  private boolean isPedalled() {
    return rules.pedalledUpTo(1) >= played.last();
  }

  private OptionalInt uncovered() {
    return IntStream.range(0, line.count()).filter(j -> !demand.covered(j)).findFirst();
  }

  /**
   * What decides how many manage.
   *
   * @param stroke where it takes most
   * @param source where the figure comes from
   */
  record Decides(Limiting limiting, int stroke, Source source) {}

  Decides decides() {
    OptionalInt outside = strokesOutOfRange().findFirst();
    if (outside.isPresent()) {
      return new Decides(Limiting.RANGE, outside.getAsInt(), instrument().source());
    }
    if (!serves()) {
      return uncovered().isPresent()
          ? decides(Limiting.TECHNIQUE, uncovered().getAsInt())
          : decides(Limiting.PEDALS, 0);
    }
    if (!isPedalled()) {
      return decides(Limiting.PEDALS, Math.max(0, rules.pedalledUpTo(1) + 1));
    }
    double tired = tiredness();
    double air = breath();
    if (air > Math.max(use, tired)) {
      double[] course = PlayingSimulation.breath(part, lungs().orElseThrow(), 1)[0];
      return new Decides(Limiting.BREATH, largest(course), instrument().source());
    }
    if (tired > use) {
      int load = largest(PlayingSimulation.tiredness(part, 1)[0]);
      int stroke =
          IntStream.range(0, line.count())
              .filter(j -> demand.loads(0, j))
              .skip(load)
              .findFirst()
              .orElse(0);
      return decides(Limiting.TIREDNESS, stroke);
    }
    SegmentRules.Use worst = rules.worst();
    return decides(
        worst.kind() == Finding.FindingKind.MOVING ? Limiting.MOVING : Limiting.BURST,
        worst.stroke());
  }

  private Decides decides(Limiting limiting, int stroke) {
    Technique technique = player.ways().get(way).skills().get(demand.skill(stroke)).technique();
    return new Decides(limiting, stroke, technique.source());
  }

  private static int largest(double[] readings) {
    return IntStream.range(0, readings.length)
        .reduce((one, other) -> readings[other] > readings[one] ? other : one)
        .orElse(0);
  }

  /**
   * The onset of the first stroke that fails, in seconds; empty if all strokes hold, or nothing can
   * be played at all.
   */
  OptionalDouble lastsSeconds() {
    if (!serves()) {
      return OptionalDouble.empty();
    }
    LongStream failures =
        Stream.of(spending.tired(1), spending.breathless(1))
            .flatMap(Optional::stream)
            .mapToLong(TirednessAndBreath.Excess::micros);
    int unpedalled = rules.pedalledUpTo(1) + 1;
    LongStream outside =
        IntStream.concat(
                strokesOutOfRange().limit(1),
                IntStream.of(unpedalled).filter(j -> j <= played.last()))
            .mapToLong(line::onsetMicros);
    return LongStream.concat(LongStream.concat(failures, outside), tooFast())
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
        .filter(mark -> with(line.at(line.tempo().scaledTo(start, mark))).holdsAt(1))
        .findFirst();
  }

  private OptionalDouble fastestFactor() {
    double pedals = rules.pedalledUpToFactor(LEAST_FACTOR, MOST_FACTOR);
    double most = Math.min(pedals, 1 / use);
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

  /** Whether the player manages at a factor of the tempo. */
  boolean holdsAt(double factor) {
    return inRange()
        && serves()
        && rules.pedalledUpTo(1 / factor) >= played.last()
        && playsAt(factor);
  }

  /** Whether the player manages at a factor of the tempo, whatever the range. */
  boolean playsAt(double factor) {
    return Tolerance.within(use * factor, 1)
        && spending.tired(1 / factor).isEmpty()
        && spending.breathless(1 / factor).isEmpty();
  }

  private LongStream tooFast() {
    return IntStream.range(1, line.count())
        .filter(j -> !Tolerance.within(Strain.use(demand, line, 0, j), 1))
        .mapToLong(line::onsetMicros)
        .limit(1);
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
