package stafette.split;

import java.util.Arrays;
import java.util.HashSet;
import java.util.IntSummaryStatistics;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stafette.check.Strain;
import stafette.check.Tiredness;
import stafette.limits.Breath;
import stafette.limits.Condition;
import stafette.limits.Demand;
import stafette.limits.Groups;
import stafette.limits.HarpPedals;
import stafette.plan.Busy;
import stafette.plan.Player;
import stafette.plan.Skill;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.score.Tone;

/**
 * The segments that one kind of player can play with one technique when it comes fresh, with their
 * costs; worked out as asked for.
 */
final class SegmentTable {
  private static final int FIRST_ROOM = 64;

  private final Line line;
  private final Player player;
  private final Skill skill;
  private final Demand demand;
  private final Weights weights;
  private final Optional<Breath> breath;
  private final boolean[] reached;
  private final int[] register;
  private final double[] use;
  private final @Nullable Row[] rows;
  private final boolean[] within;
  private final long[] strain;
  private final int[] lastBefore;
  private final long[] load;
  private final int leastSustained;
  private final int mostSustained;

  SegmentTable(Line line, Player player, Skill skill, Weights weights) {
    this.line = line;
    this.player = player;
    this.skill = skill;
    this.weights = weights;
    this.demand = Demand.of(player.instrument(), skill.technique(), skill.capability(), line);
    this.breath = player.instrument().breath();
    int count = line.count();
    reached = new boolean[count];
    register = new int[count];
    use = new double[count];
    rows = new Row[count];
    within = new boolean[count];
    strain = new long[count];
    lastBefore = new int[count];
    load = new long[count];
    Map<Condition, Double> factors = breath.map(Breath::use).orElse(Map.of());
    for (int j = 0; j < count; j++) {
      reached[j] = line.stroke(j).tones().stream().allMatch(player.instrument()::reaches);
      boolean comfortable =
          line.stroke(j).tones().stream().allMatch(player.instrument()::comfortableAt);
      register[j] = comfortable ? 0 : weights.register();
      use[j] = factors.isEmpty() ? 1 : useOfAir(factors, j);
    }
    IntSummaryStatistics sustained =
        IntStream.range(0, count).map(demand::sustainedMilli).summaryStatistics();
    leastSustained = sustained.getMin();
    mostSustained = Math.max(sustained.getMax(), skill.capability().sustainedMilli());
    reckonStrokes();
  }

  private double useOfAir(Map<Condition, Double> factors, int j) {
    return Demand.conditionsAt(player.instrument(), line, j).stream()
        .mapToDouble(condition -> factors.getOrDefault(condition, 1.0))
        .reduce(1, (a, b) -> a * b);
  }

  Line line() {
    return line;
  }

  Skill skill() {
    return skill;
  }

  Demand demand() {
    return demand;
  }

  /** What multiplies the use of air at a stroke. */
  double useOfAir(int stroke) {
    return use[stroke];
  }

  /** The lowest sustained rate at any stroke of the line. */
  int leastSustainedMilli() {
    return leastSustained;
  }

  /** The highest sustained rate at any stroke of the line or in a given passage. */
  int mostSustainedMilli() {
    return mostSustained;
  }

  Row row(int first) {
    Row row = rows[first];
    if (row == null) {
      row = new Builder(first).build();
      rows[first] = row;
    }
    return row;
  }

  /**
   * The end of the given passages' silence in which a stroke stands: where the next one begins;
   * before the stroke if it is in one.
   */
  private long freeUntil(int first) {
    long onset = line.onsetMicros(first);
    for (Busy busy : player.busy()) {
      if (busy.toMicros() > onset) {
        return busy.fromMicros();
      }
    }
    return Long.MAX_VALUE;
  }

  private boolean enters(int first) {
    return skill.technique().groups() != Groups.THREES || line.placeInThree(first) == 0;
  }

  /** Works out what holds at each stroke for all segments that begin early enough before it. */
  private void reckonStrokes() {
    for (int j = 1; j < line.count(); j++) {
      within[j] = within(0, j);
      strain[j] = strain(0, j);
      lastBefore[j] = lastLoadBefore(j);
      load[j] =
          Shares.load(
              line.onsetMicros(j) - line.onsetMicros(lastBefore[j]),
              demand.sustainedMilli(j),
              skill.capability());
    }
  }

  private int lastLoadBefore(int j) {
    int last = j - 1;
    while (last > 0 && !Tiredness.loads(skill, demand, 0, last)) {
      last--;
    }
    return last;
  }

  /** Whether the rates at a stroke are within the limits for a segment's player. */
  private boolean within(int first, int j) {
    int from = demand.peakFrom(first, j);
    if (from >= 0
        && (line.onsetMicros(j) - line.onsetMicros(from)) * demand.peakMilli(j) < 1_000_000_000L) {
      return false;
    }
    return j == first
        || !demand.moves(j)
        || (line.onsetMicros(j) - line.onsetMicros(j - 1)) * demand.movingMilli(j)
            >= 1_000_000_000L;
  }

  private long strain(int first, int j) {
    return Strain.strokeMicropoints(Strain.use(demand, line, first, j), weights);
  }

  /**
   * Works out one row, stroke by stroke, until the first stroke that a fresh player can't reach.
   */
  private final class Builder {
    private final int first;
    private final long freeUntil;
    private final int most;
    private int[] points;
    private long[] drift;
    private long[] rise;
    private long[] fresh;
    private long[] airDrift;
    private long[] airRise;
    private long[] airFresh;
    private int[] lastLoad;
    private final Twins twins = new Twins();
    private long micropoints;
    private int outside;
    private double tiredness;
    private long airDriftNow;
    private long airFreshNow;

    Builder(int first) {
      this.first = first;
      freeUntil = freeUntil(first);
      most = line.count() - first;
      int room = Math.min(most, FIRST_ROOM);
      points = new int[room];
      drift = new long[room];
      rise = new long[room];
      fresh = new long[room];
      int lungs = breath.isPresent() ? room : 0;
      airDrift = new long[lungs];
      airRise = new long[lungs];
      airFresh = new long[lungs];
      lastLoad = new int[room];
    }

    private void makeRoom(int length) {
      if (length < points.length) {
        return;
      }
      int room = Math.min(most, 2 * length);
      points = Arrays.copyOf(points, room);
      drift = Arrays.copyOf(drift, room);
      rise = Arrays.copyOf(rise, room);
      fresh = Arrays.copyOf(fresh, room);
      int lungs = breath.isPresent() ? room : 0;
      airDrift = Arrays.copyOf(airDrift, lungs);
      airRise = Arrays.copyOf(airRise, lungs);
      airFresh = Arrays.copyOf(airFresh, lungs);
      lastLoad = Arrays.copyOf(lastLoad, room);
    }

    Row build() {
      int length = 0;
      if (enters(first)) {
        makeRoom(1);
        while (length < most && reaches(first + length)) {
          length++;
          makeRoom(length);
        }
      }
      int lungs = breath.isPresent() ? length : 0;
      return new Row(
          first,
          Arrays.copyOf(points, length),
          Arrays.copyOf(drift, length),
          Arrays.copyOf(rise, length),
          Arrays.copyOf(fresh, length),
          Arrays.copyOf(airDrift, lungs),
          Arrays.copyOf(airRise, lungs),
          Arrays.copyOf(airFresh, lungs),
          Arrays.copyOf(lastLoad, length));
    }

    /** Whether a stroke asks of this segment what it asks of one that began with the line. */
    private boolean usual(int j) {
      return j > first && demand.peakFrom(first, j) == demand.peakFrom(0, j);
    }

    private boolean reaches(int j) {
      return reached[j]
          && line.endMicros(j) <= freeUntil
          && line.onsetMicros(first) < freeUntil
          && rates(j)
          && (!skill.technique().twinStrings() || twins.take(j))
          && tire(j)
          && breathe(j)
          && reckon(j);
    }

    private boolean rates(int j) {
      return usual(j) ? within[j] : SegmentTable.this.within(first, j);
    }

    private boolean tire(int j) {
      int k = j - first;
      int graces = line.stroke(j).graces().size();
      if (k == 0) {
        fresh[0] = Shares.graces(graces, skill.capability());
        tiredness = Tiredness.atFirst(graces, skill.capability());
        lastLoad[0] = j;
      } else if (Tiredness.loads(skill, demand, first, j)) {
        long gap = line.onsetMicros(j) - line.onsetMicros(lastLoad[k - 1]);
        long change =
            lastLoad[k - 1] == lastBefore[j]
                ? load[j]
                : Shares.load(gap, demand.sustainedMilli(j), skill.capability());
        long more = Shares.graces(graces, skill.capability());
        drift[k] = drift[k - 1] + change + more;
        fresh[k] = Math.max(0, fresh[k - 1] + change) + more;
        tiredness =
            Tiredness.after(tiredness, gap, demand.sustainedMilli(j), graces, skill.capability());
        lastLoad[k] = j;
      } else {
        drift[k] = drift[k - 1];
        fresh[k] = fresh[k - 1];
        lastLoad[k] = lastLoad[k - 1];
      }
      rise[k] = k == 0 ? 0 : Math.max(rise[k - 1], drift[k]);
      return fresh[k] <= Shares.WHOLE;
    }

    private boolean breathe(int j) {
      if (breath.isEmpty()) {
        return true;
      }
      Breath lungs = breath.get();
      int k = j - first;
      if (k > 0) {
        sound(j - 1, Math.min(line.endMicros(j - 1), line.onsetMicros(j)), lungs);
        silence(j, lungs);
      }
      long own =
          Shares.spent(line.endMicros(j) - line.onsetMicros(j), use[j], lungs.capacitySeconds());
      airDrift[k] = airDriftNow + own;
      airFresh[k] = airFreshNow + own;
      airRise[k] = k == 0 ? airDrift[k] : Math.max(airRise[k - 1], airDrift[k]);
      return airFresh[k] <= Shares.WHOLE;
    }

    private void sound(int j, long end, Breath lungs) {
      long spent = Shares.spent(end - line.onsetMicros(j), use[j], lungs.capacitySeconds());
      airDriftNow += spent;
      airFreshNow += spent;
    }

    private void silence(int j, Breath lungs) {
      long silence = line.onsetMicros(j) - Math.min(line.endMicros(j - 1), line.onsetMicros(j));
      if (silence >= Math.ceil(lungs.catchSeconds() * 1e6)) {
        long back = Shares.givenBack(silence, lungs.fullSeconds());
        airDriftNow -= back;
        airFreshNow = Math.max(0, airFreshNow - back);
      } else {
        long spent = Shares.spent(silence, use[j - 1], lungs.capacitySeconds());
        airDriftNow += spent;
        airFreshNow += spent;
      }
    }

    private boolean reckon(int j) {
      if (j > first) {
        micropoints += usual(j) ? strain[j] : strain(first, j);
      }
      outside += register[j];
      points[j - first] =
          Strain.points(micropoints + Strain.endMicropoints(tiredness, weights)) + outside;
      return true;
    }
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
