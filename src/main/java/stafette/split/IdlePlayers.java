package stafette.split;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a partial plan still costs because somebody in the crew has not played yet: in the end they
 * have a turn, which may be dearer than the cheapest way to go on, or are paid for.
 *
 * <p>Of each kind alone: either all who wait go on waiting, or one of the kind plays in the rest.
 * The dearest kind gives the bound. Values are in millionths of a point.
 */
final class IdlePlayers {
  private static final int ASKED_BEFORE = 1000;

  private final int[] slots;
  private final int[] points;
  private final Optional<Supplier<TakingPart>> told;
  private Optional<TakingPart> taking = Optional.empty();
  private int asked;
  private final boolean none;
  private final int[] waiting;

  /**
   * @param slots the kind of each slot
   * @param points what each slot's player costs in the end who has not played
   * @param told tells what it costs to let a kind play, where that can be known
   */
  IdlePlayers(int[] slots, int[] points, Optional<Supplier<TakingPart>> told) {
    this.slots = slots;
    this.points = points;
    this.told = told;
    this.none = Arrays.stream(points).allMatch(each -> each == 0);
    this.waiting = new int[Arrays.stream(slots).max().orElse(0) + 1];
  }

  /** What is paid for those who have not played, in points. */
  int paid(PlayerStates crowd) {
    int paid = 0;
    for (int slot = 0; slot < slots.length && !none; slot++) {
      paid += crowd.isUsed(slot) ? 0 : points[slot];
    }
    return paid;
  }

  /** What the rest costs more than its cheapest, after a stretch begun. */
  long begun(PlayerStates crowd, int actor, int start, int before) {
    return isKnown()
        ? atLeast(crowd, taking.orElseThrow(), taking.orElseThrow().detour(actor, start, before))
        : 0;
  }

  /** What the rest costs more than its cheapest, after a stretch. */
  long ended(PlayerStates crowd, int actor, int start, int before, int end) {
    return isKnown()
        ? atLeast(
            crowd, taking.orElseThrow(), taking.orElseThrow().detour(actor, start, before, end))
        : 0;
  }

  /** Searches that are over soon need not know it. */
  private boolean isKnown() {
    if (none || told.isEmpty() || ++asked < ASKED_BEFORE) {
      return false;
    }
    if (taking.isEmpty()) {
      taking = told.map(Supplier::get);
    }
    return true;
  }

  private long atLeast(PlayerStates crowd, TakingPart known, long detour) {
    Arrays.fill(waiting, 0);
    for (int slot = 0; slot < slots.length; slot++) {
      waiting[slots[slot]] += crowd.isUsed(slot) ? 0 : points[slot];
    }
    long least = 0;
    for (int kind = 0; kind < waiting.length; kind++) {
      if (waiting[kind] > 0) {
        long playing = known.beyondCheapest(kind) - detour;
        least = Math.max(least, Math.min(waiting[kind] * Relaxation.MICROPOINTS, playing));
      }
    }
    return least;
  }

  /** What one partial plan may have to pay for whom another has let play already, in points. */
  int owed(PlayerStates one, PlayerStates other) {
    int owed = 0;
    for (int slot = 0; slot < slots.length && !none; slot++) {
      owed += other.isUsed(slot) && !one.isUsed(slot) ? points[slot] : 0;
    }
    return owed;
  }
}
