package stafette.picture.notes;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stafette.score.Pitch;

/** Which accidentals a bar needs: each holds to its end, in its own octave. */
final class AccidentalMemory {
  private static final int[] FIFTHS_OF_SHARPS = {3, 0, 4, 1, 5, 2, 6};

  private final int fifths;
  private final Map<Integer, Integer> inForce = new HashMap<>();

  /** A memory under a key signature: so many sharps, or flats if below zero. */
  AccidentalMemory(int fifths) {
    this.fifths = fifths;
  }

  /** The alteration to be written before a note, if one is. */
  Optional<Integer> before(Pitch written) {
    int known = inForce.getOrDefault(written.diatonic(), inKey(written));
    inForce.put(written.diatonic(), written.alter());
    return known == written.alter() ? Optional.empty() : Optional.of(written.alter());
  }

  private int inKey(Pitch pitch) {
    for (int i = 0; i < Math.min(7, Math.abs(fifths)); i++) {
      int letter = FIFTHS_OF_SHARPS[fifths > 0 ? i : 6 - i];
      if (letter == pitch.step().ordinal()) {
        return Integer.signum(fifths);
      }
    }
    return 0;
  }
}
