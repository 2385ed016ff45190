package stafette.work;

import java.util.function.BooleanSupplier;

/**
 * Work that is counted, not timed: how often a search asks whether to stop depends on its brief
 * alone, so that a busy machine comes to the same answer as an idle one, only later. Deals out what
 * is left for several searches, one after the other.
 */
final class CountedWork {
  private final BooleanSupplier stop;
  private long left;

  /**
   * So much work.
   *
   * @param questions how often searches may ask
   * @param stop ends all of it, for good, if it says yes
   */
  CountedWork(long questions, BooleanSupplier stop) {
    this.left = questions;
    this.stop = stop;
  }

  /** Whether nothing is left, or it was stopped. */
  boolean isOver() {
    if (left > 0 && stop.getAsBoolean()) {
      left = 0;
    }
    return left <= 0;
  }

  /** An equal share of what is left, for the first of so many searches; says when it is over. */
  BooleanSupplier share(int searches) {
    long until = left - Math.max(1, left / searches);
    return () -> {
      boolean over = left <= until || isOver();
      left -= over ? 0 : 1;
      return over;
    };
  }
}
