package stafette.split;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Extends partial plans by one stretch, carrying along what everybody brings: exact, every rule of
 * the model holds. Where there are several relays, stretches are begun in the order of their first
 * strokes, those that begin together in the order of their relays: so whatever players have done
 * before is known when they begin.
 */
final class Extension {
  private static final int[] NOBODY = {};

  private final RelayOffers[] relays;
  private final Relaxation[] relaxations;
  private final Multipliers prices;
  private final IdlePlayers idle;
  private final boolean doubled;
  private final boolean turnsApart;
  private final long mustKeep;
  private final int[] slots;
  private final PlayerKind[] kinds;

  /**
   * @param idle what is paid for players who do not play
   * @param doubled whether overlaps of different relays must not meet
   * @param turnsApart whether players may be kept from entering by turns, not by their notes alone
   * @param mustKeep the bits of locks that a whole plan must have kept
   */
  Extension(
      Crew crew,
      List<RelayOffers> relays,
      Relaxation[] relaxations,
      Multipliers prices,
      IdlePlayers idle,
      boolean doubled,
      boolean turnsApart,
      long mustKeep) {
    this.relays = relays.toArray(new RelayOffers[0]);
    this.relaxations = relaxations;
    this.prices = prices;
    this.idle = idle;
    this.doubled = doubled;
    this.turnsApart = turnsApart;
    this.mustKeep = mustKeep;
    this.slots = crew.slots();
    this.kinds = Arrays.stream(slots).mapToObj(crew.kinds()::get).toArray(PlayerKind[]::new);
  }

  /** Labels for all who can begin the first line. */
  void begin(Consumer<Label> take) {
    int[] players = new int[slots.length];
    int seen = 0;
    for (int slot = 0; slot < slots.length; slot++) {
      seen = slot > 0 && slots[slot] == slots[slot - 1] ? seen + 1 : 0;
      players[slot] = kinds[slot].members().get(seen);
    }
    Label.Standing[] standing = new Label.Standing[relays.length];
    Arrays.fill(standing, Label.Standing.NONE);
    OpenEntry entry =
        new OpenEntry(Optional.empty(), standing, PlayerStates.rested(players), 0, -1, 0);
    goOn(entry, Long.MAX_VALUE, take);
  }

  /** The least that a plan costs which goes on from this label, with its first untried end. */
  int bound(Label label) {
    return label.hasEnd()
        ? points(valueAt(label, label.end()))
        : points(
            label.paid() * Relaxation.MICROPOINTS
                + label.beside()
                + idle.begun(label.crowd(), label.actor(), label.first(), label.before())
                + relaxations[label.relay()].fromStart(
                    label.actor(), label.first(), label.before()));
  }

  /** What segments and handoffs cost once the label's stretch ends with {@code end}. */
  int path(Label label, int end) {
    return label.paid() + relays[label.relay()].reach(label.actor(), label.first()).points(end);
  }

  /** What a whole plan costs whose last stretch to get its end is the label's. */
  int cost(Label label, int end) {
    return path(label, end) + idle.paid(label.crowd());
  }

  /** Whole points, rounded up; {@link Relaxation#NEVER} if there are none. */
  static int points(long micropoints) {
    return micropoints >= Relaxation.NEVER_MICRO / 2
        ? Relaxation.NEVER
        : (int) Math.max(0, -Math.floorDiv(-micropoints, Relaxation.MICROPOINTS));
  }

  /**
   * Rises along the ends that are tried one after the other: so at the line's last stroke too what
   * is paid for idle players is no more than for any other end.
   */
  private long valueAt(Label label, int end) {
    Relaxation relaxation = relaxations[label.relay()];
    return label.paid() * Relaxation.MICROPOINTS
        + label.beside()
        + idle.ended(label.crowd(), label.actor(), label.first(), label.before(), end)
        + relaxation.cost(label.actor(), label.first(), end)
        + relaxation.fromEnd(label.actor(), end);
  }

  /** Finds out how far the label's stretch can go, and orders its ends by what they promise. */
  void findEnds(Label label) {
    RelayOffers relay = relays[label.relay()];
    Actor actor = relay.actor(label.actor());
    StretchesFromStart reach = relay.reach(label.actor(), label.first());
    int[] sorted = relaxations[label.relay()].order(label.actor(), label.first());
    int[] kept = new int[sorted.length];
    int from = Math.max(label.first(), label.before() + 1);
    int to = farthest(label, relay, actor, reach);
    int found = 0;
    for (int end : sorted) {
      if (end >= from && end <= to) {
        kept[found++] = end;
      }
    }
    label.tryEnds(Arrays.copyOf(kept, found));
  }

  private static int farthest(
      Label label, RelayOffers relay, Actor actor, StretchesFromStart reach) {
    int farthest = reach.last();
    for (int member = 0; member < actor.size(); member++) {
      int own = reach.row(member).reach(label.tiredness(member), label.air(member));
      while (farthest >= label.first() && relay.own(actor, member, label.first(), farthest) > own) {
        farthest = actor.size() == 1 ? own : farthest - 1;
      }
    }
    return farthest;
  }

  /**
   * Goes on from a label whose stretch ends with {@code end}.
   *
   * @param enough labels with such a bound, in points, need not be made
   * @return whether the plan is whole with it
   */
  boolean follow(Label label, int end, int enough, Consumer<Label> take) {
    Optional<OpenEntry> ended = ended(label, end);
    if (ended.isEmpty()) {
      return false;
    }
    OpenEntry entry = ended.get();
    if (goOn(entry, enough * Relaxation.MICROPOINTS, take)) {
      return false;
    }
    return (entry.kept() & mustKeep) == mustKeep;
  }

  /** Labels for all stretches that can be the next to begin; false if there is none to begin. */
  private boolean goOn(OpenEntry entry, long enough, Consumer<Label> take) {
    boolean goesOn = false;
    for (int relay = 0; relay < relays.length; relay++) {
      Label.Standing standing = entry.standing()[relay];
      if (!standing.hasBegun()) {
        goesOn = true;
        begin(entry, relay, take);
      } else if (standing.last() < relays[relay].count() - 1) {
        goesOn = true;
        handOver(entry, relay, enough, take);
      }
    }
    return goesOn;
  }

  private void begin(OpenEntry entry, int relay, Consumer<Label> take) {
    if (isNext(entry, relay, 0)) {
      int[] present = relaxations[relay].present();
      for (int i = present.length - 1; i >= 0; i--) {
        enterAll(entry, relay, present[i], 0, -1, entry.paid(), take);
      }
    }
  }

  /**
   * Whether a relay's next stretch may be the next of all to begin, with such a stroke: the one
   * begun last is not later, and the next ones of other relays need not be earlier.
   */
  private boolean isNext(OpenEntry entry, int relay, int start) {
    if (relays.length == 1) {
      return true;
    }
    long onset = relays[relay].onsetFrom(start);
    if (entry.parent().isPresent()) {
      Label before = entry.parent().get();
      long last = relays[before.relay()].onsetFrom(before.first());
      if (onset < last || (onset == last && relay <= before.relay())) {
        return false;
      }
    }
    for (int other = 0; other < relays.length; other++) {
      long latest = other == relay ? Long.MAX_VALUE : latestStart(entry.standing()[other], other);
      if (latest < onset || (latest == onset && other < relay)) {
        return false;
      }
    }
    return true;
  }

  /** The last moment at which a relay's next stretch may begin; never if it needs none. */
  private long latestStart(Label.Standing standing, int relay) {
    int end = standing.last();
    if (!standing.hasBegun()) {
      return relays[relay].onsetFrom(0);
    }
    if (end == relays[relay].count() - 1) {
      return Long.MAX_VALUE;
    }
    Handoffs handoffs = relays[relay].handoffs();
    return handoffs.overSilence(end)
        ? relays[relay].onsetFrom(end + 1)
        : relays[relay].onsetFrom(Math.max(0, Math.min(end, handoffs.latest(end))));
  }

  /** Everybody's state once the label's stretch has its end; empty if a given passage is spoilt. */
  private Optional<OpenEntry> ended(Label label, int end) {
    RelayOffers relay = relays[label.relay()];
    Actor actor = relay.actor(label.actor());
    StretchesFromStart reach = relay.reach(label.actor(), label.first());
    PlayerStates crowd = label.crowd().copy();
    for (int member = 0; member < actor.size(); member++) {
      int slot = crowd.slot(label.relay(), member);
      int own = relay.own(actor, member, label.first(), end);
      PlayerState after =
          kinds[slot].after(
              reach.table(member),
              reach.row(member),
              own,
              label.tiredness(member),
              label.air(member),
              turnsApart ? relay.onsetFrom(end) : PlayerState.NEVER);
      if (kinds[slot].hasGiven() && kinds[slot].spoils(after)) {
        return Optional.empty();
      }
      crowd.set(slot, after);
    }
    if (end == relay.count() - 1) {
      crowd.begin(label.relay(), NOBODY);
    }
    Label.Standing[] standing = label.standing().clone();
    standing[label.relay()] = new Label.Standing(label.actor(), end, label.earliestNext());
    long kept = label.kept() | relay.keeping().covers(actor, label.first(), end);
    return Optional.of(
        new OpenEntry(
            Optional.of(label),
            standing,
            crowd,
            label.paid() + reach.points(end),
            label.overlapEnd(),
            kept));
  }

  private void handOver(OpenEntry entry, int relay, long enough, Consumer<Label> take) {
    Label.Standing leaving = entry.standing()[relay];
    int end = leaving.last();
    Handoffs handoffs = relays[relay].handoffs();
    if (handoffs.overSilence(end) && isNext(entry, relay, end + 1)) {
      handOver(entry, relay, end + 1, enough, take);
    }
    int from = Math.max(handoffs.earliest(end), leaving.earliestNext());
    if (doubled) {
      from = Math.max(from, entry.overlapEnd() + 1);
    }
    for (int start = from; start <= Math.min(end, handoffs.latest(end)); start++) {
      if (handoffs.allows(start, end) && isNext(entry, relay, start)) {
        handOver(entry, relay, start, enough, take);
      }
    }
  }

  private void handOver(OpenEntry entry, int relay, int start, long enough, Consumer<Label> take) {
    long must = relays[relay].keeping().mustCover(start);
    if ((entry.kept() & must) != must) {
      return;
    }
    Label.Standing leaving = entry.standing()[relay];
    int end = leaving.last();
    Handoffs handoffs = relays[relay].handoffs();
    int[] followers = relaxations[relay].followers(leaving.actor());
    for (int i = followers.length - 1; i >= 0; i--) {
      int next = followers[i];
      long rest = relaxations[relay].fromStart(next, start, end);
      if (rest < Relaxation.NEVER_MICRO) {
        int paid = entry.paid() + handoffs.cost(leaving.actor(), next, start, end);
        if (!prices.isFree() || paid * Relaxation.MICROPOINTS + rest < enough) {
          enterAll(entry, relay, next, start, end, paid, take);
        }
      }
    }
  }

  /** Labels for all players who can be this actor. */
  private void enterAll(
      OpenEntry entry,
      int relay,
      int actor,
      int start,
      int before,
      int paid,
      Consumer<Label> take) {
    Actor who = relays[relay].actor(actor);
    for (int slot = slots.length - 1; slot >= 0; slot--) {
      if (mayBe(entry, relay, who, 0, slot)) {
        if (who.size() == 1) {
          enter(entry, relay, who, start, before, paid, new int[] {slot}, take);
        } else {
          for (int second = slots.length - 1; second >= 0; second--) {
            if (second != slot && mayBe(entry, relay, who, 1, second)) {
              enter(entry, relay, who, start, before, paid, new int[] {slot, second}, take);
            }
          }
        }
      }
    }
  }

  /**
   * Whether a slot's player may be a member if there is time: nobody follows themselves. Of players
   * alike in all only the first may.
   */
  private boolean mayBe(OpenEntry entry, int relay, Actor who, int member, int slot) {
    PlayerStates crowd = entry.crowd();
    if (slots[slot] != who.kind(member) || crowd.isLastIn(relay, slot)) {
      return false;
    }
    int twin = slot - 1;
    int skip = who.size() > 1 && who.kind(0) == who.kind(1) ? member : 0;
    while (crowd.isFree(slot) && twin >= 0 && slots[twin] == slots[slot]) {
      if (crowd.standsFor(twin, slot)) {
        if (skip == 0) {
          return false;
        }
        skip--;
      }
      twin--;
    }
    return true;
  }

  /** The label of a stretch begun, if its players are free and have the strength to go on. */
  private void enter(
      OpenEntry entry,
      int relay,
      Actor who,
      int start,
      int before,
      int paid,
      int[] chosen,
      Consumer<Label> take) {
    RelayOffers course = relays[relay];
    StretchesFromStart reach = course.reach(who.index(), start);
    long[] tiredness = new long[who.size()];
    long[] air = new long[who.size()];
    for (int member = 0; member < who.size(); member++) {
      PlayerKind kind = kinds[chosen[member]];
      SegmentTable table = reach.table(member);
      int own = course.ownFirst(who, member, start);
      if (own >= table.line().count()) {
        return;
      }
      long onset = table.line().onsetMicros(own);
      PlayerState brings = kind.at(entry.crowd().state(chosen[member]), onset);
      if (kind.freeFrom(brings) > onset || brings.turnMicros() >= course.onsetFrom(start)) {
        return;
      }
      tiredness[member] = kind.tirednessEntering(brings, table, own);
      air[member] = kind.airEntering(brings, onset);
      if (tiredness[member] > RoundedUnits.MOST
          || !reach.row(member).reaches(own, tiredness[member], air[member])) {
        return;
      }
    }
    if (goesBeyond(before, course, who, reach, tiredness, air)) {
      take.accept(begun(entry, relay, who, start, before, paid, chosen, tiredness, air));
    }
  }

  private static boolean goesBeyond(
      int before,
      RelayOffers course,
      Actor who,
      StretchesFromStart reach,
      long[] tiredness,
      long[] air) {
    if (before + 1 > reach.last()) {
      return false;
    }
    int next = Math.max(before + 1, reach.first());
    for (int member = 0; member < who.size(); member++) {
      int own = course.own(who, member, reach.first(), next);
      if (own >= course.ownFirst(who, member, reach.first())
          && !reach.row(member).reaches(own, tiredness[member], air[member])) {
        return false;
      }
    }
    return true;
  }

  private Label begun(
      OpenEntry entry,
      int relay,
      Actor who,
      int start,
      int before,
      int paid,
      int[] chosen,
      long[] tiredness,
      long[] air) {
    PlayerStates crowd = entry.crowd().copy();
    crowd.begin(relay, chosen);
    long now = nextEntry(entry.standing(), relay, start, Math.max(start, before) + 1);
    for (int slot = 0; slot < slots.length; slot++) {
      boolean open = crowd.isLastIn(relay, slot);
      crowd.set(
          slot,
          open || now == Long.MAX_VALUE
              ? PlayerState.RESTED
              : kinds[slot].simplified(crowd.state(slot), now));
    }
    crowd.sortAlike(slots);
    int overlapEnd = doubled && start <= before ? before : entry.overlapEnd();
    return new Label(
        entry.parent(),
        relay,
        who.index(),
        start,
        before,
        entry.standing(),
        crowd,
        paid,
        overlapEnd,
        entry.kept(),
        tiredness,
        air,
        beside(entry.standing(), relay, who, start, tiredness, crowd, now));
  }

  /** The first moment at which anybody may enter any relay after a stretch begun. */
  private long nextEntry(Label.Standing[] standing, int open, int start, int earliestNext) {
    long next = relays[open].onsetFrom(earliestNext);
    for (int relay = 0; relay < standing.length; relay++) {
      if (relay != open) {
        boolean done =
            standing[relay].hasBegun() && standing[relay].last() == relays[relay].count() - 1;
        next =
            done ? next : Math.min(next, relays[relay].onsetFrom(standing[relay].earliestNext()));
      }
    }
    return Math.max(next, relays[open].onsetFrom(start));
  }

  private long beside(
      Label.Standing[] standing,
      int open,
      Actor who,
      int start,
      long[] tiredness,
      PlayerStates crowd,
      long now) {
    long beside = 0;
    for (int relay = 0; relay < standing.length; relay++) {
      if (relay != open) {
        beside +=
            standing[relay].hasBegun()
                ? relaxations[relay].fromEnd(standing[relay].actor(), standing[relay].last())
                : relaxations[relay].whole();
      }
    }
    if (prices.isFree()) {
      return beside;
    }
    for (int slot = 0; slot < slots.length; slot++) {
      if (crowd.isLastIn(open, slot)) {
        int member = crowd.is(open, 0, slot) ? 0 : 1;
        RelayOffers relay = relays[open];
        long onset =
            relay
                .reach(who.index(), start)
                .table(member)
                .line()
                .onsetMicros(relay.ownFirst(who, member, start));
        beside -= prices.allowanceAt(slots[slot], tiredness[member], onset);
      } else {
        PlayerState state = crowd.state(slot);
        long from =
            now == Long.MAX_VALUE ? prices.endMicros() : Math.max(now, kinds[slot].freeFrom(state));
        beside -= prices.allowance(slots[slot], state, from);
      }
    }
    return beside;
  }

  /** Whether whatever can follow one label can follow the other at no more cost. */
  boolean noWorse(Label one, Label other) {
    if (one.paid() + idle.owed(one.crowd(), other.crowd()) > other.paid()
        || one.overlapEnd() > other.overlapEnd()
        || (one.kept() & other.kept()) != other.kept()) {
      return false;
    }
    for (int member = 0; member < one.members(); member++) {
      if (one.tiredness(member) > other.tiredness(member) || one.air(member) > other.air(member)) {
        return false;
      }
    }
    if (!one.crowd().hasRolesOf(other.crowd())) {
      return false;
    }
    for (int slot = 0; slot < slots.length; slot++) {
      if (!kinds[slot].noWorse(one.crowd().state(slot), other.crowd().state(slot))) {
        return false;
      }
    }
    return true;
  }
}
