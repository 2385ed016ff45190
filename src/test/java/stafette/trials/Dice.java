package stafette.trials;

import java.util.List;
import java.util.SplittableRandom;

/** Chance by a seed: the same seed throws the same. */
final class Dice {
  private final SplittableRandom random;

  Dice(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** A whole number, both ends included. */
  int between(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  /** Yes in so many of a hundred throws. */
  boolean in100(int share) {
    return random.nextInt(100) < share;
  }

  <T> T of(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  @SafeVarargs
  final <T> T of(T first, T... others) {
    int which = random.nextInt(others.length + 1);
    return which == 0 ? first : others[which - 1];
  }

  long seed() {
    return random.nextLong();
  }
}
