package stafette.split;

/** Who is in which slot of a crew, and how they are. Players of a kind stand side by side. */
final class Crowd {
  /** Nobody's role: free to enter. */
  static final int FREE = -1;

  private final State[] states;
  private final int[] players;
  private final int[] roles;

  /**
   * @param states by slot, those of players of an open stretch aside
   * @param players by slot, as indices in the brief
   * @param roles by slot: twice the relay, one more for a pair's second, {@link #FREE} for who
   *     rests
   */
  Crowd(State[] states, int[] players, int[] roles) {
    this.states = states;
    this.players = players;
    this.roles = roles;
  }

  State[] states() {
    return states;
  }

  int[] players() {
    return players;
  }

  int[] roles() {
    return roles;
  }

  Crowd copy() {
    return new Crowd(states.clone(), players.clone(), roles.clone());
  }

  /** The slot of who plays a role. */
  int slot(int role) {
    int slot = 0;
    while (roles[slot] != role) {
      slot++;
    }
    return slot;
  }

  /**
   * Puts players of a kind in an order, those who play by their roles and the others as they are
   * free, so that labels that differ only in names look the same.
   *
   * @param kinds by slot
   */
  void sortAlike(int[] kinds) {
    for (int i = 1; i < kinds.length; i++) {
      for (int j = i; j > 0 && kinds[j - 1] == kinds[j] && later(j - 1, j); j--) {
        swap(j - 1, j);
      }
    }
  }

  private void swap(int one, int other) {
    State state = states[one];
    states[one] = states[other];
    states[other] = state;
    swap(players, one, other);
    swap(roles, one, other);
  }

  private static void swap(int[] numbers, int one, int other) {
    int number = numbers[one];
    numbers[one] = numbers[other];
    numbers[other] = number;
  }

  private boolean later(int one, int other) {
    if (roles[one] != FREE || roles[other] != FREE) {
      return roles[one] == FREE || (roles[other] != FREE && roles[one] > roles[other]);
    }
    if (states[one].untouched() || states[other].untouched()) {
      return !states[one].untouched() && states[other].untouched();
    }
    return states[one].soundMicros() > states[other].soundMicros();
  }
}
