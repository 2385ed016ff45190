package stafette.split;

import java.util.Optional;

/**
 * A partial plan: some segments are done, and the next one has begun. The states of the others are
 * those at the next moment at which anybody can enter.
 */
final class Label {
  private final Optional<Label> parent;
  private final int kind;
  private final int skill;
  private final int slot;
  private final int first;
  private final int before;
  private final int paid;
  private final long tiredness;
  private final long air;
  private final State[] states;
  private final int[] players;
  private int[] ends = new int[0];
  private int nextEnd;

  /**
   * A segment begun.
   *
   * @param kind the kind of who plays, {@code skill} how, {@code slot} which of the crew
   * @param first its first stroke
   * @param before the last stroke of the segment before it; -1 if there is none
   * @param paid what all segments and handoffs before it cost
   * @param tiredness of who plays, after the first stroke
   * @param air spent by who plays, before the first stroke
   * @param states by slot
   * @param players by slot: indices in the brief
   */
  Label(
      Optional<Label> parent,
      int kind,
      int skill,
      int slot,
      int first,
      int before,
      int paid,
      long tiredness,
      long air,
      State[] states,
      int[] players) {
    this.parent = parent;
    this.kind = kind;
    this.skill = skill;
    this.slot = slot;
    this.first = first;
    this.before = before;
    this.paid = paid;
    this.tiredness = tiredness;
    this.air = air;
    this.states = states;
    this.players = players;
  }

  Optional<Label> parent() {
    return parent;
  }

  int kind() {
    return kind;
  }

  int skill() {
    return skill;
  }

  int slot() {
    return slot;
  }

  int first() {
    return first;
  }

  int before() {
    return before;
  }

  int paid() {
    return paid;
  }

  long tiredness() {
    return tiredness;
  }

  long air() {
    return air;
  }

  State state(int atSlot) {
    return states[atSlot];
  }

  State[] states() {
    return states.clone();
  }

  int[] players() {
    return players.clone();
  }

  int player() {
    return players[slot];
  }

  /** The first stroke with which the segment after this one may begin. */
  int earliestNext() {
    return Math.max(first, before) + 1;
  }

  /**
   * Its ends still to be tried, the most promising first; empty until {@link #tryEnds} was called,
   * and when all are tried.
   */
  boolean hasEnd() {
    return nextEnd < ends.length;
  }

  int end() {
    return ends[nextEnd];
  }

  void nextEnd() {
    nextEnd++;
  }

  void tryEnds(int[] sorted) {
    ends = sorted;
    nextEnd = 0;
  }

  /** What tells apart labels of which one can't stand for the other. */
  long place(int count) {
    return (((long) kind * 64 + skill) * (count + 1L) + first) * (count + 2L) + before + 1;
  }
}
