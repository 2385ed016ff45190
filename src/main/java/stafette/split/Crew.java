package stafette.split;

import java.util.Arrays;
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
  /** Smaller crews come first, then those with players listed earlier. */
  static final Comparator<Crew> ORDER =
      Comparator.comparingInt(Crew::size).thenComparing(Crew::slots, Arrays::compare);

  Crew {
    kinds = List.copyOf(kinds);
    counts = List.copyOf(counts);
  }

  /** All players. */
  static Crew everybody(List<PlayerKind> kinds) {
    return new Crew(kinds, kinds.stream().map(kind -> kind.members().size()).toList());
  }

  /**
   * A crew.
   *
   * @param members the kind of each
   */
  static Crew of(List<PlayerKind> kinds, int[] members) {
    int[] counts = new int[kinds.size()];
    Arrays.stream(members).forEach(kind -> counts[kind]++);
    return new Crew(kinds, Arrays.stream(counts).boxed().toList());
  }

  /** How many crews can be made from its players; as many as an int can hold, if there are more. */
  int smallerOnes() {
    long crews = 1;
    for (int count : counts) {
      crews = Math.min(Integer.MAX_VALUE, crews * (count + 1));
    }
    return (int) crews;
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
    for (Actor.ActorMember member : actor.members()) {
      if (actor.needs(member.kind()) > counts.get(member.kind())) {
        return false;
      }
    }
    return true;
  }

  /** Whether one actor may be followed by another in which nobody plays who played in the first. */
  boolean follows(Actor actor, Actor next) {
    for (Actor.ActorMember member : next.members()) {
      int kind = member.kind();
      if (actor.needs(kind) + next.needs(kind) > counts.get(kind)) {
        return false;
      }
    }
    return true;
  }
}
