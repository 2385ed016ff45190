package stafette.split;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import stafette.score.Line;

/**
 * What a crew's strength is worth. Rested players can do no more than rest gives back: with r what
 * a microsecond of rest takes away at most, e what an entry adds at least, and w what a stretch
 * takes from its player (e, the tiredness added, and the rest that the player misses meanwhile),
 * all stretches of a player after a moment t together satisfy
 *
 * <pre>
 * Σ w ≤ 1 + e − f(t) + r · (end of the line − t)
 * </pre>
 *
 * since tiredness stays within the whole. Charging each stretch a price for w and allowing each
 * player the price of the right side gives a lower bound on the cost of any plan, for every price
 * not below 0 (Lagrangean relaxation; A. M. Geoffrion, "Lagrangean relaxation for integer
 * programming", Mathematical Programming Study 2, 1974). Good prices are found by subgradient steps
 * of Polyak's length. The floor of tiredness and what is already spent are known where a partial
 * plan stands, so the bound grows along it.
 *
 * <p>Passages that the score gives a player only add to tiredness: what a player can do with them
 * it can do without, so they are left out here but for the tiredness with which a partial plan
 * stands.
 */
final class Multipliers {
  private static final int STEPS = 60;
  private static final int PATIENCE = 6;
  private static final double SCARCE = 3000;
  private static final double WHOLE = RoundedUnits.WHOLE;

  private final List<PlayerKind> kinds;
  private final double[] micropoints;
  private final long endMicros;
  private final boolean free;
  private final boolean onlyStrength;

  private Multipliers(
      List<PlayerKind> kinds, double[] micropoints, long endMicros, boolean onlyStrength) {
    this.kinds = kinds;
    this.micropoints = micropoints;
    this.endMicros = endMicros;
    this.onlyStrength = onlyStrength;
    free = Arrays.stream(micropoints).allMatch(price -> price == 0);
  }

  /** Strength for nothing. */
  static Multipliers none(List<PlayerKind> kinds) {
    return new Multipliers(kinds, new double[kinds.size()], 0, false);
  }

  /**
   * Prices so high that saving strength comes before all else: a bound still, and a guide to some
   * plan where strength is scarce.
   */
  static Multipliers scarce(Crew crew, List<RelayOffers> relays) {
    double[] high = new double[crew.kinds().size()];
    Arrays.fill(high, SCARCE * Relaxation.MICROPOINTS);
    return new Multipliers(crew.kinds(), high, end(relays), false);
  }

  /** Prices with the bound that they give, in millionths of a point. */
  record Priced(Multipliers prices, long bound) {}

  /** Everything for nothing but strength, which has the same price for all. */
  static Multipliers onlyStrength(Crew crew, List<RelayOffers> relays) {
    double[] same = new double[crew.kinds().size()];
    Arrays.fill(same, 1);
    return onlyStrength(crew, relays, same);
  }

  private static Multipliers onlyStrength(
      Crew crew, List<RelayOffers> relays, double[] proportion) {
    double most = Arrays.stream(proportion).max().orElse(0);
    double[] scaled =
        Arrays.stream(proportion).map(p -> p / most * 1000 * Relaxation.MICROPOINTS).toArray();
    return new Multipliers(crew.kinds(), scaled, end(relays), true);
  }

  /** Whether a crew plainly has not the strength, all players being worth the same. */
  static boolean isBeyond(Crew crew, List<RelayOffers> relays) {
    return bound(crew, relays, onlyStrength(crew, relays)) > 0;
  }

  /**
   * What there is of strength and what is asked of it.
   *
   * @param ofOne what a player of each kind has
   * @param asked crews that have less together can't play
   */
  record Strength(List<Long> ofOne, long asked) {
    Strength {
      ofOne = List.copyOf(ofOne);
    }

    /** Where nothing is known of it. */
    static Strength unknown(int kinds) {
      return new Strength(Collections.nCopies(kinds, 0L), 0);
    }
  }

  /**
   * The strength of each kind, and what is asked of any crew.
   *
   * @param crew all who may play
   */
  static Strength strength(Crew crew, List<RelayOffers> relays) {
    Multipliers prices = onlyStrength(crew, relays);
    long asked = 0;
    for (Relaxation each : solve(crew, relays, prices)) {
      asked = Math.min(Relaxation.NEVER_MICRO, asked + each.whole());
    }
    long[] ofOne = new long[crew.kinds().size()];
    for (int kind = 0; kind < ofOne.length; kind++) {
      ofOne[kind] = prices.allowance(kind, PlayerState.RESTED, 0);
    }
    return new Strength(Arrays.stream(ofOne).boxed().toList(), asked);
  }

  /**
   * Good prices for a crew.
   *
   * @param stop asked before each step; the best prices so far are given back once it says yes
   * @param target what a plan costs that is known, or a guess, in millionths of a point
   * @return its bound is {@link Relaxation#NEVER_MICRO} if there is proof that no plan exists
   */
  static Priced find(Crew crew, List<RelayOffers> relays, long target, BooleanSupplier stop) {
    double[] now = new double[crew.kinds().size()];
    Priced best = new Priced(none(crew.kinds()), bound(crew, relays, none(crew.kinds())));
    if (best.bound >= Relaxation.NEVER_MICRO) {
      return best;
    }
    double length = 1;
    int since = 0;
    double goal = target;
    for (int step = 0; step < STEPS && !stop.getAsBoolean(); step++) {
      Multipliers prices = new Multipliers(crew.kinds(), now.clone(), end(relays), false);
      Relaxation[] solved = solve(crew, relays, prices);
      long bound = bound(crew, prices, solved);
      if (bound > best.bound) {
        best = new Priced(prices, bound);
        since = 0;
      } else if (++since >= PATIENCE) {
        length /= 2;
        since = 0;
      }
      if (bound >= goal) {
        goal = bound + Math.abs(bound) / 4.0 + 100.0 * Relaxation.MICROPOINTS;
      }
      double[] slope = slope(crew, solved, relays);
      double steep = Arrays.stream(slope).map(s -> s * s).sum();
      if (steep < 1e-9) {
        break;
      }
      double stride = length * (goal - bound) / steep;
      for (int kind = 0; kind < now.length; kind++) {
        now[kind] = Math.max(0, now[kind] + stride * slope[kind]);
      }
    }
    boolean beyond =
        !best.prices.isFree()
            && bound(crew, relays, onlyStrength(crew, relays, best.prices.micropoints)) > 0;
    return beyond ? new Priced(best.prices, Relaxation.NEVER_MICRO) : best;
  }

  private static double[] slope(Crew crew, Relaxation[] solved, List<RelayOffers> relays) {
    double[] use = new double[crew.kinds().size()];
    for (Relaxation each : solved) {
      each.addUse(use);
    }
    double[] slope = new double[use.length];
    for (int kind = 0; kind < use.length; kind++) {
      PlayerKind who = crew.kinds().get(kind);
      double budget =
          RoundedUnits.MOST + who.entryLoad() + who.restRecoveryPerMicro() * end(relays);
      slope[kind] = (use[kind] - crew.counts().get(kind) * budget) / WHOLE;
    }
    return slope;
  }

  private static long bound(Crew crew, List<RelayOffers> relays, Multipliers prices) {
    return bound(crew, prices, solve(crew, relays, prices));
  }

  private static Relaxation[] solve(Crew crew, List<RelayOffers> relays, Multipliers prices) {
    return relays.stream()
        .map(relay -> new Relaxation(crew, relay, prices, relays.size() == 1))
        .toArray(Relaxation[]::new);
  }

  private static long bound(Crew crew, Multipliers prices, Relaxation[] solved) {
    long whole = 0;
    for (Relaxation each : solved) {
      whole = Math.min(Relaxation.NEVER_MICRO, whole + each.whole());
    }
    if (whole >= Relaxation.NEVER_MICRO) {
      return Relaxation.NEVER_MICRO;
    }
    for (int kind = 0; kind < crew.kinds().size(); kind++) {
      whole -= crew.counts().get(kind) * prices.allowance(kind, PlayerState.RESTED, 0);
    }
    return whole;
  }

  private static long end(List<RelayOffers> relays) {
    return relays.stream()
        .mapToLong(relay -> relay.line().onsetMicros(relay.count() - 1))
        .max()
        .orElseThrow();
  }

  boolean isFree() {
    return free;
  }

  /** Whether stretches and handoffs cost nothing but strength. */
  boolean onlyStrength() {
    return onlyStrength;
  }

  long endMicros() {
    return endMicros;
  }

  /** What a stretch is charged for the strength it takes, rounded down. */
  long charge(RelayOffers relay, int actor, StretchesFromStart reach, int last) {
    if (free) {
      return 0;
    }
    Actor who = relay.actor(actor);
    double sum = 0;
    for (int member = 0; member < who.size(); member++) {
      double price = micropoints[who.kind(member)];
      if (price > 0) {
        sum += price / WHOLE * taken(relay, who, member, reach, last);
      }
    }
    return (long) Math.floor(sum);
  }

  /** The strength that a stretch takes from one member, w. */
  double taken(RelayOffers relay, Actor who, int member, StretchesFromStart reach, int last) {
    int ownLast = relay.own(who, member, reach.first(), last);
    int ownFirst = relay.ownFirst(who, member, reach.first());
    if (ownLast < ownFirst) {
      return 0;
    }
    SegmentsFromStart row = reach.row(member);
    Line line = reach.table(member).line();
    long span = line.onsetMicros(row.lastLoad(ownLast)) - line.onsetMicros(ownFirst);
    PlayerKind kind = kinds.get(who.kind(member));
    return kind.entryLoad() + row.drift(ownLast) + kind.restRecoveryPerMicro() * span;
  }

  /**
   * What a player of a kind is allowed who is in a state, and enters again at a moment or later.
   */
  long allowance(int kind, PlayerState state, long micros) {
    double price = micropoints[kind];
    if (price == 0) {
      return 0;
    }
    PlayerKind who = kinds.get(kind);
    double rested = who.restRecoveryPerMicro() * (micros - state.loadMicros());
    double tired =
        state.untouched() ? 0 : Math.max(0, state.tiredness() + who.entryLoad() - rested);
    return allowance(price, who, tired, micros);
  }

  /** What a player is worth who is playing, right after a stroke. */
  long allowanceAt(int kind, long tiredness, long micros) {
    double price = micropoints[kind];
    return price == 0 ? 0 : allowance(price, kinds.get(kind), (double) tiredness, micros);
  }

  private long allowance(double price, PlayerKind who, double tired, long micros) {
    double left =
        RoundedUnits.MOST
            + who.entryLoad()
            - tired
            + who.restRecoveryPerMicro() * Math.max(0, endMicros - micros);
    return (long) Math.ceil(price / WHOLE * Math.max(0, left));
  }
}
