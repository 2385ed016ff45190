package stafette.notation;

import java.util.HashMap;
import java.util.Map;
import stafette.score.Pitch;
import stafette.score.Step;

/** Which accidentals hold in a bar so far, and which note therefore needs one. */
public final class Accidentals {
  private static final Step[] SHARPS = {Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B};

  private final Map<Integer, Integer> holding = new HashMap<>();
  private final int fifths;

  /** The state at the start of a bar in that key. */
  public Accidentals(int fifths) {
    this.fifths = fifths;
  }

  /** Whether the note must show its accidental; it holds from then on. */
  public boolean mustShow(Pitch written) {
    int before = holding.getOrDefault(written.diatonic(), inKey(written.step()));
    holding.put(written.diatonic(), written.alter());
    return before != written.alter();
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
