package stafette.time;

import java.math.BigDecimal;
import java.math.BigInteger;

/** An exact fraction, always reduced, with a positive denominator. */
public final class Rational implements Comparable<Rational> {
  public static final Rational ZERO = new Rational(BigInteger.ZERO, BigInteger.ONE);
  public static final Rational ONE = new Rational(BigInteger.ONE, BigInteger.ONE);

  private final BigInteger numerator;
  private final BigInteger denominator;

  private Rational(BigInteger numerator, BigInteger denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  public static Rational of(long whole) {
    return new Rational(BigInteger.valueOf(whole), BigInteger.ONE);
  }

  public static Rational of(long numerator, long denominator) {
    return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /**
   * @throws ArithmeticException if the denominator is zero
   */
  public static Rational of(BigInteger numerator, BigInteger denominator) {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("a fraction over zero: " + numerator + "/0");
    }
    BigInteger divisor = numerator.gcd(denominator);
    if (denominator.signum() < 0) {
      divisor = divisor.negate();
    }
    return new Rational(numerator.divide(divisor), denominator.divide(divisor));
  }

  /** The exact value of a decimal number, so {@code 92.5} is 185/2. */
  public static Rational of(BigDecimal decimal) {
    return decimal.scale() <= 0
        ? new Rational(decimal.toBigIntegerExact(), BigInteger.ONE)
        : of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }

  /**
   * Reads {@code 3}, {@code 3/4} or {@code 92.5}.
   *
   * @throws NumberFormatException if the text is none of these, or longer than 40 characters
   */
  public static Rational parse(String text) {
    String trimmed = text.trim();
    if (trimmed.length() > 40 || trimmed.indexOf('e') >= 0 || trimmed.indexOf('E') >= 0) {
      throw new NumberFormatException("not a plain number: " + trimmed);
    }
    int slash = trimmed.indexOf('/');
    if (slash < 0) {
      return of(new BigDecimal(trimmed));
    }
    BigInteger below = new BigInteger(trimmed.substring(slash + 1).trim());
    if (below.signum() == 0) {
      throw new NumberFormatException("a fraction over zero: " + trimmed);
    }
    return of(new BigInteger(trimmed.substring(0, slash).trim()), below);
  }

  /**
   * Reduced by what the denominators have in common, as D. E. Knuth, The Art of Computer
   * Programming 2, section 4.5.1, has it: a long fraction and a short one make no long divisor.
   */
  public Rational plus(Rational other) {
    if (denominator.equals(other.denominator)) {
      return of(numerator.add(other.numerator), denominator);
    }
    BigInteger common = denominator.gcd(other.denominator);
    BigInteger otherRest = other.denominator.divide(common);
    BigInteger rest = denominator.divide(common);
    BigInteger sum = numerator.multiply(otherRest).add(other.numerator.multiply(rest));
    BigInteger divisor = sum.gcd(common);
    return divisor.equals(BigInteger.ONE)
        ? new Rational(sum, rest.multiply(other.denominator))
        : new Rational(sum.divide(divisor), rest.multiply(other.denominator.divide(divisor)));
  }

  public Rational minus(Rational other) {
    return plus(other.negated());
  }

  public Rational times(Rational other) {
    return product(numerator, denominator, other.numerator, other.denominator);
  }

  /** Of two reduced fractions: only each one's upper with the other's lower number can cancel. */
  private static Rational product(
      BigInteger upper, BigInteger lower, BigInteger otherUpper, BigInteger otherLower) {
    BigInteger one = upper.gcd(otherLower);
    BigInteger other = otherUpper.gcd(lower);
    return new Rational(
        upper.divide(one).multiply(otherUpper.divide(other)),
        lower.divide(other).multiply(otherLower.divide(one)));
  }

  public Rational times(long factor) {
    return product(numerator, denominator, BigInteger.valueOf(factor), BigInteger.ONE);
  }

  /**
   * @throws ArithmeticException if {@code other} is zero
   */
  public Rational dividedBy(Rational other) {
    return of(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  public Rational dividedBy(long divisor) {
    return of(numerator, denominator.multiply(BigInteger.valueOf(divisor)));
  }

  public Rational negated() {
    return new Rational(numerator.negate(), denominator);
  }

  /** The largest whole number not above this one. */
  public BigInteger floor() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }

  /** The nearest whole number, halves upward. */
  public BigInteger rounded() {
    return plus(of(1, 2)).floor();
  }

  /**
   * What is left of this after whole multiples of {@code step} have been taken away: 0 ≤ rest <
   * step.
   */
  public Rational modulo(Rational step) {
    return minus(step.times(of(dividedBy(step).floor(), BigInteger.ONE)));
  }

  public boolean isWhole() {
    return denominator.equals(BigInteger.ONE);
  }

  public int signum() {
    return numerator.signum();
  }

  public BigInteger numerator() {
    return numerator;
  }

  public BigInteger denominator() {
    return denominator;
  }

  public Rational min(Rational other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public Rational max(Rational other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public double toDouble() {
    if (numerator.bitLength() < 53 && denominator.bitLength() < 53) {
      return numerator.doubleValue() / denominator.doubleValue();
    }
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), java.math.MathContext.DECIMAL64)
        .doubleValue();
  }

  @Override
  public int compareTo(Rational other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rational that
        && numerator.equals(that.numerator)
        && denominator.equals(that.denominator);
  }

  @Override
  public int hashCode() {
    return 31 * numerator.hashCode() + denominator.hashCode();
  }

  /** {@code 3} or {@code 3/4}; {@link #parse} reads it back. */
  @Override
  public String toString() {
    return isWhole() ? numerator.toString() : numerator + "/" + denominator;
  }
}
