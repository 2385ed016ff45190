package stafette.notation;

import java.util.HashMap;
import java.util.Map;
import stafette.score.Pitch;

/** Which accidentals hold in a bar so far, and which note therefore needs one. */
public final class Accidentals {
  private final Map<Integer, Integer> holding = new HashMap<>();
  private final int fifths;

  /** The state at the start of a bar in that key. */
  public Accidentals(int fifths) {
    this.fifths = fifths;
  }

  /** Whether the note must show its accidental; it holds from then on. */
  public boolean mustShow(Pitch written) {
    int before = holding.getOrDefault(written.diatonic(), written.step().alterIn(fifths));
    holding.put(written.diatonic(), written.alter());
    return before != written.alter();
  }
}
