package stafette.picture.sheet;

import java.util.Locale;
import stafette.limits.Demand;
import stafette.score.Line;

/** Numbers and places as the sheet shows them. */
final class SheetFigures {
  private SheetFigures() {}

  static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  static String seconds(double seconds) {
    return oneDecimal(seconds) + " s";
  }

  static String seconds(long micros) {
    return seconds(micros / 1e6);
  }

  /** The metronome mark at which sixteenths go so fast: "16ths at quarter = 156". */
  static String mark(double perSecond) {
    return Demand.asSixteenths(perSecond);
  }

  static String perSecond(double rate) {
    return oneDecimal(rate) + " a second";
  }

  static String counted(int count, String one, String several) {
    return count + " " + (count == 1 ? one : several);
  }

  /** "bar 8, beat 1". */
  static String place(Line line, int stroke) {
    return line.placeOf(stroke).at().toString();
  }
}
