package stafette.split;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Function;

/**
 * The crews that are searched side by side, the one with the lowest bound first; of equal ones the
 * smaller, then that with players listed earlier. What is in it must not change its bound there.
 */
final class CrewQueue {
  private final Crews toCome;
  private final Function<Crews.Made, CrewProblem> candidates;
  private final PriorityQueue<CrewProblem> begun =
      new PriorityQueue<>(
          Comparator.comparingInt(CrewProblem::bound).thenComparing(CrewProblem::crew, Crew.ORDER));

  /**
   * @param toCome crews that are made when their turn comes
   * @param candidates begins with one
   */
  CrewQueue(Crews toCome, Function<Crews.Made, CrewProblem> candidates) {
    this.toCome = toCome;
    this.candidates = candidates;
  }

  /** No plan costs less; {@link Relaxation#NEVER} if there is nobody left to search. */
  int bound() {
    int begunBound = begun.isEmpty() ? Relaxation.NEVER : begun.element().bound();
    return Math.min(toCome.bound(), begunBound);
  }

  /** Takes out whoever comes next; there must be somebody. */
  CrewProblem next() {
    while (begun.isEmpty() || toCome.comeBefore(begun.element())) {
      begun.add(candidates.apply(toCome.next()));
    }
    return begun.remove();
  }

  void add(CrewProblem candidate) {
    begun.add(candidate);
  }

  /** Takes somebody out; false if nobody was there. */
  boolean remove(CrewProblem candidate) {
    return begun.remove(candidate);
  }

  /** Lets go of somebody who can't have a plan that costs less. */
  void letGo(CrewProblem candidate, int cost) {
    if (candidate.bound() >= cost && begun.remove(candidate)) {
      candidate.close();
    }
  }

  /** Lets go of all who can't. */
  void letGo(int cost) {
    List.copyOf(begun).forEach(candidate -> letGo(candidate, cost));
  }
}
