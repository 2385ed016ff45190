package stafette.split;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.check.ShortTurn;
import stafette.check.Strain;
import stafette.check.Tiredness;
import stafette.check.Tolerance;
import stafette.limits.Breath;
import stafette.limits.Burst;
import stafette.limits.Capability;
import stafette.limits.Condition;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Way;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.score.Tone;

/**
 * What each stroke of a line asks of one kind of player in one way. What it asks of a segment that
 * began early enough before it, which is nearly always the case, is worked out once.
 */
final class StrokeFigures {
  private final Line line;
  private final Player player;
  private final Player written;
  private final Way way;
  private final Demand demand;
  private final Demand writtenDemand;
  private final double pedalStretch;
  private final Weights weights;
  private final boolean[] reached;
  private final int[] register;
  private final double[] use;
  private final int[] graces;
  private final boolean[] within;
  private final long[] strain;
  private final int[] earliest;
  private final int[] lastBefore;
  private final long[] load;
  private final double[] change;

  /**
   * @param both the player as it is reckoned with, and as it is at the written tempo
   */
  StrokeFigures(Line line, PlayerWithinMargin both, int way, Weights weights) {
    this.line = line;
    this.player = both.player();
    this.written = both.written();
    this.way = player.ways().get(way);
    this.weights = weights;
    this.pedalStretch = both.margin().stretch();
    this.demand = Demand.of(player.instrument(), this.way, line);
    this.writtenDemand = player.equals(written) ? demand : demand.with(written.ways().get(way));
    int count = line.count();
    reached = new boolean[count];
    register = new int[count];
    use = new double[count];
    graces = new int[count];
    within = new boolean[count];
    strain = new long[count];
    earliest = new int[count];
    lastBefore = new int[count];
    load = new long[count];
    change = new double[count];
    for (int j = 0; j < count; j++) {
      reckonTones(j);
      if (j > 0) {
        reckonEffort(j);
      }
    }
  }

  private void reckonTones(int j) {
    Instrument instrument = player.instrument();
    List<Tone> tones = line.stroke(j).tones();
    boolean comfortable = true;
    reached[j] = true;
    for (Tone tone : tones) {
      reached[j] &= instrument.reaches(tone);
      comfortable &= instrument.comfortableAt(tone);
    }
    register[j] = comfortable ? 0 : weights.register();
    graces[j] = line.stroke(j).graces().size();
    Map<Condition, Double> factors = breath().map(Breath::use).orElse(Map.of());
    use[j] = factors.isEmpty() ? 1 : useOfAir(factors, j);
  }

  private double useOfAir(Map<Condition, Double> factors, int j) {
    return Demand.conditionsAt(player.instrument(), line, j).stream()
        .mapToDouble(condition -> factors.getOrDefault(condition, 1.0))
        .reduce(1, (a, b) -> a * b);
  }

  private void reckonEffort(int j) {
    earliest[j] =
        Math.min(Burst.STROKES.earliest(demand, 0, j), Burst.NOTES.earliest(demand, 0, j));
    within[j] = judgedWithin(0, j);
    strain[j] = judgedStrain(0, j);
    lastBefore[j] = lastLoadBefore(j);
    long gap = line.onsetMicros(j) - line.onsetMicros(lastBefore[j]);
    load[j] = RoundedUnits.load(gap, demand.sustainedMilli(j), capability(j));
    change[j] = writtenChange(gap, j);
  }

  private int lastLoadBefore(int j) {
    int last = j - 1;
    while (last > 0 && !loads(0, last)) {
      last--;
    }
    return last;
  }

  Line line() {
    return line;
  }

  Way way() {
    return way;
  }

  Demand demand() {
    return demand;
  }

  Weights weights() {
    return weights;
  }

  Capability capability(int j) {
    return demand.capability(j);
  }

  Optional<Breath> breath() {
    return player.instrument().breath();
  }

  /** How the player breathes at the written tempo. */
  Optional<Breath> writtenBreath() {
    return written.instrument().breath();
  }

  /** What grace notes add to tiredness at the written tempo. */
  double writtenGraces(int j) {
    return Tiredness.atFirst(graces(j), writtenDemand.capability(j));
  }

  /** By what times are shortened in which pedals move. */
  double pedalStretch() {
    return pedalStretch;
  }

  /** Whether all tones of a stroke are in the instrument's range. */
  boolean reached(int j) {
    return reached[j];
  }

  /** What a stroke's register costs, in points. */
  int register(int j) {
    return register[j];
  }

  /** What multiplies the use of air at a stroke. */
  double useOfAir(int j) {
    return use[j];
  }

  int graces(int j) {
    return graces[j];
  }

  /** Whether a stroke loads a player who began with {@code first}. */
  boolean loads(int first, int j) {
    return demand.loads(first, j);
  }

  /**
   * The end of the given passages' silence in which a stroke stands: where the next one begins;
   * before the stroke if it is in one.
   */
  long freeUntil(int first) {
    long onset = line.onsetMicros(first);
    for (GivenStretch busy : player.busy()) {
      if (busy.toMicros() > onset) {
        return busy.fromMicros();
      }
    }
    return Long.MAX_VALUE;
  }

  /** Whether the rates at a stroke are within the limits of a player who began with another. */
  boolean within(int first, int j) {
    return usual(first, j) ? within[j] : judgedWithin(first, j);
  }

  /** What the rates at a stroke cost a player who began before it, in millionths of a point. */
  long strain(int first, int j) {
    return usual(first, j) ? strain[j] : judgedStrain(first, j);
  }

  /** The change of tiredness at a stroke that loads, in {@link RoundedUnits}. */
  long load(int lastLoad, int j) {
    return lastLoad == lastBefore[j]
        ? load[j]
        : RoundedUnits.load(
            line.onsetMicros(j) - line.onsetMicros(lastLoad),
            demand.sustainedMilli(j),
            capability(j));
  }

  /** That change at the written tempo, in the judge's own figures. */
  double change(int lastLoad, int j) {
    return lastLoad == lastBefore[j]
        ? change[j]
        : writtenChange(line.onsetMicros(j) - line.onsetMicros(lastLoad), j);
  }

  private double writtenChange(long gapMicros, int j) {
    return Tiredness.change(
        (double) gapMicros, writtenDemand.sustainedMilli(j), writtenDemand.capability(j));
  }

  /** Whether a stroke asks of this segment what it asks of one that began with the line. */
  private boolean usual(int first, int j) {
    return j > first && earliest[j] >= first;
  }

  private boolean judgedWithin(int first, int j) {
    return demand.covered(j)
        && Burst.STROKES.holds(demand, line, first, j)
        && Burst.NOTES.holds(demand, line, first, j);
  }

  /** Whether a turn of these strokes is long enough for its speed. */
  boolean joins(int first, int last) {
    return Tolerance.within(ShortTurn.use(demand, line, first, last), 1);
  }

  private long judgedStrain(int first, int j) {
    return Strain.strokeMicropoints(Strain.use(writtenDemand, line, first, j), weights);
  }
}
