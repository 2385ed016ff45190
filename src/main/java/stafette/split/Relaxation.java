package stafette.split;

import java.util.Arrays;

/**
 * A lower bound on what the rest of a relay costs a crew: the same problem with everybody always
 * rested, solved backward.
 *
 * <pre>
 * S(a, i, e) = least over ends e' &gt; e of cost(a, i, e') + E(a, e')     a begins with i, the one before ends with e
 * E(a, e)    = least over starts i and followers b of handoff(a, b, i, e) + S(b, i, e);  0 at the line's end
 * </pre>
 *
 * <p>Strain may have its {@link Multipliers} on top: then what the rest costs is S less what the
 * prices allow everybody. In a crew of two who take turns, whoever plays next but one is who plays
 * now, and must have had time to get ready: that is kept as well.
 *
 * <p>Values are in millionths of a point. Time is linear in the line, in the overlap's width and in
 * the square of the number of actors.
 */
final class Relaxation {
  /** More points than any plan costs. */
  static final int NEVER = 1 << 28;

  static final long MICROPOINTS = 1_000_000;

  /** More than any plan costs; sums of some of them still fit. */
  static final long NEVER_MICRO = NEVER * MICROPOINTS;

  private static final long UNKNOWN = -1;
  private static final int END_BITS = 20;
  private static final long END_MASK = (1L << END_BITS) - 1;
  private static final long MOST_DIFFERENCE = (1L << 42) - 1;

  private final Crew crew;
  private final RelayOffers relay;
  private final Handoffs handoffs;
  private final Multipliers prices;
  private final int count;
  private final int[] present;
  private final int[][] followers;
  private final boolean[][] follows;
  private final Promising promising;
  private final boolean inTurns;
  private final long[][] toEnd;
  private final long[][][] toStart;
  private final int[][][] order;

  Relaxation(Crew crew, RelayOffers relay, Multipliers prices, boolean alone) {
    this.crew = crew;
    this.relay = relay;
    this.handoffs = relay.handoffs();
    this.prices = prices;
    this.count = relay.count();
    int actors = relay.actors().size();
    present = relay.actors().stream().filter(crew::has).mapToInt(Actor::index).toArray();
    promising = new Promising(present);
    followers = new int[actors][];
    follows = new boolean[actors][];
    toEnd = new long[actors][];
    toStart = new long[actors][][];
    order = new int[actors][][];
    for (int actor : present) {
      Actor who = relay.actor(actor);
      followers[actor] =
          Arrays.stream(present).filter(next -> crew.follows(who, relay.actor(next))).toArray();
      follows[actor] = new boolean[actors];
      Arrays.stream(followers[actor]).forEach(next -> follows[actor][next] = true);
      toEnd[actor] = new long[count];
      toStart[actor] = new long[count][];
      order[actor] = new int[count][];
      for (int start = 0; start < count; start++) {
        toStart[actor][start] = new long[handoffs.latestEnd(start) - start + 2];
        Arrays.fill(toStart[actor][start], UNKNOWN);
      }
    }
    inTurns = alone && crew.size() == 2;
    relay.noteBound(present.length);
    solve();
  }

  /** E: what follows a stretch that ends with {@code end}. */
  long fromEnd(int actor, int end) {
    return toEnd[actor][end];
  }

  /**
   * S: a stretch that begins with {@code start} after one that ends with {@code before}, and what
   * follows it.
   */
  long fromStart(int actor, int start, int before) {
    return toStart[actor][start][before - start + 1];
  }

  /** The actors that this crew can muster. */
  int[] present() {
    return present;
  }

  /** Those of them that may follow one. */
  int[] followers(int actor) {
    return followers[actor];
  }

  /** Whether one may follow another. */
  boolean follows(int actor, int next) {
    return follows[actor][next];
  }

  /** The bound for the whole line, without what the prices allow. */
  long whole() {
    long least = NEVER_MICRO;
    for (int actor : present) {
      least = Math.min(least, fromStart(actor, 0, -1));
    }
    return least;
  }

  /** What a stretch costs, prices included. */
  long cost(int actor, int first, int last) {
    return cost(actor, relay.reach(actor, first), last);
  }

  private long cost(int actor, StretchesFromStart reach, int last) {
    return points(reach, last) + prices.charge(relay, actor, reach, last);
  }

  private long points(StretchesFromStart reach, int last) {
    return prices.onlyStrength() ? 0 : reach.points(last) * MICROPOINTS;
  }

  /** Adds up, kind by kind, the strength that the cheapest chain takes. */
  void addUse(double[] use) {
    if (whole() >= NEVER_MICRO) {
      return;
    }
    int actor = present[0];
    for (int other : present) {
      actor = fromStart(other, 0, -1) < fromStart(actor, 0, -1) ? other : actor;
    }
    int start = 0;
    int before = -1;
    while (fromStart(actor, start, before) < NEVER_MICRO) {
      int end = bestEnd(actor, start, Math.max(start, before + 1));
      Actor who = relay.actor(actor);
      StretchesFromStart reach = relay.reach(actor, start);
      for (int member = 0; member < who.size(); member++) {
        use[who.kind(member)] += prices.taken(relay, who, member, reach, end);
      }
      if (end == count - 1) {
        return;
      }
      int next = bestStart(actor, end);
      actor = bestNext(actor, next, end);
      start = next;
      before = end;
    }
  }

  private int bestNext(int actor, int start, int end) {
    int best = followers[actor][0];
    for (int next : followers[actor]) {
      best = next(actor, next, start, end) < next(actor, best, start, end) ? next : best;
    }
    return best;
  }

  private int bestEnd(int actor, int start, int from) {
    for (int end : order(actor, start)) {
      if (end >= from) {
        return end;
      }
    }
    throw new IllegalStateException("a chain that was found breaks off at " + start);
  }

  private int bestStart(int actor, int end) {
    int best = end + 1;
    long least = handoffs.overSilence(end) ? leastNext(actor, end + 1, end) : NEVER_MICRO;
    int latest = Math.min(end, handoffs.latest(end));
    for (int start = handoffs.earliest(end); start <= latest; start++) {
      if (handoffs.allows(start, end)) {
        long value = leastNext(actor, start, end);
        best = value < least ? start : best;
        least = Math.min(least, value);
      }
    }
    return best;
  }

  /** The ends of stretches that begin with a stroke, those first that promise the least cost. */
  int[] order(int actor, int first) {
    int[] known = order[actor][first];
    if (known == null) {
      known = sortedEnds(actor, first);
      order[actor][first] = known;
    }
    return known;
  }

  private int[] sortedEnds(int actor, int first) {
    StretchesFromStart reach = relay.reach(actor, first);
    long[] keys = new long[reach.count()];
    long[] values = new long[keys.length];
    long least = NEVER_MICRO;
    for (int k = 0; k < keys.length; k++) {
      values[k] =
          reach.goes(first + k)
              ? cost(actor, first, first + k) + toEnd[actor][first + k]
              : NEVER_MICRO;
      least = Math.min(least, values[k]);
    }
    int found = 0;
    for (int k = 0; k < keys.length; k++) {
      if (values[k] < NEVER_MICRO) {
        long beyond = Math.min(MOST_DIFFERENCE, values[k] - least);
        keys[found++] = (beyond << END_BITS) | (END_MASK - (first + k));
      }
    }
    Arrays.sort(keys, 0, found);
    int[] ends = new int[found];
    for (int k = 0; k < found; k++) {
      ends[k] = (int) (END_MASK - (keys[k] & END_MASK));
    }
    return ends;
  }

  private void solve() {
    for (int end = count - 1; end >= 0; end--) {
      for (int start = handoffs.earliest(end);
          start <= Math.min(end, handoffs.latest(end));
          start++) {
        fillStart(start, end);
      }
      if (end + 1 < count) {
        fillStart(end + 1, end);
      }
      fillEnd(end);
    }
    fillStart(0, -1);
  }

  private void fillEnd(int end) {
    for (int actor : present) {
      toEnd[actor][end] = end == count - 1 ? 0 : NEVER_MICRO;
    }
    int latest = Math.min(end, handoffs.latest(end));
    for (int start = handoffs.earliest(end); end < count - 1 && start <= latest; start++) {
      if (handoffs.allows(start, end)) {
        handOver(start, end);
      }
    }
    if (handoffs.overSilence(end)) {
      handOver(end + 1, end);
    }
  }

  /**
   * All who leave with {@code end} while the next one enters with {@code start}. Handoffs cost
   * nothing or more, so it is enough to look at those who promise less than the best one known.
   */
  private void handOver(int start, int end) {
    promising.sort(next -> toStart[next][start][end - start + 1]);
    for (int actor : present) {
      long least = toEnd[actor][end];
      for (int i = 0; i < promising.count() && promising.cost(i) < least; i++) {
        int next = promising.actor(i);
        if (follows[actor][next]) {
          least = Math.min(least, next(actor, next, start, end));
        }
      }
      toEnd[actor][end] = least;
    }
  }

  private void fillStart(int start, int before) {
    for (int actor : present) {
      long[] known = toStart[actor][start];
      int index = before - start + 1;
      int from = Math.max(start, before + 1);
      boolean knowsNext =
          !inTurns && index > 0 && index + 1 < known.length && known[index + 1] >= 0;
      known[index] =
          knowsNext
              ? Math.min(known[index + 1], withEnd(actor, start, before + 1))
              : leastEnd(actor, start, from, before);
    }
  }

  private long leastEnd(int actor, int start, int from, int before) {
    StretchesFromStart reach = relay.reach(actor, start);
    int soonest = inTurns && before >= 0 ? readyAgain(actor, before) : 0;
    long least = NEVER_MICRO;
    for (int end = from; end <= reach.last(); end++) {
      if (reach.goes(end)) {
        long after =
            end < count - 1 && handoffs.earliest(end) < soonest
                ? leastHandoff(actor, end, soonest)
                : toEnd[actor][end];
        least = Math.min(least, cost(actor, reach, end) + after);
      }
    }
    return least;
  }

  /** The first stroke with which whoever ended with a stroke can enter again. */
  private int readyAgain(int actor, int before) {
    long soonest = Long.MAX_VALUE;
    for (int other : followers[actor]) {
      PlayerKind kind = crew.kinds().get(relay.actor(other).kind(0));
      soonest = Math.min(soonest, relay.line().endMicros(before) + kind.readyMicros());
    }
    int low = before;
    while (low < count && relay.line().onsetMicros(low) < soonest) {
      low++;
    }
    return low;
  }

  private long withEnd(int actor, int start, int end) {
    StretchesFromStart reach = relay.reach(actor, start);
    return end > reach.last() || !reach.goes(end)
        ? NEVER_MICRO
        : cost(actor, start, end) + toEnd[actor][end];
  }

  private long leastHandoff(int actor, int end, int soonest) {
    long least = NEVER_MICRO;
    int latest = Math.min(end, handoffs.latest(end));
    for (int start = Math.max(soonest, handoffs.earliest(end)); start <= latest; start++) {
      if (handoffs.allows(start, end)) {
        least = Math.min(least, leastNext(actor, start, end));
      }
    }
    return handoffs.overSilence(end) && end + 1 >= soonest
        ? Math.min(least, leastNext(actor, end + 1, end))
        : least;
  }

  private long leastNext(int actor, int start, int end) {
    long least = NEVER_MICRO;
    for (int next : followers[actor]) {
      least = Math.min(least, next(actor, next, start, end));
    }
    return least;
  }

  private long next(int actor, int next, int start, int end) {
    long handoff = prices.onlyStrength() ? 0 : handoffs.cost(actor, next, start, end) * MICROPOINTS;
    return handoff + toStart[next][start][end - start + 1];
  }
}
