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
  /** "2" or "2+1/3", as it is typed, and for machines. */
  public String beatText() {
    Rational passed = passed();
    return passed.signum() == 0 ? whole().toString() : whole() + "+" + passed;
  }

  /** "34.2" or "34.2+1/3", as it is typed, and for machines. */
  public String dotted() {
    return bar + "." + beatText();
  }

  /** "34.2" or "34.2, last sixth", for tables. */
  public Sentence inShort() {
    return passed().signum() == 0
        ? Sentence.of("{0}.{1}", bar, whole())
        : Sentence.of("{0}.{1}, {2}", bar, whole(), PartOfBeat.after(passed()));
  }

  /** "bar 34, beat 2" or "bar 34, last sixth of beat 2". */
  @Override
  public Sentence inWords() {
    return passed().signum() == 0
        ? Sentence.of("bar {0}, beat {1}", bar, whole())
        : Sentence.of("bar {0}, {1} of beat {2}", bar, PartOfBeat.after(passed()), whole());
  }

  private Rational whole() {
    return Rational.of(beat.floor(), BigInteger.ONE);
  }

  private Rational passed() {
    return beat.minus(whole());
  }

  /** "bar 34, beat 2". */
  @Override
  public String toString() {
    return inWords().toString();
  }
}
