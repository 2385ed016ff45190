package stafette.musicxml.write;

import java.util.HashMap;
import java.util.Map;
import org.audiveris.proxymusic.AccidentalValue;
import stafette.score.Pitch;
import stafette.score.Step;

/** Which accidentals hold in a bar so far, and which note therefore needs one. */
final class Accidentals {
  private static final Step[] SHARPS = {Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B};

  private final Map<Integer, Integer> holding = new HashMap<>();
  private final int fifths;

  /** The state at the start of a bar in that key. */
  Accidentals(int fifths) {
    this.fifths = fifths;
  }

  /** Whether the note must show its accidental; it holds from then on. */
  boolean mustShow(Pitch written) {
    int before = holding.getOrDefault(written.diatonic(), inKey(written.step()));
    holding.put(written.diatonic(), written.alter());
    return before != written.alter();
  }

  /** The sign that shows how a pitch is written. */
  static AccidentalValue sign(Pitch written) {
    return switch (written.alter()) {
      case -2 -> AccidentalValue.FLAT_FLAT;
      case -1 -> AccidentalValue.FLAT;
      case 0 -> AccidentalValue.NATURAL;
      case 1 -> AccidentalValue.SHARP;
      case 2 -> AccidentalValue.DOUBLE_SHARP;
      default -> throw new IllegalStateException("no sign for an alter of " + written.alter());
    };
  }

  private int inKey(Step step) {
    for (int i = 0; i < SHARPS.length; i++) {
      if (SHARPS[i] == step) {
        boolean sharp = i < fifths;
        boolean flat = SHARPS.length - 1 - i < -fifths;
        return sharp ? 1 : flat ? -1 : 0;
      }
    }
    throw new IllegalStateException("no such step: " + step);
  }
}
