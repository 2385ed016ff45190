package stafette.split;

import java.util.List;
import java.util.Map;
import stafette.plan.Lock;

/**
 * What the locks of one relay leave open. Firsts and lasts of a relay's segments rise strictly, so
 * a handoff or a segment that must be there splits all others into those before and those after it:
 * a filter on each stretch and each handoff is enough to force it. Only that somebody covers a
 * stretch ({@link Lock.In}) needs a bit in the label, for overlaps may be longer than the stretch.
 */
final class Keeping {
  private final int relay;
  private final int count;
  private final List<Lock> locks;
  private final Map<Integer, Integer> kindOf;
  private final boolean free;

  /**
   * @param count how many strokes the relay's line has
   * @param locks all locks of the brief
   * @param kindOf the kind of each player that a lock names; nobody else is of that kind
   */
  Keeping(int relay, int count, List<Lock> locks, Map<Integer, Integer> kindOf) {
    this.relay = relay;
    this.count = count;
    this.locks = locks;
    this.kindOf = kindOf;
    free = locks.stream().noneMatch(lock -> lock.relay() == relay);
  }

  /** Whether nothing is locked. */
  boolean isFree() {
    return free;
  }

  /** Whether the next stretch may begin with {@code start} where one ends with {@code end}. */
  boolean allows(int start, int end) {
    if (free) {
      return true;
    }
    for (Lock lock : locks) {
      if (lock.relay() == relay && !allows(lock, start, end)) {
        return false;
      }
    }
    return true;
  }

  private static boolean allows(Lock lock, int start, int end) {
    if (lock instanceof Lock.At) {
      return Integer.compare(start, lock.first()) == Integer.compare(end, lock.last());
    }
    return lock instanceof Lock.Out || start <= lock.first() || end >= lock.last();
  }

  /** Whether an actor may take such a stretch. */
  boolean allows(Actor actor, int first, int last) {
    if (free) {
      return true;
    }
    for (Lock lock : locks) {
      if (lock.relay() == relay && !allows(lock, actor, first, last)) {
        return false;
      }
    }
    return true;
  }

  private boolean allows(Lock lock, Actor actor, int first, int last) {
    if (lock instanceof Lock.At) {
      return hasBothSides(lock) && (first >= lock.first() || last <= lock.last());
    }
    if (lock instanceof Lock.Exactly exactly) {
      int side = Integer.compare(first, lock.first());
      return side == Integer.compare(last, lock.last()) && (side != 0 || is(exactly, actor));
    }
    return !(lock instanceof Lock.Out out)
        || actor.needs(kind(out.player())) == 0
        || first > lock.last()
        || last < lock.first();
  }

  /** Nobody leaves before the line's first stroke, and nobody enters after its last. */
  private boolean hasBothSides(Lock handoff) {
    return handoff.first() > 0 && handoff.last() < count - 1;
  }

  private boolean is(Lock.Exactly lock, Actor actor) {
    return actor.size() == 1
        && actor.kind(0) == kind(lock.player())
        && (lock.skill().isEmpty() || lock.skill().getAsInt() == actor.skill(0));
  }

  /** The bits of those locks that such a stretch covers as they ask. */
  long covers(Actor actor, int first, int last) {
    long bits = 0;
    for (int i = 0; !free && i < locks.size(); i++) {
      if (locks.get(i) instanceof Lock.In in
          && in.relay() == relay
          && actor.needs(kind(in.player())) > 0
          && first <= in.first()
          && last >= in.last()) {
        bits |= 1L << i;
      }
    }
    return bits;
  }

  /** The bits of those locks that must be covered when the next stretch begins with a stroke. */
  long mustCover(int start) {
    long bits = 0;
    for (int i = 0; !free && i < locks.size(); i++) {
      if (locks.get(i) instanceof Lock.In in && in.relay() == relay && start > in.first()) {
        bits |= 1L << i;
      }
    }
    return bits;
  }

  private int kind(int player) {
    return kindOf.getOrDefault(player, -1);
  }
}
