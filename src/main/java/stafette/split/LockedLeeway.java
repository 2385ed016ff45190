package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stafette.plan.Lock;

/**
 * What the locks of one relay leave open. Firsts and lasts of a relay's segments rise strictly, so
 * a handoff or a segment that must be there splits all others into those before and those after it:
 * a filter on each stretch and each handoff is enough to force it. Only that somebody covers a
 * stretch ({@link Lock.In}) needs a bit in the label, for overlaps may be longer than the stretch.
 */
final class LockedLeeway {
  private final int count;
  private final Map<Integer, Integer> kindOf;
  private final List<Lock.At> handoffs = new ArrayList<>();
  private final List<Lock.Exactly> segments = new ArrayList<>();
  private final List<Cover> covers = new ArrayList<>();
  private final List<Lock.Out> outs = new ArrayList<>();
  private final boolean free;

  /**
   * A stretch that somebody is to cover.
   *
   * @param bit of the label, by the place of the lock among all of them
   */
  private record Cover(Lock.In lock, long bit) {}

  /**
   * @param count how many strokes the relay's line has
   * @param locks all locks of the brief
   * @param kindOf the kind of each player that a lock names; nobody else is of that kind
   */
  LockedLeeway(int relay, int count, List<Lock> locks, Map<Integer, Integer> kindOf) {
    this.count = count;
    this.kindOf = kindOf;
    for (int i = 0; i < locks.size(); i++) {
      long bit = 1L << i;
      if (locks.get(i).relay() == relay) {
        locks
            .get(i)
            .match(handoffs::add, segments::add, in -> covers.add(new Cover(in, bit)), outs::add);
      }
    }
    free = locks.stream().noneMatch(lock -> lock.relay() == relay);
  }

  /** Whether nothing is locked. */
  boolean isFree() {
    return free;
  }

  /** Whether the next stretch may begin with {@code start} where one ends with {@code end}. */
  boolean allows(int start, int end) {
    for (Lock.At lock : handoffs) {
      if (Integer.compare(start, lock.first()) != Integer.compare(end, lock.last())) {
        return false;
      }
    }
    for (Lock.Exactly lock : segments) {
      if (start > lock.first() && end < lock.last()) {
        return false;
      }
    }
    for (Cover cover : covers) {
      if (start > cover.lock().first() && end < cover.lock().last()) {
        return false;
      }
    }
    return true;
  }

  /** Whether an actor may take such a stretch. */
  boolean allows(Actor actor, int first, int last) {
    for (Lock.At lock : handoffs) {
      if (!allows(lock, first, last)) {
        return false;
      }
    }
    for (Lock.Exactly lock : segments) {
      if (!allows(lock, actor, first, last)) {
        return false;
      }
    }
    for (Lock.Out lock : outs) {
      if (!allows(lock, actor, first, last)) {
        return false;
      }
    }
    return true;
  }

  private boolean allows(Lock.At lock, int first, int last) {
    return hasBothSides(lock) && (first >= lock.first() || last <= lock.last());
  }

  private boolean allows(Lock.Exactly lock, Actor actor, int first, int last) {
    int side = Integer.compare(first, lock.first());
    return side == Integer.compare(last, lock.last()) && (side != 0 || is(lock, actor));
  }

  private boolean allows(Lock.Out lock, Actor actor, int first, int last) {
    return actor.needs(kind(lock.player())) == 0 || first > lock.last() || last < lock.first();
  }

  /** Nobody leaves before the line's first stroke, and nobody enters after its last. */
  private boolean hasBothSides(Lock.At handoff) {
    return handoff.first() > 0 && handoff.last() < count - 1;
  }

  private boolean is(Lock.Exactly lock, Actor actor) {
    return actor.size() == 1
        && actor.kind(0) == kind(lock.player())
        && (lock.way().isEmpty() || lock.way().getAsInt() == actor.way(0));
  }

  /** The bits of those locks that such a stretch covers as they ask. */
  long covers(Actor actor, int first, int last) {
    long bits = 0;
    for (Cover cover : covers) {
      Lock.In lock = cover.lock();
      if (actor.needs(kind(lock.player())) > 0 && first <= lock.first() && last >= lock.last()) {
        bits |= cover.bit();
      }
    }
    return bits;
  }

  /** The bits of those locks that must be covered when the next stretch begins with a stroke. */
  long mustCover(int start) {
    long bits = 0;
    for (Cover cover : covers) {
      if (start > cover.lock().first()) {
        bits |= cover.bit();
      }
    }
    return bits;
  }

  private int kind(int player) {
    return kindOf.getOrDefault(player, -1);
  }
}
