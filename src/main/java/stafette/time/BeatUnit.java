package stafette.time;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * The note value that a metronome mark counts.
 *
 * @param name as people write it: "quarter", "dotted quarter", "eighth"
 * @param length how long it is
 */
public record BeatUnit(String name, Length length) implements Sayable {
  public static final BeatUnit QUARTER = new BeatUnit("quarter", Length.QUARTER);

  /**
   * Note values from long to short, by the names that MusicXML 4.0 gives them (type {@code
   * note-type-value}).
   */
  private static final List<String> VALUES =
      List.of(
          "long", "breve", "whole", "half", "quarter", "eighth", "16th", "32nd", "64th", "128th",
          "256th");

  private static final String DOTTED = "dotted ";

  private static final int QUARTER_INDEX = VALUES.indexOf("quarter");

  /**
   * The unit for a note value and a number of dots.
   *
   * @param value a MusicXML note value such as {@code quarter}
   */
  public static Optional<BeatUnit> of(String value, int dots) {
    int index = VALUES.indexOf(value);
    if (index < 0 || dots < 0 || dots > 4) {
      return Optional.empty();
    }
    Rational plain =
        index <= QUARTER_INDEX
            ? Rational.of(1L << (QUARTER_INDEX - index))
            : Rational.of(1, 1L << (index - QUARTER_INDEX));
    Rational dotted = plain.times(Rational.of((1L << (dots + 1)) - 1, 1L << dots));
    return Optional.of(new BeatUnit(DOTTED.repeat(dots) + value, new Length(dotted)));
  }

  /** Reads "quarter", "dotted quarter" or "half", in any case. */
  public static Optional<BeatUnit> parse(String name) {
    String rest = name.trim().toLowerCase(Locale.ROOT);
    int dots = 0;
    while (rest.startsWith(DOTTED)) {
      dots++;
      rest = rest.substring(DOTTED.length()).trim();
    }
    return of(rest, dots);
  }

  @Override
  public Sentence inWords() {
    return said(name);
  }

  private static Sentence said(String name) {
    return name.startsWith(DOTTED)
        ? Sentence.of("dotted {0}", said(name.substring(DOTTED.length())))
        : Sentence.name(name);
  }

  /** The undotted or singly dotted value of that length, if there is one. */
  public static Optional<BeatUnit> of(Length length) {
    return VALUES.stream()
        .flatMap(value -> Stream.of(0, 1).flatMap(dots -> of(value, dots).stream()))
        .filter(unit -> unit.length().equals(length))
        .findFirst();
  }
}
