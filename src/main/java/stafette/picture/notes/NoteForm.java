package stafette.picture.notes;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.time.Length;
import stafette.time.Rational;

/**
 * What a written value looks like.
 *
 * @param halvings how often a whole note is halved: 0 a whole note, 2 a quarter, 4 a sixteenth
 * @param dots how many
 */
record NoteForm(int halvings, int dots) {
  private static final int SHORTEST = 8;

  /** The form of a plain or dotted value. */
  static Optional<NoteForm> of(Length written) {
    for (int halvings = 0; halvings <= SHORTEST; halvings++) {
      Rational plain = Rational.of(4, 1L << halvings);
      for (int dots = 0; dots <= 2; dots++) {
        Rational dotted = plain.times(Rational.of((2L << dots) - 1, 1L << dots));
        if (dotted.equals(written.quarters())) {
          return Optional.of(new NoteForm(halvings, dots));
        }
      }
    }
    return Optional.empty();
  }

  /** Plain values that make up a length, longest first; none if there is no such sum. */
  static List<Length> sumOf(Length written) {
    List<Length> parts = new ArrayList<>();
    Rational left = written.quarters();
    for (int halvings = 0; halvings <= SHORTEST; halvings++) {
      Rational plain = Rational.of(4, 1L << halvings);
      while (left.compareTo(plain) >= 0) {
        parts.add(new Length(plain));
        left = left.minus(plain);
      }
    }
    return left.numerator().equals(BigInteger.ZERO) ? parts : List.of();
  }

  /** How many beams or flags. */
  int beams() {
    return Math.max(0, halvings - 2);
  }

  boolean hasStem() {
    return halvings > 0;
  }

  String head() {
    return Character.toString(halvings == 0 ? 0x1D15D : halvings == 1 ? 0x1D157 : 0x1D158);
  }

  String rest() {
    return Character.toString(0x1D13B + Math.min(halvings, 7));
  }

  /** Rests of whole and half notes hang from, or lie on, a line of their own. */
  double restRaisedSpaces() {
    return halvings <= 1 ? 1 : 0;
  }
}
