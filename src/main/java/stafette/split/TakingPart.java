package stafette.split;

import java.util.Arrays;

/**
 * What a relay costs at least in which somebody of a kind plays, the relaxed problem of {@link
 * Relaxation} being gone through from the line's beginning as well:
 *
 * <pre>
 * B(a, 0, −1) = 0                                                                     a begins the line
 * F(a, e)     = least over starts i and ends e' &lt; e of B(a, i, e') + cost(a, i, e)    a ends with e
 * B(b, i, e)  = least over who leaves, a, of F(a, e) + handoff(a, b, i, e)             b begins with i
 * </pre>
 *
 * <p>Somebody of a kind then plays for no less than the least B + S over its actors. How far a
 * partial plan is from the cheapest at any place, its detour, tells how much of that is still to
 * come.
 */
final class TakingPart {
  private final RelayOffers relay;
  private final Relaxation rest;
  private final int[] present;
  private final int count;
  private final long[][] begun;
  private final long[][][] begunAfter;
  private final long[] toEnd;
  private final Promising leaving;
  private final long[] leastByKind;
  private final long whole;

  private TakingPart(RelayOffers relay, Relaxation rest, int kinds) {
    this.relay = relay;
    this.rest = rest;
    this.present = rest.present();
    this.count = relay.count();
    int actors = relay.actors().size();
    begun = new long[actors][];
    begunAfter = new long[actors][count][];
    toEnd = new long[actors];
    leaving = new Promising(present);
    whole = rest.whole();
    leastByKind = new long[kinds];
    Arrays.fill(leastByKind, Relaxation.NEVER_MICRO);
    for (int actor : present) {
      begun[actor] = new long[count];
      Arrays.fill(begun[actor], Relaxation.NEVER_MICRO);
      for (int start = 0; start < count; start++) {
        begunAfter[actor][start] = new long[relay.handoffs().latestEnd(start) - start + 2];
        Arrays.fill(begunAfter[actor][start], Relaxation.NEVER_MICRO);
      }
    }
  }

  /** All that is to be known of one relay. */
  static TakingPart of(RelayOffers relay, Relaxation rest, int kinds) {
    TakingPart taking = new TakingPart(relay, rest, kinds);
    taking.solve();
    return taking;
  }

  /** What a plan costs more than the cheapest because somebody of a kind plays in it. */
  long beyondCheapest(int kind) {
    return leastByKind[kind] - whole;
  }

  /** What a plan costs more than the cheapest because a stretch begins so. */
  long detour(int actor, int start, int before) {
    return begunAfter[actor][start][before - start + 1]
        + rest.fromStart(actor, start, before)
        - whole;
  }

  /** What a plan costs more than the cheapest because a stretch begins and ends so. */
  long detour(int actor, int start, int before, int end) {
    return begunAfter[actor][start][before - start + 1]
        + rest.cost(actor, start, end)
        + rest.fromEnd(actor, end)
        - whole;
  }

  /** By kind, in millionths of a point; {@link Relaxation#NEVER_MICRO} if none of it can play. */
  static long[] leastByKind(RelayOffers relay, Relaxation rest, int kinds) {
    return of(relay, rest, kinds).leastByKind;
  }

  private void solve() {
    for (int actor : present) {
      begin(actor, 0, -1, 0);
    }
    for (int end = 0; end < count - 1; end++) {
      for (int actor : present) {
        toEnd[actor] = leastEnding(actor, end);
      }
      leaving.sort(actor -> toEnd[actor]);
      handOverAll(end);
    }
  }

  private long leastEnding(int actor, int end) {
    long least = Relaxation.NEVER_MICRO;
    long[] from = begun[actor];
    for (int start = 0; start <= end; start++) {
      if (from[start] < least) {
        StretchesFromStart reach = relay.reach(actor, start);
        if (end <= reach.last() && reach.goes(end)) {
          least = Math.min(least, from[start] + rest.cost(actor, start, end));
        }
      }
    }
    return least;
  }

  private void handOverAll(int end) {
    Handoffs handoffs = relay.handoffs();
    int latest = Math.min(end, handoffs.latest(end));
    for (int start = handoffs.earliest(end); start <= latest; start++) {
      if (handoffs.allows(start, end)) {
        handOver(start, end);
      }
    }
    if (handoffs.overSilence(end)) {
      handOver(end + 1, end);
    }
  }

  private void handOver(int start, int end) {
    for (int actor : present) {
      long least = Relaxation.NEVER_MICRO;
      for (int i = 0; i < leaving.count() && leaving.cost(i) < least; i++) {
        int before = leaving.actor(i);
        if (rest.follows(before, actor)) {
          long handoff = relay.handoffs().cost(before, actor, start, end);
          least = Math.min(least, leaving.cost(i) + handoff * Relaxation.MICROPOINTS);
        }
      }
      begin(actor, start, end, least);
    }
  }

  private void begin(int actor, int start, int before, long cost) {
    begun[actor][start] = Math.min(begun[actor][start], cost);
    begunAfter[actor][start][before - start + 1] = cost;
    long whole = cost + rest.fromStart(actor, start, before);
    for (Actor.ActorMember member : relay.actor(actor).members()) {
      leastByKind[member.kind()] = Math.min(leastByKind[member.kind()], whole);
    }
  }
}
