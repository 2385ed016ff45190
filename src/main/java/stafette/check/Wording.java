package stafette.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import stafette.score.Line;
import stafette.time.Rational;
import stafette.time.TempoMark;

/** Figures as sentences show them. */
final class Wording {
  private Wording() {}

  /** A value that is above a limit, with as many decimals, up to four, as show that it is. */
  static String above(double value, double limit) {
    return fixed(value, decimalsThatDiffer(value, limit));
  }

  /** The limit, with as many decimals as {@link #above} shows. */
  static String below(double value, double limit) {
    return fixed(limit, decimalsThatDiffer(value, limit));
  }

  static String seconds(double seconds) {
    return fixed(seconds, seconds < 1 ? 2 : 1) + " s";
  }

  static String percent(double share) {
    return Math.round(share * 100) + " %";
  }

  static String decibel(double level) {
    return fixed(level, 1) + " dB";
  }

  static String notes(int count) {
    return count == 1 ? "1 note" : count + " notes";
  }

  /** The tempo at the line's start, times a factor, in its own unit and rounded down. */
  static String tempo(Line line, double factor) {
    TempoMark mark = line.tempo().at(line.stroke(0).onset());
    return mark.times(exactly(factor)).toString(RoundingMode.FLOOR, 0);
  }

  /** A number above zero as the fraction that it is in the machine. */
  static Rational exactly(double number) {
    return Rational.of(new BigDecimal(number));
  }

  private static int decimalsThatDiffer(double one, double other) {
    int decimals = 1;
    while (decimals < 4 && fixed(one, decimals).equals(fixed(other, decimals))) {
      decimals++;
    }
    return decimals;
  }

  private static String fixed(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
