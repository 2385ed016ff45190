package stafette.split;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.plan.Lock;

/** Whom locks name. */
public final class LockedPlayers {
  private LockedPlayers() {}

  public static Set<Integer> players(List<Lock> locks) {
    return locks.stream()
        .flatMapToInt(lock -> Lock.player(lock).stream())
        .boxed()
        .collect(Collectors.toSet());
  }

  /** The kinds of players who must play by a lock, in order. */
  static int[] needed(List<Lock> locks, List<PlayerKind> kinds) {
    List<Integer> playing =
        locks.stream()
            .filter(lock -> lock instanceof Lock.Exactly || lock instanceof Lock.In)
            .map(lock -> Lock.player(lock).orElseThrow())
            .toList();
    return IntStream.range(0, kinds.size())
        .filter(kind -> kinds.get(kind).members().stream().anyMatch(playing::contains))
        .toArray();
  }
}
