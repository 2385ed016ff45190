package stafette.split;

import java.util.Optional;

/** Where all relays that have begun have ends, and somebody is to enter. */
final class OpenEntry {
  private final Optional<Label> parent;
  private final Label.Standing[] standing;
  private final PlayerStates crowd;
  private final int paid;
  private final int overlapEnd;
  private final long kept;

  /**
   * @param parent the label whose stretch has just been given its end; none before the first
   * @param paid what all stretches and handoffs so far cost
   * @param overlapEnd the last stroke of the last overlap, of any relay
   * @param kept the bits of locks that have been kept
   */
  OpenEntry(
      Optional<Label> parent,
      Label.Standing[] standing,
      PlayerStates crowd,
      int paid,
      int overlapEnd,
      long kept) {
    this.parent = parent;
    this.standing = standing;
    this.crowd = crowd;
    this.paid = paid;
    this.overlapEnd = overlapEnd;
    this.kept = kept;
  }

  Optional<Label> parent() {
    return parent;
  }

  /** How each relay stands. */
  Label.Standing[] standing() {
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
}
