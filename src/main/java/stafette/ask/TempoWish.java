package stafette.ask;

import java.util.Optional;
import stafette.score.Line;
import stafette.time.BeatUnit;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * A tempo as people ask for it.
 *
 * @param unit what is counted; the beat at the line's start if empty
 * @param perMinute how many a minute
 */
public record TempoWish(Optional<BeatUnit> unit, Rational perMinute) {
  private static final Rational SLOWEST = Rational.of(1);
  private static final Rational FASTEST = Rational.of(2000);

  /**
   * Reads "92" or "dotted quarter = 92".
   *
   * @throws Refusal if it is neither, or not between 1 and 2000
   */
  public static TempoWish parse(String text) throws Refusal {
    int equals = text.indexOf('=');
    Optional<BeatUnit> unit = Optional.empty();
    if (equals >= 0) {
      unit = BeatUnit.parse(text.substring(0, equals));
      if (unit.isEmpty()) {
        throw Refusal.wrongUse(
            Sentence.of(
                "\"{0}\" is no note value; write half, quarter, eighth, 16th, with \"dotted\" before"
                    + " it if it has a dot",
                text.substring(0, equals).trim()));
      }
    }
    return new TempoWish(unit, number(text.substring(equals + 1)));
  }

  private static Rational number(String digits) throws Refusal {
    Rational value;
    try {
      value = Rational.parse(digits);
    } catch (NumberFormatException e) {
      throw Refusal.wrongUse(Sentence.of("write a number such as 92, or \"dotted quarter = 92\""));
    }
    if (value.compareTo(SLOWEST) < 0 || value.compareTo(FASTEST) > 0) {
      throw Refusal.wrongUse(Sentence.of("a tempo lies between 1 and 2000 a minute"));
    }
    return value;
  }

  /** The line at this tempo from its start on, later tempi scaled with it. */
  public Line applyTo(Line line) {
    Position start = line.stroke(0).onset();
    BeatUnit counted = unit.orElseGet(() -> beatAt(line, start));
    return line.at(line.tempo().scaledTo(start, new TempoMark(counted, perMinute)));
  }

  public static BeatUnit beatAt(Line line, Position start) {
    return BeatUnit.of(line.bars().at(start).beatLengthAt(start)).orElse(BeatUnit.QUARTER);
  }
}
