package stafette.work;

import java.util.function.BooleanSupplier;

/** Deals out what is left of the time for several searches. */
final class Allotment {
  private final long endNanos;

  private Allotment(long endNanos) {
    this.endNanos = endNanos;
  }

  /** From now on. */
  static Allotment ofSeconds(double seconds) {
    return new Allotment(System.nanoTime() + (long) (seconds * 1e9));
  }

  boolean isOver() {
    return System.nanoTime() - endNanos > 0;
  }

  /** An equal share of what is left, for the first of so many searches; says when it is over. */
  BooleanSupplier share(int searches) {
    long now = System.nanoTime();
    long until = now + Math.max(0, endNanos - now) / searches;
    return () -> System.nanoTime() - until > 0;
  }
}
