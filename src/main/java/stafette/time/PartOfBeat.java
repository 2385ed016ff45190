package stafette.time;

import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * One of the equal parts into which a beat is divided, as people count them.
 *
 * @param number from 1; the first is the beat itself and has no name here
 * @param of how many parts, at least two
 */
record PartOfBeat(int number, int of) implements Sayable {

  /**
   * The part that begins inside a beat.
   *
   * @param passed how much of the beat has passed, above 0 and below 1
   */
  static PartOfBeat after(Rational passed) {
    return new PartOfBeat(
        passed.numerator().intValueExact() + 1, passed.denominator().intValueExact());
  }

  /** "second half", "middle third", "last sixth". */
  @Override
  public Sentence inWords() {
    return switch (of) {
      case 2 -> Sentence.of("second half");
      case 3 -> Sentence.of("{0} third", number == of ? ordinal() : Sentence.of("middle"));
      case 4 -> Sentence.of("{0} quarter", ordinal());
      case 5 -> Sentence.of("{0} fifth", ordinal());
      case 6 -> Sentence.of("{0} sixth", ordinal());
      case 7 -> Sentence.of("{0} seventh", ordinal());
      case 8 -> Sentence.of("{0} eighth", ordinal());
      default -> Sentence.of("part {0} of {1}", number, of);
    };
  }

  private Sentence ordinal() {
    if (number == of) {
      return Sentence.of("last");
    }
    return switch (number) {
      case 2 -> Sentence.of("second");
      case 3 -> Sentence.of("third");
      case 4 -> Sentence.of("fourth");
      case 5 -> Sentence.of("fifth");
      case 6 -> Sentence.of("sixth");
      default -> Sentence.of("seventh");
    };
  }
}
