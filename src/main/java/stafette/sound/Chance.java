package stafette.sound;

/**
 * Figures that look drawn at random and are the same on every machine and in every run: each is
 * reckoned from where it is needed and from nothing else, so that an excerpt sounds like the same
 * place in the whole.
 *
 * <p>The mixing function is that of SplitMix64: G. L. Steele, D. Lea and C. H. Flood, "Fast
 * splittable pseudorandom number generators", OOPSLA 2014.
 */
final class Chance {
  private static final long SEED = 0x5374616665747465L;
  private static final long GAMMA = 0x9E3779B97F4A7C15L;

  private Chance() {}

  /** Evenly spread from 0 to just below 1. */
  static double even(long... keys) {
    long state = SEED;
    for (long key : keys) {
      state = mixed(state + GAMMA + key);
    }
    return (mixed(state + GAMMA) >>> 11) * 0x1.0p-53;
  }

  /** Normally spread with mean 0 and deviation 1 (Box and Muller 1958), cut at 2.5 deviations. */
  static double normal(long first, long second, long third) {
    double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - even(first, second, third, 1)));
    double drawn = radius * StrictMath.cos(2 * Math.PI * even(first, second, third, 2));
    return Math.max(-2.5, Math.min(2.5, drawn));
  }

  private static long mixed(long state) {
    long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
