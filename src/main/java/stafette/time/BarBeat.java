package stafette.time;

import java.math.BigInteger;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * A place as people name it.
 *
 * @param bar the bar's number as printed
 * @param beat counted from 1, with a fraction inside the beat: 2 and 1/3
 */
public record BarBeat(String bar, Rational beat) implements Sayable {
  /** "2" or "2+1/3". */
  public String beatText() {
    Rational whole = Rational.of(beat.floor(), BigInteger.ONE);
    Rational rest = beat.minus(whole);
    return rest.signum() == 0 ? whole.toString() : whole + "+" + rest;
  }

  /** "34.2", for where there are many. */
  public String dotted() {
    return bar + "." + beatText();
  }

  @Override
  public Sentence inWords() {
    Rational whole = Rational.of(beat.floor(), BigInteger.ONE);
    Rational rest = beat.minus(whole);
    return rest.signum() == 0
        ? Sentence.of("bar {0}, beat {1}", bar, whole)
        : within(whole, rest.numerator().intValueExact(), rest.denominator().intValueExact());
  }

  private Sentence within(Rational whole, int passed, int parts) {
    boolean last = passed == parts - 1;
    if (parts == 2) {
      return Sentence.of("bar {0}, second half of beat {1}", bar, whole);
    }
    if (parts == 3) {
      return last
          ? Sentence.of("bar {0}, last third of beat {1}", bar, whole)
          : Sentence.of("bar {0}, middle third of beat {1}", bar, whole);
    }
    if (parts == 4) {
      return last
          ? Sentence.of("bar {0}, last quarter of beat {1}", bar, whole)
          : Sentence.of("bar {0}, second quarter of beat {1}", bar, whole);
    }
    return Sentence.of("bar {0}, beat {1}, {2} of {3}", bar, whole, passed + 1, parts);
  }

  /** "bar 34, beat 2". */
  @Override
  public String toString() {
    return inWords().toString();
  }
}
