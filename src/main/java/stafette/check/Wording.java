package stafette.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stafette.score.Line;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/** Figures as sentences show them. */
public final class Wording {
  private Wording() {}

  /** A value that is above a limit, with as many decimals, up to four, as show that it is. */
  public static BigDecimal above(double value, double limit) {
    return Sentence.decimal(value, decimalsThatDiffer(value, limit));
  }

  /** The limit, with as many decimals as {@link #above} shows. */
  public static BigDecimal below(double value, double limit) {
    return Sentence.decimal(limit, decimalsThatDiffer(value, limit));
  }

  static Sentence seconds(double seconds) {
    return Sentence.of("{0} s", Sentence.decimal(seconds, seconds < 1 ? 2 : 1));
  }

  static Sentence decibel(double level) {
    return Sentence.of("{0} dB", Sentence.decimal(level, 1));
  }

  static Sentence notes(int count) {
    return count == 1 ? Sentence.of("1 note") : Sentence.of("{0} notes", count);
  }

  /** The tempo at the line's start, times a factor, in its own unit and rounded down. */
  static Sentence tempo(Line line, double factor) {
    TempoMark mark = line.tempo().at(line.stroke(0).onset());
    return mark.times(exactly(factor)).inWords(RoundingMode.FLOOR, 0);
  }

  /** A number above zero as the fraction that it is in the machine. */
  public static Rational exactly(double number) {
    return Rational.of(new BigDecimal(number));
  }

  private static int decimalsThatDiffer(double one, double other) {
    int decimals = 1;
    while (decimals < 4
        && Sentence.decimal(one, decimals).compareTo(Sentence.decimal(other, decimals)) == 0) {
      decimals++;
    }
    return decimals;
  }
}
