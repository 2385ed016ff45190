package stafette.check;

import java.util.HashSet;
import java.util.Set;
import stafette.limits.HarpPedals;
import stafette.limits.Instrument;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Place;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.words.Sentence;

/** Which notes a player has no technique for. */
public final class TechniqueRules {
  private TechniqueRules() {}

  /** That a player has no technique for a stroke. */
  static Finding uncovered(Place place, Stroke stroke, Instrument instrument) {
    return Finding.at(
        Finding.FindingKind.TECHNIQUE,
        place,
        stroke.manner().isPlucked()
            ? Sentence.of(
                "the score says pizzicato, and this {0} has no technique for it; allow one, or give"
                    + " the note to somebody else",
                instrument)
            : Sentence.of(
                "this {0} has no technique for the note (its slurs, repeated notes or rate); allow"
                    + " one, or give the note to somebody else",
                instrument));
  }

  /** That the pedals give no twin strings. */
  static Finding withoutTwins(Place place) {
    return Finding.at(
        Finding.FindingKind.TECHNIQUE,
        place,
        Sentence.of(
            "twin strings: no setting of the pedals gives every repeated note a second string;"
                + " choose single strings or other notes"));
  }

  /** That the pedals can't be moved in time for a stroke. */
  static Finding unpedalled(Place place) {
    return Finding.at(
        Finding.FindingKind.TECHNIQUE,
        place,
        Sentence.of(
            "the pedals can't be moved in time for this note; give it to somebody else, hand over"
                + " before, or lower the tempo"));
  }

  /**
   * Whether one setting of the pedals gives every pitch of the stretch, and every one that is
   * repeated on two strings.
   */
  public static boolean twins(Line line, int first, int last) {
    Set<Integer> sounding = new HashSet<>();
    Set<Integer> repeated = new HashSet<>();
    Set<Integer> before = Set.of();
    for (int j = first; j <= last; j++) {
      Set<Integer> keys = new HashSet<>();
      for (Tone tone : line.stroke(j).tones()) {
        if (!(tone instanceof Pitch)) {
          return false;
        }
        keys.add(tone.key());
      }
      sounding.addAll(keys);
      if (keys.equals(before)) {
        repeated.addAll(keys);
      }
      before = keys;
    }
    return HarpPedals.twinsPossible(sounding, repeated);
  }
}
