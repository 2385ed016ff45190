package stafette.time;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * So many beats a minute.
 *
 * @param unit the note value that is counted
 * @param perMinute how many of them a minute holds, above zero
 */
public record TempoMark(BeatUnit unit, Rational perMinute) implements Sayable {
  public static final TempoMark QUARTER_120 = new TempoMark(BeatUnit.QUARTER, Rational.of(120));

  /**
   * @throws IllegalArgumentException if the tempo is zero or less
   */
  public TempoMark {
    if (perMinute.signum() <= 0) {
      throw new IllegalArgumentException("a tempo must be above zero: " + perMinute);
    }
  }

  public Rational quartersPerMinute() {
    return perMinute.times(unit.length().quarters());
  }

  /** The clock time of so many quarters at this tempo: quarters × 60 ÷ quarters a minute. */
  public Rational seconds(Rational quarters) {
    return quarters.times(60).dividedBy(quartersPerMinute());
  }

  /** The same tempo counted in another unit. */
  public TempoMark in(BeatUnit other) {
    return new TempoMark(other, quartersPerMinute().dividedBy(other.length().quarters()));
  }

  public TempoMark times(Rational factor) {
    return new TempoMark(unit, perMinute.times(factor));
  }

  @Override
  public Sentence inWords() {
    return inWords(RoundingMode.HALF_UP, 2);
  }

  /** With so many decimals, rounded the way that is asked for. */
  public Sentence inWords(RoundingMode rounding, int decimals) {
    return Sentence.of("{0} = {1}", unit, decimal(rounding, decimals));
  }

  /** "dotted quarter = 92", with at most two decimals. */
  @Override
  public String toString() {
    return inWords().toString();
  }

  private BigDecimal decimal(RoundingMode rounding, int decimals) {
    BigDecimal value =
        new BigDecimal(perMinute.numerator())
            .divide(new BigDecimal(perMinute.denominator()), decimals, rounding);
    return value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
  }
}
