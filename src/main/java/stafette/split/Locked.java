package stafette.split;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stafette.plan.Lock;

/** Whom locks name. */
final class Locked {
  private Locked() {}

  static Set<Integer> players(List<Lock> locks) {
    return locks.stream()
        .flatMapToInt(lock -> Lock.player(lock).stream())
        .boxed()
        .collect(Collectors.toSet());
  }
}
