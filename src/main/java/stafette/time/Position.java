package stafette.time;

/**
 * A point in the score.
 *
 * @param quarters quarter notes since the start of the score's first bar
 */
public record Position(Rational quarters) implements Comparable<Position> {
  public static final Position START = new Position(Rational.ZERO);

  public static Position ofQuarters(long numerator, long denominator) {
    return new Position(Rational.of(numerator, denominator));
  }

  public Position plus(Length length) {
    return new Position(quarters.plus(length.quarters()));
  }

  public Position minus(Length length) {
    return new Position(quarters.minus(length.quarters()));
  }

  /**
   * The way from an earlier position to this one.
   *
   * @throws IllegalArgumentException if {@code earlier} is later
   */
  public Length since(Position earlier) {
    return new Length(quarters.minus(earlier.quarters));
  }

  public boolean isBefore(Position other) {
    return compareTo(other) < 0;
  }

  public boolean isAfter(Position other) {
    return compareTo(other) > 0;
  }

  @Override
  public int compareTo(Position other) {
    return quarters.compareTo(other.quarters);
  }
}
