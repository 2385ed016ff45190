package stafette.time;

/**
 * An amount of musical time, never negative.
 *
 * @param quarters in quarter notes
 */
public record Length(Rational quarters) implements Comparable<Length> {
  public static final Length ZERO = new Length(Rational.ZERO);
  public static final Length QUARTER = new Length(Rational.ONE);

  /**
   * @throws IllegalArgumentException if the amount is negative
   */
  public Length {
    if (quarters.signum() < 0) {
      throw new IllegalArgumentException("a length can't be negative: " + quarters + " quarters");
    }
  }

  public static Length ofQuarters(long numerator, long denominator) {
    return new Length(Rational.of(numerator, denominator));
  }

  public Length plus(Length other) {
    return new Length(quarters.plus(other.quarters));
  }

  /**
   * @throws IllegalArgumentException if {@code other} is the longer one
   */
  public Length minus(Length other) {
    return new Length(quarters.minus(other.quarters));
  }

  public Length times(Rational factor) {
    return new Length(quarters.times(factor));
  }

  public boolean isZero() {
    return quarters.signum() == 0;
  }

  @Override
  public int compareTo(Length other) {
    return quarters.compareTo(other.quarters);
  }
}
