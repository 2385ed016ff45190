package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Some of the players: of each kind so many, the first listed ones.
 *
 * @param kinds all kinds
 * @param counts how many of each
 */
record Crew(List<PlayerKind> kinds, List<Integer> counts) {
  Crew {
    kinds = List.copyOf(kinds);
    counts = List.copyOf(counts);
  }

  /**
   * Every crew of at least one player, smaller ones first, then those with players listed earlier.
   */
  static List<Crew> all(List<PlayerKind> kinds) {
    List<List<Integer>> counts = new ArrayList<>();
    counts.add(List.of());
    for (PlayerKind kind : kinds) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> prefix : counts) {
        for (int n = kind.members().size(); n >= 0; n--) {
          List<Integer> next = new ArrayList<>(prefix);
          next.add(n);
          longer.add(next);
        }
      }
      counts = longer;
    }
    return counts.stream()
        .map(c -> new Crew(kinds, c))
        .filter(crew -> crew.size() > 0)
        .sorted(Comparator.comparingInt(Crew::size))
        .toList();
  }

  int size() {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }

  /** The kinds of which there is somebody. */
  IntStream kindsPresent() {
    return IntStream.range(0, counts.size()).filter(kind -> counts.get(kind) > 0);
  }

  /** The kind of each slot; players of a kind stand side by side. */
  int[] slots() {
    int[] slots = new int[size()];
    int next = 0;
    for (int kind = 0; kind < counts.size(); kind++) {
      for (int n = 0; n < counts.get(kind); n++) {
        slots[next++] = kind;
      }
    }
    return slots;
  }

  /** Whether the crew can muster an actor. */
  boolean has(Actor actor) {
    return actor.members().stream().allMatch(m -> actor.needs(m.kind()) <= counts.get(m.kind()));
  }

  /** Whether one actor may be followed by another in which nobody plays who played in the first. */
  boolean follows(Actor actor, Actor next) {
    return next.members().stream()
        .allMatch(m -> actor.needs(m.kind()) + next.needs(m.kind()) <= counts.get(m.kind()));
  }
}
