package stafette.split;

import java.util.Arrays;

/** Who is in which slot of a crew, and how they are. Players of a kind stand side by side. */
final class PlayerStates {
  private static final long FREE = 0;

  private final PlayerState[] states;
  private final int[] players;
  private final long[] roles;
  private final boolean[] used;

  private PlayerStates(PlayerState[] states, int[] players, long[] roles, boolean[] used) {
    this.used = used;
    this.states = states;
    this.players = players;
    this.roles = roles;
  }

  /**
   * A rested crowd without roles.
   *
   * @param players by slot, as indices in the brief
   */
  static PlayerStates rested(int[] players) {
    PlayerState[] states = new PlayerState[players.length];
    Arrays.fill(states, PlayerState.RESTED);
    return new PlayerStates(
        states, players.clone(), new long[players.length], new boolean[players.length]);
  }

  PlayerStates copy() {
    return new PlayerStates(states.clone(), players.clone(), roles.clone(), used.clone());
  }

  PlayerState state(int slot) {
    return states[slot];
  }

  void set(int slot, PlayerState state) {
    states[slot] = state;
  }

  /** Who is in a slot, as an index in the brief. */
  int player(int slot) {
    return players[slot];
  }

  /** Whether a slot's player was the last to begin in no relay. */
  boolean isFree(int slot) {
    return roles[slot] == FREE;
  }

  /** Whether a slot's player was the last, or one of the last pair, to begin in a relay. */
  boolean isLastIn(int relay, int slot) {
    return (roles[slot] & (role(relay, 0) | role(relay, 1))) != 0;
  }

  /** Whether a slot's player has that place among those who were the last to begin in a relay. */
  boolean is(int relay, int member, int slot) {
    return (roles[slot] & role(relay, member)) != 0;
  }

  /** The slot of who was the last to begin in a relay. */
  int slot(int relay, int member) {
    int slot = 0;
    while (!is(relay, member, slot)) {
      slot++;
    }
    return slot;
  }

  /** From now on others are the last to have begun in a relay, by member. */
  void begin(int relay, int[] slots) {
    for (int slot = 0; slot < roles.length; slot++) {
      roles[slot] &= ~(role(relay, 0) | role(relay, 1));
    }
    for (int member = 0; member < slots.length; member++) {
      roles[slots[member]] |= role(relay, member);
      used[slots[member]] = true;
    }
  }

  /** Whether a slot's player has begun in some relay. */
  boolean isUsed(int slot) {
    return used[slot];
  }

  /**
   * Whether it is as good to let one slot's player enter as another's: both are free and in the
   * same state, and the one has not played already while the other waits for a first turn.
   */
  boolean standsFor(int slot, int other) {
    return isFree(slot) && states[slot].equals(states[other]) && (!used[slot] || used[other]);
  }

  private static long role(int relay, int member) {
    return 1L << (2 * relay + member);
  }

  boolean hasRolesOf(PlayerStates other) {
    return Arrays.equals(roles, other.roles);
  }

  /**
   * Puts players of a kind in an order, those with roles by these and the others as they are free,
   * so that labels that differ only in names look the same.
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
    PlayerState state = states[one];
    states[one] = states[other];
    states[other] = state;
    int player = players[one];
    players[one] = players[other];
    players[other] = player;
    long role = roles[one];
    roles[one] = roles[other];
    roles[other] = role;
    boolean had = used[one];
    used[one] = used[other];
    used[other] = had;
  }

  private boolean later(int one, int other) {
    if (roles[one] != FREE || roles[other] != FREE) {
      return roles[one] == FREE || (roles[other] != FREE && roles[one] > roles[other]);
    }
    if (states[one].untouched() && states[other].untouched()) {
      return used[one] && !used[other];
    }
    if (states[one].untouched() || states[other].untouched()) {
      return states[other].untouched();
    }
    return states[one].soundMicros() > states[other].soundMicros();
  }
}
