package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The slurs of a part. Ends are matched by number, within a voice where that is possible; an end
 * without its fellow says nothing.
 */
final class Slurs {
  private final List<Chord> chords;
  private final List<OpenSlur> open = new ArrayList<>();
  private final boolean[] under;
  private final boolean[] goingOn;

  private Slurs(List<Chord> chords) {
    this.chords = chords;
    this.under = new boolean[chords.size()];
    this.goingOn = new boolean[chords.size()];
  }

  /** One end of a slur, at a chord. */
  private record OpenSlur(String number, int chord) {}

  /** The slurs on chords that come by onset. */
  static Slurs of(List<Chord> chords) {
    Slurs slurs = new Slurs(chords);
    for (int i = 0; i < chords.size(); i++) {
      slurs.addEnds(i, false);
      slurs.addEnds(i, true);
    }
    return slurs;
  }

  /** Whether a chord stands under a slur, not as its first. */
  boolean under(int chord) {
    return under[chord];
  }

  /** Whether a slur goes on from a chord to the next. */
  boolean goingOn(int chord) {
    return goingOn[chord];
  }

  private void addEnds(int chord, boolean starts) {
    for (WrittenNote note : chords.get(chord).notes()) {
      for (Notations.SlurEnd end : note.notations().slurs()) {
        if (end.starts() == starts) {
          add(new OpenSlur(end.number(), chord), starts);
        }
      }
    }
  }

  private void add(OpenSlur end, boolean starts) {
    if (starts) {
      open.removeIf(other -> fit(other, end) == 3);
      open.add(end);
      return;
    }
    Optional<OpenSlur> start =
        open.stream()
            .filter(candidate -> fit(candidate, end) > 0)
            .max(Comparator.comparingInt(candidate -> fit(candidate, end)));
    start.ifPresent(
        found -> {
          open.remove(found);
          mark(found.chord(), end.chord());
        });
  }

  /** How well a start fits a stop: 0 not at all, 3 in the same voice of the same staff. */
  private int fit(OpenSlur start, OpenSlur stop) {
    if (!start.number().equals(stop.number())) {
      return 0;
    }
    Chord from = chords.get(start.chord());
    Chord to = chords.get(stop.chord());
    return !from.voice().equals(to.voice()) ? 1 : from.staff() != to.staff() ? 2 : 3;
  }

  private void mark(int start, int stop) {
    Chord from = chords.get(start);
    Chord to = chords.get(stop);
    for (int i = start; i <= stop; i++) {
      Chord chord = chords.get(i);
      if ((chord.voice().equals(from.voice()) || chord.voice().equals(to.voice()))
          && (chord.staff() == from.staff() || chord.staff() == to.staff())) {
        under[i] |= chord.onset().isAfter(from.onset());
        goingOn[i] |= chord.onset().isBefore(to.onset());
      }
    }
  }
}
