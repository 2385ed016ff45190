package stafette.split;

import java.util.ArrayList;
import java.util.List;

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
        .sorted(java.util.Comparator.comparingInt(Crew::size))
        .toList();
  }

  int size() {
    return counts.stream().mapToInt(Integer::intValue).sum();
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

  /** Whether a player of one kind may be followed by one of the other. */
  boolean follows(int kind, int next) {
    return counts.get(next) > (kind == next ? 1 : 0);
  }
}
