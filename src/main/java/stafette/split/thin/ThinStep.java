package stafette.split.thin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.Strain;
import stafette.check.Tolerance;
import stafette.check.alone.ThinnedStroke;
import stafette.limits.Breath;
import stafette.limits.Burst;
import stafette.limits.Capability;
import stafette.limits.Condition;
import stafette.limits.Demand;
import stafette.limits.Skill;
import stafette.limits.Way;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.split.GivenSpending;
import stafette.split.Spent;

/**
 * Goes on from what was kept so far with the strokes of one more stretch, if the player can. What
 * these ask depends on the last strokes before them alone: back to the last one that loads, and as
 * far as a burst can reach.
 */
final class ThinStep {
  private static final double MICROS_TIMES_MILLI = 1e9;

  private final Line whole;
  private final Player player;
  private final Way way;
  private final long readyMicros;
  private final GivenSpending given;
  private final Optional<Breath> lungs;
  private final long memoryMicros;
  private final Map<List<ThinnedStroke>, Local> known = new HashMap<>();
  private final Map<List<Tone>, ThinnedStroke> longAgo = new HashMap<>();

  ThinStep(Line whole, Player player, Way way, long readyMicros) {
    this.whole = whole;
    this.player = player;
    this.way = way;
    this.readyMicros = readyMicros;
    given = new GivenSpending(player);
    lungs = player.instrument().breath();
    memoryMicros = way.skills().stream().mapToLong(ThinStep::longestBurst).max().orElse(0);
  }

  /** No longer time is too short for a burst, whatever the conditions. */
  private static long longestBurst(Skill skill) {
    Capability capability = skill.capability();
    double slowest = Math.min(capability.peakMilli(), capability.movingMilli());
    for (double factor : skill.technique().factors().values()) {
      slowest *= Math.min(1, factor);
    }
    double gap = MICROS_TIMES_MILLI / Math.max(1, Math.floor(slowest) - 1);
    return (long) Math.ceil(Burst.MOST_GAPS * gap);
  }

  /**
   * Where a part stands.
   *
   * @param effort what it has cost
   * @param tail the last strokes kept, as far as later ones depend on them
   * @param run where in the tail the present run began, 0 if before it; empty if none goes on
   * @param passages how many given passages have been played
   * @param soundedUntil the end of the last sound; empty before the first
   */
  record ThinState(
      Spent effort,
      List<ThinnedStroke> tail,
      Optional<Integer> run,
      int passages,
      Optional<Long> soundedUntil) {
    static final ThinState START =
        new ThinState(Spent.FRESH, List.of(), Optional.empty(), 0, Optional.empty());
  }

  /** The end of a part and the strokes after it, with what they ask. */
  private record Local(Line line, Demand demand, List<Double> air) {}

  /** The state after some strokes more; empty if the player can't play them. */
  Optional<ThinState> play(ThinState before, List<ThinnedStroke> strokes) {
    return strokes.isEmpty()
        ? Optional.of(before)
        : goOn(resting(before, strokes.get(0).stroke()), strokes);
  }

  /** How many ends of parts have been reckoned. */
  int reckoned() {
    return known.size();
  }

  /**
   * The same after a silence so long that of the strokes before it only the tones of the last
   * matter: one with those tones stands for all, so that their demands are reckoned once.
   */
  private ThinState resting(ThinState before, Stroke next) {
    if (before.tail.isEmpty()) {
      return before;
    }
    ThinnedStroke last = before.tail.get(before.tail.size() - 1);
    if (!isLongBefore(last.stroke(), next)) {
      return before;
    }
    ThinnedStroke known = longAgo.computeIfAbsent(last.stroke().tones(), tones -> last);
    ThinnedStroke same = isLongBefore(known.stroke(), next) ? known : last;
    return new ThinState(
        before.effort,
        List.of(same),
        before.run.map(first -> 0),
        before.passages,
        before.soundedUntil);
  }

  private boolean isLongBefore(Stroke one, Stroke next) {
    return whole.micros(next.onset()) - whole.micros(one.onset()) >= memoryMicros
        && one.span().end().isBefore(next.onset());
  }

  private Optional<ThinState> goOn(ThinState before, List<ThinnedStroke> strokes) {
    List<ThinnedStroke> all = new ArrayList<>(before.tail);
    all.addAll(strokes);
    Local local = known.computeIfAbsent(all, this::local);
    Optional<ThinState> state = Optional.of(before);
    for (int j = before.tail.size(); j < all.size() && state.isPresent(); j++) {
      int index = j;
      state = state.flatMap(s -> stroke(s, local, index));
    }
    return state.map(s -> forgetting(s, all, local));
  }

  /** Whether the rest of what the score gives can be played too. */
  boolean ends(ThinState state) {
    Optional<ThinState> last = passages(state, Long.MAX_VALUE);
    return last.filter(s -> s.effort.ended(lungs).holds()).isPresent();
  }

  private Local local(List<ThinnedStroke> strokes) {
    Line line = ThinnedStroke.line(whole, strokes);
    return new Local(
        line,
        Demand.of(player.instrument(), way, line),
        IntStream.range(0, line.count()).mapToObj(j -> useOfAir(line, j)).toList());
  }

  private Optional<ThinState> stroke(ThinState before, Local local, int j) {
    long onset = local.line.onsetMicros(j);
    return passages(before, onset)
        .filter(state -> state.run.isPresent() || isReady(state, onset))
        .map(state -> struck(state, local, j))
        .filter(state -> state.effort.holds());
  }

  private boolean isReady(ThinState state, long onset) {
    long ready = Math.max(readyMicros, changeAfter(state));
    return state.soundedUntil.map(end -> onset - end >= ready).orElse(true);
  }

  /** What the given passage asks that was played last, where the line has another manner. */
  private long changeAfter(ThinState state) {
    Optional<GivenStretch> last =
        state.passages == 0 ? Optional.empty() : Optional.of(given.get(state.passages - 1));
    return last.filter(busy -> state.soundedUntil.equals(Optional.of(busy.toMicros())))
        .map(GivenStretch::changeMicros)
        .orElse(0L);
  }

  /** After the given passages that begin no later; empty if one begins before the run has ended. */
  private Optional<ThinState> passages(ThinState before, long micros) {
    ThinState state = before;
    while (state.passages < given.count() && given.get(state.passages).fromMicros() <= micros) {
      GivenStretch busy = given.get(state.passages);
      if (state.run.isPresent() && busy.fromMicros() < state.soundedUntil.orElseThrow()) {
        return Optional.empty();
      }
      state =
          new ThinState(
              given.play(state.effort, state.passages),
              state.tail,
              Optional.empty(),
              state.passages + 1,
              Optional.of(Math.max(state.soundedUntil.orElse(busy.toMicros()), busy.toMicros())));
    }
    return state.effort.holds() ? Optional.of(state) : Optional.empty();
  }

  private ThinState struck(ThinState before, Local local, int j) {
    int first = before.run.orElse(j);
    boolean fast =
        local.demand.covered(j)
            && Tolerance.within(Strain.use(local.demand, local.line, first, j), 1);
    Spent effort = before.effort;
    if (local.demand.loads(first, j)) {
      effort =
          effort.load(
              local.line.onsetMicros(j),
              local.demand.sustainedMilli(j),
              local.line.stroke(j).graces().size(),
              local.demand.capability(j),
              Spent.Role.OWN);
    }
    effort =
        effort.sound(
            new Spent.SpentSound(
                local.line.onsetMicros(j),
                local.line.endMicros(j),
                local.air.get(j),
                Spent.Role.OWN),
            lungs);
    return new ThinState(
        fast ? effort : effort.broken(),
        before.tail,
        Optional.of(first),
        before.passages,
        Optional.of(Math.max(before.soundedUntil.orElse(Long.MIN_VALUE), local.line.endMicros(j))));
  }

  private ThinState forgetting(ThinState state, List<ThinnedStroke> all, Local local) {
    int last = all.size() - 1;
    int first = state.run.orElseThrow();
    int from = last;
    while (from > first && !local.demand.loads(first, from)) {
      from--;
    }
    while (from > 0
        && local.line.onsetMicros(last) - local.line.onsetMicros(from - 1) <= memoryMicros) {
      from--;
    }
    return new ThinState(
        state.effort,
        List.copyOf(all.subList(from, all.size())),
        Optional.of(Math.max(0, first - from)),
        state.passages,
        state.soundedUntil);
  }

  private double useOfAir(Line line, int j) {
    Map<Condition, Double> use = lungs.map(Breath::use).orElse(Map.of());
    return use.isEmpty()
        ? 1
        : Demand.conditionsAt(player.instrument(), line, j).stream()
            .mapToDouble(condition -> use.getOrDefault(condition, 1.0))
            .reduce(1, (a, b) -> a * b);
  }
}
