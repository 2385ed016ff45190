package stafette.split;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import stafette.check.Breathing;
import stafette.check.Costing;
import stafette.check.Strain;
import stafette.check.Tiredness;
import stafette.limits.Breath;
import stafette.limits.HarpPedals;
import stafette.limits.PedalCourse;
import stafette.score.Line;
import stafette.score.Tone;

/**
 * Works out rows, stroke by stroke, until the first stroke that a fresh player can't reach. Writes
 * on the same sheet again and again, and hands out copies.
 */
final class SegmentsMaker {
  private static final int FIRST_ROOM = 64;

  private final StrokeFigures figures;
  private final Line line;
  private final Optional<Breath> breath;
  private final Optional<Breath> writtenBreath;
  private final boolean twinStrings;
  private final boolean wholeLine;
  private int[] points = new int[FIRST_ROOM];
  private long[] drift = new long[FIRST_ROOM];
  private long[] rise = new long[FIRST_ROOM];
  private long[] fresh = new long[FIRST_ROOM];
  private long[] airDrift = new long[FIRST_ROOM];
  private long[] airRise = new long[FIRST_ROOM];
  private long[] airFresh = new long[FIRST_ROOM];
  private int[] lastLoad = new int[FIRST_ROOM];
  private int first;
  private long freeUntil;
  private int pedalledUpTo;
  private Twins twins = new Twins();
  private long micropoints;
  private int outside;
  private double tiredness;
  private double breathSpent;
  private double breathAtEnd;
  private long usualTurn;
  private long airDriftNow;
  private long airFreshNow;

  /**
   * @param wholeLine whether turns are stretches of this line, so that what short ones cost is told
   */
  SegmentsMaker(StrokeFigures figures, boolean wholeLine) {
    this.wholeLine = wholeLine;
    this.figures = figures;
    this.line = figures.line();
    this.breath = figures.breath();
    this.writtenBreath = figures.writtenBreath();
    this.twinStrings = figures.way().twinStrings();
  }

  /** All segments that begin with a stroke. */
  SegmentsFromStart row(int from) {
    begin(from);
    int length = 0;
    while (from + length < line.count() && reaches(from + length)) {
      length++;
      makeRoom(length);
    }
    return cut(length);
  }

  private void begin(int from) {
    first = from;
    freeUntil = figures.freeUntil(from);
    pedalledUpTo =
        figures.way().isPedalled()
            ? PedalCourse.from(line, from, figures.pedalStretch()).last()
            : Integer.MAX_VALUE;
    twins = twinStrings ? new Twins() : twins;
    micropoints = 0;
    outside = 0;
    tiredness = 0;
    breathSpent = 0;
    breathAtEnd = 0;
    usualTurn = Math.min(line.barMicros(from), Costing.USUAL_TURN_MICROS);
    airDriftNow = 0;
    airFreshNow = 0;
  }

  private void makeRoom(int length) {
    if (length < points.length) {
      return;
    }
    int room = 2 * length;
    points = Arrays.copyOf(points, room);
    drift = Arrays.copyOf(drift, room);
    rise = Arrays.copyOf(rise, room);
    fresh = Arrays.copyOf(fresh, room);
    airDrift = Arrays.copyOf(airDrift, room);
    airRise = Arrays.copyOf(airRise, room);
    airFresh = Arrays.copyOf(airFresh, room);
    lastLoad = Arrays.copyOf(lastLoad, room);
  }

  /** A copy of what has been written, arrays that say the same being one. */
  private SegmentsFromStart cut(int length) {
    long[] drifts = Arrays.copyOf(drift, length);
    SegmentsFromStart.Running effort =
        new SegmentsFromStart.Running(drifts, likeOrCopy(rise, drifts), likeOrCopy(fresh, drifts));
    int lungs = breath.isPresent() ? length : 0;
    long[] airDrifts = Arrays.copyOf(airDrift, lungs);
    SegmentsFromStart.Running air =
        new SegmentsFromStart.Running(
            airDrifts, likeOrCopy(airRise, airDrifts), likeOrCopy(airFresh, airDrifts));
    boolean eachLoads = length == 0 || lastLoadsAreLasts(length);
    return new SegmentsFromStart(
        first,
        Arrays.copyOf(points, length),
        effort,
        air,
        eachLoads ? SegmentsFromStart.EACH_LOADS : Arrays.copyOf(lastLoad, length));
  }

  private static long[] likeOrCopy(long[] written, long[] known) {
    int length = known.length;
    return Arrays.equals(written, 0, length, known, 0, length)
        ? known
        : Arrays.copyOf(written, length);
  }

  private boolean lastLoadsAreLasts(int length) {
    int k = 0;
    while (k < length && lastLoad[k] == first + k) {
      k++;
    }
    return k == length;
  }

  private boolean reaches(int j) {
    return figures.reached(j)
        && j <= pedalledUpTo
        && line.endMicros(j) <= freeUntil
        && line.onsetMicros(first) < freeUntil
        && figures.within(first, j)
        && (!twinStrings || twins.take(j))
        && tire(j)
        && breathe(j)
        && reckon(j);
  }

  private boolean tire(int j) {
    int k = j - first;
    long more = RoundedUnits.graces(figures.graces(j), figures.capability(j));
    if (k == 0) {
      drift[0] = 0;
      rise[0] = 0;
      fresh[0] = more;
      lastLoad[0] = j;
      tiredness = figures.writtenGraces(j);
      return fresh[0] <= RoundedUnits.MOST;
    }
    boolean loads = figures.loads(first, j);
    int before = lastLoad[k - 1];
    lastLoad[k] = loads ? j : before;
    drift[k] = drift[k - 1];
    fresh[k] = fresh[k - 1];
    if (loads) {
      long load = figures.load(before, j);
      drift[k] += load + more;
      fresh[k] = Math.max(0, fresh[k] + load) + more;
      tiredness = Tiredness.after(tiredness, figures.change(before, j), figures.writtenGraces(j));
    }
    rise[k] = Math.max(rise[k - 1], drift[k]);
    return fresh[k] <= RoundedUnits.MOST;
  }

  private boolean breathe(int j) {
    if (breath.isEmpty()) {
      return true;
    }
    Breath lungs = breath.get();
    Breath written = writtenBreath.orElseThrow();
    int k = j - first;
    if (k > 0) {
      sound(j - 1, Math.min(line.endMicros(j - 1), line.onsetMicros(j)), lungs, written);
      silence(j, lungs, written);
    }
    breathAtEnd =
        Breathing.blown(
            breathSpent,
            (line.endMicros(j) - line.onsetMicros(j)) / 1e6,
            figures.useOfAir(j),
            written);
    long own =
        RoundedUnits.spent(
            line.endMicros(j) - line.onsetMicros(j), figures.useOfAir(j), lungs.capacitySeconds());
    airDrift[k] = airDriftNow + own;
    airFresh[k] = airFreshNow + own;
    airRise[k] = k == 0 ? airDrift[k] : Math.max(airRise[k - 1], airDrift[k]);
    return airFresh[k] <= RoundedUnits.MOST;
  }

  private void sound(int j, long end, Breath lungs, Breath written) {
    long spent =
        RoundedUnits.spent(end - line.onsetMicros(j), figures.useOfAir(j), lungs.capacitySeconds());
    airDriftNow += spent;
    airFreshNow += spent;
    breathSpent =
        Breathing.blown(
            breathSpent, (end - line.onsetMicros(j)) / 1e6, figures.useOfAir(j), written);
  }

  private void silence(int j, Breath lungs, Breath written) {
    long silence = line.onsetMicros(j) - Math.min(line.endMicros(j - 1), line.onsetMicros(j));
    breathSpent = Breathing.silent(breathSpent, silence / 1e6, figures.useOfAir(j - 1), written);
    if (silence >= Math.ceil(lungs.catchSeconds() * 1e6)) {
      long back = RoundedUnits.givenBack(silence, lungs.fullSeconds());
      airDriftNow -= back;
      airFreshNow = Math.max(0, airFreshNow - back);
    } else {
      long spent = RoundedUnits.spent(silence, figures.useOfAir(j - 1), lungs.capacitySeconds());
      airDriftNow += spent;
      airFreshNow += spent;
    }
  }

  private boolean reckon(int j) {
    if (j > first) {
      micropoints += figures.strain(first, j);
    }
    outside += figures.register(j);
    points[j - first] = figures.joins(first, j) ? pointsUpTo(j) : Relaxation.NEVER;
    return true;
  }

  private int pointsUpTo(int j) {
    return Strain.points(
            micropoints + Strain.endMicropoints(tiredness, breathAtEnd, figures.weights()))
        + outside
        + (wholeLine
            ? Costing.shortPoints(usualTurn, Costing.length(line, first, j), figures.weights())
            : 0);
  }

  /**
   * The pitches of a growing segment, and whether one setting of the harp's pedals serves them all.
   */
  private final class Twins {
    private final Set<Integer> sounding = new HashSet<>();
    private final Set<Integer> repeated = new HashSet<>();
    private Set<Integer> before = Set.of();

    boolean take(int j) {
      Set<Integer> keys = new HashSet<>();
      for (Tone tone : line.stroke(j).tones()) {
        keys.add(tone.key());
      }
      boolean news = sounding.addAll(keys);
      news |= keys.equals(before) && repeated.addAll(keys);
      before = keys;
      return !news || HarpPedals.twinsPossible(sounding, repeated);
    }
  }
}
