package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.time.Position;

/**
 * The ties of a part that wait for their second note. A tie joins two notes of the same key, the
 * one beginning where the other ends, if it is marked on both; any other mark says nothing.
 */
final class Ties {
  private final Map<Integer, List<OpenTie>> byKey = new HashMap<>();

  /** A tie that leads on from a note that belongs to a stroke. */
  private record OpenTie(int staff, String voice, Position end, StrokeDraft stroke) {
    int fit(Chord chord) {
      return !voice.equals(chord.voice()) ? 1 : staff != chord.staff() ? 2 : 3;
    }
  }

  void leadOn(WrittenNote note, Chord chord, StrokeDraft stroke) {
    if (note.tiedOn()) {
      byKey
          .computeIfAbsent(note.text().key(), key -> new ArrayList<>())
          .add(new OpenTie(chord.staff(), chord.voice(), chord.end(), stroke));
    }
  }

  /** The stroke to which a note is tied; asked by onset. */
  Optional<StrokeDraft> take(WrittenNote note, Chord chord) {
    List<OpenTie> waiting = byKey.getOrDefault(note.text().key(), List.of());
    if (!note.text().tiedFrom() || waiting.isEmpty()) {
      return Optional.empty();
    }
    waiting.removeIf(tie -> tie.end().isBefore(chord.onset()));
    Optional<OpenTie> best =
        waiting.stream()
            .filter(tie -> tie.end().equals(chord.onset()))
            .max((a, b) -> Integer.compare(a.fit(chord), b.fit(chord)));
    best.ifPresent(waiting::remove);
    return best.map(OpenTie::stroke);
  }
}
