package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import stafette.time.Length;
import stafette.time.Position;

/**
 * How each chord of a part is to be played, as words, signs and sounds have it.
 *
 * <p>Where the word tremolo stands at a long note without slashes it makes a tremolo of all such
 * notes. Elsewhere it says what slashes are, or what short notes look like that are written out.
 */
final class AskedManners {
  /** Shorter notes need slashes to be a tremolo. */
  private static final Length LEAST_BARE = Length.QUARTER;

  private final List<MannerInForce> ofChords = new ArrayList<>();

  /** For staves under the word tremolo, whether it is meant for notes without slashes. */
  private final Map<Integer, Boolean> meantForBare = new HashMap<>();

  private AskedManners() {}

  /** What is asked for on chords that come by onset. */
  static AskedManners of(List<Chord> chords, MarksInForce<MannerInForce> marks) {
    AskedManners asked = new AskedManners();
    Map<Integer, NavigableMap<Position, MannerInForce>> byStaff = new HashMap<>();
    for (Chord chord : chords) {
      MannerInForce inForce =
          byStaff.computeIfAbsent(chord.staff(), marks::on).floorEntry(chord.onset()).getValue();
      asked.ofChords.add(chord.played(asked.meant(inForce, chord)));
    }
    return asked;
  }

  private MannerInForce meant(MannerInForce inForce, Chord chord) {
    if (!inForce.trembling()) {
      meantForBare.remove(chord.staff());
    }
    if (!inForce.trembling() || chord.ornamental()) {
      return inForce;
    }
    boolean slashed = chord.slashes().isPresent();
    boolean bare = !slashed && chord.length().compareTo(LEAST_BARE) >= 0;
    boolean forBare = meantForBare.computeIfAbsent(chord.staff(), staff -> bare);
    return inForce.trembling(slashed || (bare && forBare));
  }

  /** What is asked for on a chord, by its number. */
  MannerInForce of(int chord) {
    return ofChords.get(chord);
  }
}
