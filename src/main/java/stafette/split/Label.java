package stafette.split;

import java.util.Optional;

/**
 * A partial plan: in one relay a stretch has begun whose end is open, in the others that have begun
 * the last stretch has its end. States are those at the next moment at which anybody can enter.
 *
 * <p>Slots are the crew's players, those of a kind side by side.
 */
final class Label {
  /**
   * The stretch with which a relay stands, its end known.
   *
   * @param actor who
   * @param last its last stroke
   * @param earliestNext the first stroke with which the next one may begin
   */
  record Standing(int actor, int last, int earliestNext) {
    /** A relay that has not begun. */
    static final Standing NONE = new Standing(-1, -1, 0);

    boolean hasBegun() {
      return actor >= 0;
    }
  }

  private final Optional<Label> parent;
  private final int relay;
  private final int actor;
  private final int first;
  private final int before;
  private final Standing[] standing;
  private final PlayerStates crowd;
  private final int paid;
  private final int overlapEnd;
  private final long kept;
  private final long[] tiredness;
  private final long[] air;
  private final long beside;
  private int[] ends = new int[0];
  private int nextEnd;

  /**
   * A stretch begun.
   *
   * @param before the last stroke of the relay's stretch before it; -1 if there is none
   * @param standing by relay; what it says of this one does not matter
   * @param paid what all stretches whose end is known and all handoffs cost
   * @param overlapEnd the last stroke of the last overlap, of any relay
   * @param kept the bits of locks that have been kept
   * @param tiredness of each member after its first stroke
   * @param air spent by each before it
   * @param beside what other relays still cost at least, less what prices allow, in millionths
   */
  Label(
      Optional<Label> parent,
      int relay,
      int actor,
      int first,
      int before,
      Standing[] standing,
      PlayerStates crowd,
      int paid,
      int overlapEnd,
      long kept,
      long[] tiredness,
      long[] air,
      long beside) {
    this.parent = parent;
    this.relay = relay;
    this.actor = actor;
    this.first = first;
    this.before = before;
    this.standing = standing;
    this.crowd = crowd;
    this.paid = paid;
    this.overlapEnd = overlapEnd;
    this.kept = kept;
    this.tiredness = tiredness;
    this.air = air;
    this.beside = beside;
  }

  Optional<Label> parent() {
    return parent;
  }

  int relay() {
    return relay;
  }

  int actor() {
    return actor;
  }

  int first() {
    return first;
  }

  int before() {
    return before;
  }

  Standing[] standing() {
    return standing;
  }

  PlayerStates crowd() {
    return crowd;
  }

  int paid() {
    return paid;
  }

  int overlapEnd() {
    return overlapEnd;
  }

  long kept() {
    return kept;
  }

  long tiredness(int member) {
    return tiredness[member];
  }

  long air(int member) {
    return air[member];
  }

  long beside() {
    return beside;
  }

  int members() {
    return tiredness.length;
  }

  /** The player in the brief who is the member. */
  int player(int member) {
    return crowd.player(crowd.slot(relay, member));
  }

  /** The first stroke with which the relay's next stretch may begin. */
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

  /** Goes on to the next end. */
  void nextEnd() {
    nextEnd++;
  }

  void tryEnds(int[] sorted) {
    ends = sorted;
    nextEnd = 0;
  }
}
