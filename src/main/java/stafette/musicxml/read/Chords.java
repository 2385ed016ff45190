package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.musicxml.read.TupletGroups.TupletGroup;
import stafette.score.Tuplet;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Gathers the notes of a part into chords. Notes of one voice and staff that begin together are one
 * chord, however they are written; grace notes stand before the note that they lead to.
 */
final class Chords {
  private final boolean withCues;
  private final List<Chord> chords = new ArrayList<>();
  private final Map<Key, Draft> timed = new HashMap<>();
  private final List<Draft> drafts = new ArrayList<>();

  private Chords(boolean withCues) {
    this.withCues = withCues;
  }

  private record Key(int staff, String voice, Position onset) {}

  private record Draft(Key key, List<WrittenNote> notes, Optional<Tuplet> tuplet) {}

  /** The chords of a part by onset. */
  static List<Chord> of(WrittenPart part, Bars bars, boolean withCues) {
    Chords result = new Chords(withCues);
    for (int i = 0; i < part.measures().size(); i++) {
      result.add(part.measures().get(i).elements(), bars.get(i).span().start());
    }
    return result.sorted();
  }

  private void add(List<WrittenMeasure.Child> children, Position barStart) {
    List<Optional<TupletGroup>> groups = TupletGroups.of(children);
    Optional<Draft> last = Optional.empty();
    for (int i = 0; i < children.size(); i++) {
      Optional<WrittenNote> note = children.get(i).note().filter(this::sounds);
      if (note.isPresent()) {
        Optional<Tuplet> tuplet = tuplet(note.get(), groups.get(i), barStart);
        Position onset = barStart.plus(children.get(i).onset());
        last = Optional.of(add(note.get(), onset, tuplet, last));
      }
    }
  }

  private boolean sounds(WrittenNote note) {
    return note.tone().isPresent() && (withCues || !note.text().cue());
  }

  private Draft add(
      WrittenNote note, Position onset, Optional<Tuplet> tuplet, Optional<Draft> last) {
    Key key = new Key(note.text().staff(), note.text().voice(), onset);
    Optional<Draft> place =
        note.ornamental() && !note.text().chord()
            ? Optional.empty()
            : note.text().chord() && last.isPresent() && last.get().key().equals(key)
                ? last
                : note.text().grace() ? Optional.empty() : Optional.ofNullable(timed.get(key));
    if (place.isPresent()) {
      place.get().notes().add(note);
      return place.get();
    }
    Draft draft = new Draft(key, new ArrayList<>(List.of(note)), tuplet);
    drafts.add(draft);
    if (!note.ornamental()) {
      timed.put(key, draft);
    }
    return draft;
  }

  private static Optional<Tuplet> tuplet(
      WrittenNote note, Optional<TupletGroup> group, Position barStart) {
    return group.flatMap(
        found ->
            note.modification()
                .map(
                    modification ->
                        new Tuplet(
                            modification.actual(),
                            modification.normal(),
                            new Span(barStart.plus(found.start()), barStart.plus(found.end())),
                            found.beamedInThrees())));
  }

  private List<Chord> sorted() {
    for (Draft draft : drafts) {
      Key key = draft.key();
      chords.add(
          new Chord(
              key.staff(), key.voice(), key.onset(), List.copyOf(draft.notes()), draft.tuplet()));
    }
    chords.sort(Comparator.comparing(Chord::onset).thenComparing(chord -> !chord.ornamental()));
    return chords;
  }
}
