package stafette.ask;

import java.util.List;
import java.util.stream.Stream;
import stafette.time.Rational;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** How people say what they want to hear. */
public final class SoundWish {
  private static final Rational SLOWEST_PERCENT = Rational.of(10);
  private static final Rational FASTEST_PERCENT = Rational.of(400);

  private SoundWish() {}

  /**
   * Reads "Flute 1, Flute 2".
   *
   * @throws Refusal if nobody is named
   */
  public static List<String> names(String text) throws Refusal {
    List<String> names =
        Stream.of(text.split(",", -1)).map(String::trim).filter(name -> !name.isEmpty()).toList();
    if (names.isEmpty()) {
      throw Refusal.wrongUse(Sentence.of("name players, such as \"Flute 1, Flute 2\""));
    }
    return names;
  }

  /**
   * Reads "50%" as a factor.
   *
   * @throws Refusal if it is no number from 10 to 400
   */
  public static Rational speed(String text) throws Refusal {
    String number =
        text.trim().endsWith("%") ? text.trim().substring(0, text.trim().length() - 1) : "";
    try {
      Rational percent = Rational.parse(number);
      if (percent.compareTo(SLOWEST_PERCENT) >= 0 && percent.compareTo(FASTEST_PERCENT) <= 0) {
        return percent.dividedBy(100);
      }
    } catch (NumberFormatException e) {
      throw noSpeed();
    }
    throw noSpeed();
  }

  private static Refusal noSpeed() {
    return Refusal.wrongUse(
        Sentence.of("write a share of the plan's tempo from 10% to 400%, such as 50%"));
  }
}
