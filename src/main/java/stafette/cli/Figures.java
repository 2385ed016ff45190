package stafette.cli;

import java.util.Locale;
import stafette.score.Line;
import stafette.time.Bar;

/** Numbers and places as the commands print them. */
final class Figures {
  /** Appears with every plan and check: work at the limit can injure. */
  static final String CAUTION =
      "Limits differ from player to player; playing at one's limit can injure lips, tongue, arms and hands.\n"
          + "Ask the players; they, their teachers and medical advice have the last word.";

  static final String ASSUMED_TEMPO =
      "The score states no tempo; quarter = 120 is assumed (--tempo sets another).\n";

  private Figures() {}

  static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** A rate in strokes a second, and the metronome mark at which sixteenths go that fast. */
  static String rate(double perSecond) {
    return oneDecimal(perSecond)
        + " a second (16ths at quarter = "
        + Math.round(perSecond * 15)
        + ")";
  }

  /** Rounded up, so that nothing beyond the limit is shown as 100 %. */
  static String percent(double share) {
    return (int) Math.ceil(share * 100 - 1e-9) + " %";
  }

  /** "Piano, staff 1, voice 1, bars 5-16"; counted too where a number is printed twice. */
  static String where(Line line) {
    Bar first = line.bars().get(line.source().firstBar());
    Bar last = line.bars().get(line.source().lastBar());
    boolean once =
        line.bars().isPrintedOnce(first.number()) && line.bars().isPrintedOnce(last.number());
    return line.source().partName()
        + ", staff "
        + line.source().staff()
        + ", voice "
        + line.source().voice()
        + (first.equals(last) ? ", bar " : ", bars ")
        + range(first.number(), last.number())
        + (once ? "" : " (" + range("#" + (first.index() + 1), "#" + (last.index() + 1)) + ")");
  }

  private static String range(String first, String last) {
    return first.equals(last) ? first : first + "-" + last;
  }

  static double seconds(Line line) {
    return line.endMicros(line.count() - 1) / 1e6;
  }
}
