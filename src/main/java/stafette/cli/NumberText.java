package stafette.cli;

import java.util.Locale;
import stafette.limits.Demand;
import stafette.score.Line;

/** Numbers and places as the commands print them. */
final class NumberText {
  /** Appears with every plan and check: work at the limit can injure. */
  static final String CAUTION =
      "Limits differ from player to player; playing at one's limit can injure lips, tongue, arms and hands.\n"
          + "Ask the players; they, their teachers and medical advice have the last word.";

  static final String ASSUMED_TEMPO =
      "The score states no tempo; quarter = 120 is assumed (--tempo sets another).\n";

  private NumberText() {}

  static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** A rate in strokes a second, and the metronome mark at which sixteenths go that fast. */
  static String rate(double perSecond) {
    return oneDecimal(perSecond) + " a second (" + Demand.asSixteenths(perSecond) + ")";
  }

  static double seconds(Line line) {
    return line.endMicros(line.count() - 1) / 1e6;
  }
}
