package stafette.plan;

import java.util.OptionalInt;

/**
 * How many strokes two players share at a handoff.
 *
 * @param min at least so many, one or more
 * @param max at most so many; if empty, the first and the last shared onset lie at most the beat at
 *     the landing note apart
 */
public record OverlapRule(int min, OptionalInt max) {
  public static final OverlapRule DEFAULT = new OverlapRule(1, OptionalInt.empty());

  /**
   * @throws IllegalArgumentException if min is below one, or max below min
   */
  public OverlapRule {
    if (min < 1 || (max.isPresent() && max.getAsInt() < min)) {
      throw new IllegalArgumentException(
          "an overlap shares at least one stroke, and max is not below min: " + min + ", " + max);
    }
  }
}
