package stafette.split;

import java.util.function.IntToLongFunction;

/**
 * Actors, those first that promise the least cost. Put in order again and again by promises that
 * change little, and so by insertion.
 */
final class Promising {
  private final int[] actors;
  private final long[] costs;

  Promising(int[] actors) {
    this.actors = actors.clone();
    this.costs = new long[actors.length];
  }

  /** Puts them in the order of what each promises now. */
  void sort(IntToLongFunction promise) {
    for (int i = 0; i < actors.length; i++) {
      int actor = actors[i];
      long cost = promise.applyAsLong(actor);
      int at = i;
      while (at > 0 && costs[at - 1] > cost) {
        costs[at] = costs[at - 1];
        actors[at] = actors[at - 1];
        at--;
      }
      costs[at] = cost;
      actors[at] = actor;
    }
  }

  int actor(int place) {
    return actors[place];
  }

  long cost(int place) {
    return costs[place];
  }

  int count() {
    return actors.length;
  }
}
