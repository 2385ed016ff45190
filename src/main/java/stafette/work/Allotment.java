package stafette.work;

import java.util.function.BooleanSupplier;

/** Deals out what is left of the time for several searches. */
final class Allotment {
  private final long endNanos;
  private final BooleanSupplier stop;

  private Allotment(long endNanos, BooleanSupplier stop) {
    this.endNanos = endNanos;
    this.stop = stop;
  }

  /** From now on. */
  static Allotment ofSeconds(double seconds) {
    return ofSeconds(seconds, () -> false);
  }

  /**
   * From now on.
   *
   * @param stop asked often; ends it before its time if it says yes
   */
  static Allotment ofSeconds(double seconds, BooleanSupplier stop) {
    return new Allotment(System.nanoTime() + (long) (seconds * 1e9), stop);
  }

  boolean isOver() {
    return stop.getAsBoolean() || System.nanoTime() - endNanos > 0;
  }

  /** An equal share of what is left, for the first of so many searches; says when it is over. */
  BooleanSupplier share(int searches) {
    long now = System.nanoTime();
    long until = now + Math.max(0, endNanos - now) / searches;
    return () -> stop.getAsBoolean() || System.nanoTime() - until > 0;
  }
}
