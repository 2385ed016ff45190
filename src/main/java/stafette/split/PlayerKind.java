package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.plan.Rules;

/**
 * Players who are alike: same instrument, skills and given passages. Knows their segments, and how
 * what they bring along changes with rest and with what the score gives them.
 */
final class PlayerKind {
  /** What two silences may differ by through rounding, in {@link RoundedUnits}. */
  private static final double AIR_ROUNDING = 2;

  private final PlayerWithinMargin both;
  private final Player player;
  private final List<Integer> members;
  private final long readyMicros;
  private final boolean changes;
  private final Optional<Breath> breath;
  private final Optional<Skill> givenSkill;
  private final List<PlayedStretch> alone;
  private double slowestRecovery = Double.POSITIVE_INFINITY;
  private double fastestRecovery;
  private double restRecovery;
  private double entryLoad = Double.POSITIVE_INFINITY;
  private final List<SegmentTable> tables = new ArrayList<>();

  private PlayerKind(Rules rules, PlayerWithinMargin both, List<Integer> members) {
    this.both = both;
    this.player = both.player();
    this.members = List.copyOf(members);
    this.breath = player.instrument().breath();
    this.readyMicros = rules.readyMicros(player);
    this.givenSkill = player.leastTiringSkill();
    changes = player.busy().stream().anyMatch(busy -> busy.changeMicros() > 0);
    alone = givenAlone();
    if (hasGiven()) {
      givenSkill.map(Skill::capability).ifPresent(able -> learnSlopes(able, steady(able)));
    }
  }

  /**
   * The kinds among the players of a brief, in the order of their first members. A player whom a
   * lock names is like nobody else.
   */
  static List<PlayerKind> of(Brief brief) {
    List<PlayerKind> kinds = new ArrayList<>();
    Brief within = brief.withinMargin();
    List<Player> players = brief.players();
    Set<Integer> locked = LockedPlayers.players(brief.rules().locks());
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < players.size(); i++) {
      left.add(i);
    }
    while (!left.isEmpty()) {
      Player first = players.get(left.get(0));
      boolean named = locked.contains(left.get(0));
      List<Integer> alike =
          named
              ? List.of(left.get(0))
              : left.stream()
                  .filter(i -> !locked.contains(i) && first.isLike(players.get(i)))
                  .toList();
      PlayerWithinMargin both =
          new PlayerWithinMargin(within.players().get(left.get(0)), first, within.rules().margin());
      kinds.add(new PlayerKind(within.rules(), both, alike));
      left.removeAll(alike);
    }
    return kinds;
  }

  /** With what the margin asks. */
  Player player() {
    return player;
  }

  PlayerWithinMargin both() {
    return both;
  }

  /** Indices of the players of this kind in the brief. */
  List<Integer> members() {
    return members;
  }

  /** Takes note of how fast the players of this kind recover in segments of a table. */
  void learn(SegmentTable table) {
    table.sustained().forEach(this::learn);
    tables.add(table);
  }

  private static SegmentTable.SustainedRates steady(Capability able) {
    return new SegmentTable.SustainedRates(able.sustainedMilli(), able.sustainedMilli());
  }

  private void learn(Capability capability, SegmentTable.SustainedRates sustained) {
    double byRest = RoundedUnits.WHOLE / (capability.recoveryMillis() * 1e3);
    double perMilli = 1e6 / capability.staminaMilli();
    learnSlopes(capability, sustained);
    double bySustained = sustained.mostMilli() * perMilli;
    restRecovery = Math.max(restRecovery, Math.min(byRest, bySustained));
    double stroke =
        bySustained <= byRest ? RoundedUnits.WHOLE * 1e3 / capability.staminaMilli() : 0;
    entryLoad = Math.min(entryLoad, stroke);
  }

  /** How slowly and how fast a player recovers who goes on with such strokes. */
  private void learnSlopes(Capability capability, SegmentTable.SustainedRates sustained) {
    double byRest = RoundedUnits.WHOLE / (capability.recoveryMillis() * 1e3);
    double perMilli = 1e6 / capability.staminaMilli();
    slowestRecovery =
        Math.min(slowestRecovery, Math.min(byRest, sustained.leastMilli() * perMilli));
    fastestRecovery = Math.max(fastestRecovery, Math.max(byRest, sustained.mostMilli() * perMilli));
  }

  /** The tables that these players play from. */
  List<SegmentTable> tables() {
    return tables;
  }

  long readyMicros() {
    return readyMicros;
  }

  /** The most tiredness that a microsecond of rest takes away. */
  double restRecoveryPerMicro() {
    return restRecovery;
  }

  /** The least tiredness that an entry adds, beside what the rest before it takes away. */
  double entryLoad() {
    return tables.isEmpty() ? 0 : entryLoad;
  }

  /** Whether the score gives these players passages of their own. */
  boolean hasGiven() {
    return !player.busy().isEmpty();
  }

  /** When a player in this state may enter again at the earliest. */
  long freeFrom(PlayerState state) {
    return state.untouched()
        ? Long.MIN_VALUE
        : state.soundMicros() + Math.max(readyMicros, changeAfter(state.soundMicros()));
  }

  /** What a given passage that ends then asks, where the line is played in another manner. */
  private long changeAfter(long micros) {
    int passages = changes ? next(micros) : 0;
    return passages > 0 && player.busy().get(passages - 1).toMicros() == micros
        ? player.busy().get(passages - 1).changeMicros()
        : 0;
  }

  /** Tiredness right after the first stroke of a segment, its grace notes included. */
  long tirednessEntering(PlayerState state, SegmentTable table, int first) {
    Capability capability = table.demand().capability(first);
    long graces = RoundedUnits.graces(table.graces(first), capability);
    if (state.untouched()) {
      return graces;
    }
    long gap = table.line().onsetMicros(first) - state.loadMicros();
    return Math.max(
            0,
            state.tiredness()
                + RoundedUnits.load(gap, table.demand().sustainedMilli(first), capability))
        + graces;
  }

  /**
   * Air spent before the first sound of a segment; {@link stafette.plan.Rules#readyMicros} leaves
   * time for a breath.
   */
  long airEntering(PlayerState state, long onsetMicros) {
    if (breath.isEmpty() || state.untouched()) {
      return 0;
    }
    return airAfterSilence(state, onsetMicros);
  }

  /** The state after a segment, as part of a turn whose last stroke comes then. */
  PlayerState after(
      SegmentTable table,
      SegmentsFromStart row,
      int last,
      long tirednessAtFirst,
      long airBefore,
      long turnMicros) {
    return new PlayerState(
        false,
        table.line().onsetMicros(row.lastLoad(last)),
        row.tiredness(last, tirednessAtFirst),
        table.line().endMicros(last),
        row.air(last, airBefore),
        table.useOfAir(last),
        turnMicros);
  }

  /**
   * The state at a moment before which the player does nothing more of the plan: given passages
   * that begin before it are played.
   */
  PlayerState at(PlayerState state, long micros) {
    if (player.busy().isEmpty() || state.untouched()) {
      return state.untouched() ? untouchedAt(micros) : state;
    }
    PlayerState now = state;
    for (int i = next(state.soundMicros()); i < player.busy().size(); i++) {
      if (player.busy().get(i).fromMicros() >= micros) {
        break;
      }
      now = play(now, player.busy().get(i)).state();
    }
    return now;
  }

  private PlayerState untouchedAt(long micros) {
    int next = next(micros);
    return next == 0 ? PlayerState.RESTED : alone.get(next - 1).state();
  }

  /** The first given passage that doesn't begin before a moment. */
  private int next(long micros) {
    int low = 0;
    int high = player.busy().size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (player.busy().get(middle).fromMicros() >= micros) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /**
   * Whether given passages that follow are spoilt though the player does nothing more of the plan.
   */
  boolean spoils(PlayerState state) {
    PlayerState now = state;
    for (int i = next(state.soundMicros()); i < player.busy().size(); i++) {
      PlayedStretch played = play(now, player.busy().get(i));
      if (played.spoilt(alone.get(i))) {
        return true;
      }
      if (played.state().equals(alone.get(i).state())) {
        return false;
      }
      now = played.state();
    }
    return false;
  }

  /**
   * The same state, or {@link PlayerState#RESTED} if by then it makes no difference to any entry.
   */
  PlayerState simplified(PlayerState state, long now) {
    if (state.untouched()) {
      return state;
    }
    PlayerState then = at(state, now);
    return hasGiven() && then.equals(untouchedAt(now)) ? PlayerState.RESTED : restedIfSo(then, now);
  }

  private PlayerState restedIfSo(PlayerState state, long now) {
    if (freeFrom(state) > now || state.turnMicros() >= now) {
      return state;
    }
    if (breath.isPresent() && airAfterSilence(state, now) > 0) {
      return state;
    }
    long gap = now - state.loadMicros();
    boolean fresh = true;
    for (SegmentTable table : tables) {
      for (var known : table.sustained().entrySet()) {
        fresh &=
            state.tiredness()
                    + RoundedUnits.load(gap, known.getValue().leastMilli(), known.getKey())
                <= 0;
      }
    }
    boolean freshForGiven =
        !hasGiven()
            || givenSkill
                .map(Skill::capability)
                .map(
                    able ->
                        state.tiredness() + RoundedUnits.load(gap, able.sustainedMilli(), able)
                            <= 0)
                .orElse(true);
    return fresh && freshForGiven ? PlayerState.RESTED : state;
  }

  /** Whether whoever is in the first state can do all that one in the second can, from now on. */
  boolean noWorse(PlayerState one, PlayerState other) {
    if (one.equals(other) || one.untouched()) {
      return true;
    }
    if (hasGiven() && next(one.soundMicros()) != next(other.soundMicros())) {
      return false;
    }
    if (other.untouched()
        || one.soundMicros() > other.soundMicros()
        || (changes && freeFrom(one) > freeFrom(other))
        || one.turnMicros() > other.turnMicros()) {
      return false;
    }
    double tired = (double) one.tiredness() - other.tiredness();
    double later = (double) one.loadMicros() - other.loadMicros();
    boolean tirednessFits =
        tired + slowestRecovery * later <= 0 && tired + fastestRecovery * later <= 0;
    return tirednessFits && airNoWorse(one, other);
  }

  private boolean airNoWorse(PlayerState one, PlayerState other) {
    if (breath.isEmpty()) {
      return true;
    }
    Breath lungs = breath.get();
    double earlier = (double) other.soundMicros() - one.soundMicros();
    double backMeanwhile = earlier > 0 ? earlier * 1e6 / lungs.fullSeconds() - AIR_ROUNDING : 0;
    if (one.air() - other.air() > backMeanwhile) {
      return false;
    }
    boolean breathesMeanwhile = earlier >= Math.ceil(lungs.catchSeconds() * 1e6);
    long spentMeanwhile =
        RoundedUnits.spent(
            other.soundMicros() - one.soundMicros(), one.use(), lungs.capacitySeconds());
    return player.busy().isEmpty()
        || breathesMeanwhile
        || (one.use() <= other.use() && one.air() + spentMeanwhile <= other.air());
  }

  /**
   * A given passage as it goes: each stroke and the air within the whole or not, and the state
   * after it.
   */
  private PlayedStretch play(PlayerState before, GivenStretch busy) {
    PlayerState now = before;
    List<Boolean> spent = new ArrayList<>();
    for (long onset : busy.strokeMicros()) {
      long tired = tirednessGiven(now, onset);
      spent.add(tired > RoundedUnits.MOST);
      now =
          new PlayerState(
              false,
              onset,
              Math.min(RoundedUnits.WHOLE, tired),
              now.soundMicros(),
              now.air(),
              now.use(),
              now.turnMicros());
    }
    long air = 0;
    if (breath.isPresent()) {
      long start = before.untouched() ? 0 : airAfterSilence(before, busy.fromMicros());
      air =
          start
              + RoundedUnits.spent(
                  busy.toMicros() - busy.fromMicros(), 1, breath.get().capacitySeconds());
      spent.add(air > RoundedUnits.MOST);
    }
    return new PlayedStretch(
        new PlayerState(
            false,
            now.loadMicros(),
            now.tiredness(),
            busy.toMicros(),
            Math.min(RoundedUnits.WHOLE, air),
            1,
            before.turnMicros()),
        spent);
  }

  private long tirednessGiven(PlayerState state, long onset) {
    if (givenSkill.isEmpty() || state.untouched()) {
      return 0;
    }
    Capability capability = givenSkill.get().capability();
    long gap = Math.max(0, onset - state.loadMicros());
    return Math.max(
        0, state.tiredness() + RoundedUnits.load(gap, capability.sustainedMilli(), capability));
  }

  /**
   * A given passage that was played.
   *
   * @param state after it
   * @param beyond for each stroke, and at last for the air of winds, whether it was more than there
   *     is
   */
  private record PlayedStretch(PlayerState state, List<Boolean> beyond) {
    /** Whether something is beyond the player that would not be without the plan. */
    boolean spoilt(PlayedStretch alone) {
      for (int i = 0; i < beyond.size(); i++) {
        if (beyond.get(i) && !alone.beyond.get(i)) {
          return true;
        }
      }
      return false;
    }
  }

  /** Air spent at a moment up to which the player is silent. */
  private long airAfterSilence(PlayerState state, long untilMicros) {
    Breath lungs = breath.orElseThrow();
    long silence = untilMicros - state.soundMicros();
    return silence >= Math.ceil(lungs.catchSeconds() * 1e6)
        ? Math.max(0, state.air() - RoundedUnits.givenBack(silence, lungs.fullSeconds()))
        : state.air() + RoundedUnits.spent(silence, state.use(), lungs.capacitySeconds());
  }

  private List<PlayedStretch> givenAlone() {
    List<PlayedStretch> played = new ArrayList<>();
    PlayerState state = PlayerState.RESTED;
    for (GivenStretch busy : player.busy()) {
      PlayedStretch one = play(state, busy);
      played.add(one);
      state = one.state();
    }
    return played;
  }
}
