package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import stafette.time.Position;

/**
 * How each chord of a part is to be played, as words, signs and sounds have it.
 *
 * <p>Where the word tremolo stands at a note with slashes it says what these are, and nothing of
 * notes without.
 */
final class AskedManners {
  private final List<MannerInForce> ofChords = new ArrayList<>();

  private AskedManners() {}

  /** What is asked for on chords that come by onset. */
  static AskedManners of(List<Chord> chords, MarksInForce<MannerInForce> marks) {
    AskedManners asked = new AskedManners();
    Map<Integer, NavigableMap<Position, MannerInForce>> byStaff = new HashMap<>();
    Map<Integer, Boolean> onSlashesAlone = new HashMap<>();
    for (Chord chord : chords) {
      MannerInForce inForce =
          byStaff.computeIfAbsent(chord.staff(), marks::on).floorEntry(chord.onset()).getValue();
      boolean slashed = chord.slashes().isPresent();
      if (!inForce.trembling()) {
        onSlashesAlone.remove(chord.staff());
      } else if (onSlashesAlone.computeIfAbsent(chord.staff(), staff -> slashed) && !slashed) {
        inForce = inForce.trembling(false);
      }
      asked.ofChords.add(chord.played(inForce));
    }
    return asked;
  }

  /** What is asked for on a chord, by its number. */
  MannerInForce of(int chord) {
    return ofChords.get(chord);
  }
}
