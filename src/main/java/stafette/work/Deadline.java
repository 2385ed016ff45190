package stafette.work;

import java.util.function.BooleanSupplier;

/**
 * When something has to end whatever it has by then: a wish of the user, or the clock. What is
 * found otherwise never depends on it; shares of work are dealt out by {@link CountedWork}.
 */
final class Deadline {
  private final long endNanos;
  private final BooleanSupplier stop;

  private Deadline(long endNanos, BooleanSupplier stop) {
    this.endNanos = endNanos;
    this.stop = stop;
  }

  /**
   * From now on.
   *
   * @param stop asked often; ends it before its time if it says yes
   */
  static Deadline ofSeconds(double seconds, BooleanSupplier stop) {
    return new Deadline(System.nanoTime() + (long) (seconds * 1e9), stop);
  }

  boolean isOver() {
    return stop.getAsBoolean() || System.nanoTime() - endNanos > 0;
  }
}
