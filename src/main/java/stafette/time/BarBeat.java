package stafette.time;

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
    Rational whole = Rational.of(beat.floor(), java.math.BigInteger.ONE);
    Rational rest = beat.minus(whole);
    return rest.signum() == 0 ? whole.toString() : whole + "+" + rest;
  }

  /** "34.2", for where there are many. */
  public String dotted() {
    return bar + "." + beatText();
  }

  @Override
  public Sentence inWords() {
    return Sentence.of("bar {0}, beat {1}", bar, beatText());
  }

  /** "bar 34, beat 2". */
  @Override
  public String toString() {
    return inWords().toString();
  }
}
