package stafette.desktop.state;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** Which locks keep a plan's pieces as they are. */
final class Locking {
  private Locking() {}

  static Lock of(Handoff handoff) {
    return new Lock.At(handoff.enters().relay(), handoff.enters().first(), handoff.leaves().last());
  }

  /** Half of a hocket pair is kept where it is, not with whom it is shared. */
  static Lock of(Segment segment) {
    return segment.pattern() == Pattern.ALL
        ? new Lock.Exactly(
            segment.relay(),
            segment.player(),
            OptionalInt.of(segment.way()),
            segment.first(),
            segment.last())
        : new Lock.In(segment.relay(), segment.player(), segment.first(), segment.last());
  }

  /** The locks that keep all that a player plays. */
  static List<Lock> of(Plan plan, String player) {
    return plan.segments().stream()
        .filter(segment -> plan.player(segment).name().equals(player))
        .map(Locking::of)
        .toList();
  }

  /** With a segment kept, or without the locks that keep it. */
  static List<Lock> toggled(List<Lock> locks, Segment segment) {
    return toggled(locks, lock -> Lock.keeps(lock, segment), of(segment));
  }

  /** With a handoff kept, or without the lock that keeps it. */
  static List<Lock> toggled(List<Lock> locks, Handoff handoff) {
    return toggled(locks, lock -> Lock.keeps(lock, handoff), of(handoff));
  }

  private static List<Lock> toggled(List<Lock> locks, Predicate<Lock> keeps, Lock lock) {
    return locks.stream().anyMatch(keeps)
        ? locks.stream().filter(keeps.negate()).toList()
        : with(locks, List.of(lock));
  }

  static List<Lock> with(List<Lock> locks, List<Lock> some) {
    List<Lock> more = new ArrayList<>(without(locks, some));
    more.addAll(some);
    return more;
  }

  static List<Lock> without(List<Lock> locks, List<Lock> some) {
    return locks.stream().filter(lock -> !some.contains(lock)).toList();
  }
}
