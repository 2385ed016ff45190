package stafette.split;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stafette.plan.Lock;

/** Whom locks name. */
final class Locked {
  private Locked() {}

  static Set<Integer> players(List<Lock> locks) {
    Set<Integer> players = new HashSet<>();
    for (Lock lock : locks) {
      if (lock instanceof Lock.Exactly exactly) {
        players.add(exactly.player());
      } else if (lock instanceof Lock.In in) {
        players.add(in.player());
      } else if (lock instanceof Lock.Out out) {
        players.add(out.player());
      }
    }
    return players;
  }
}
