package stafette.musicxml.read;

import java.util.EnumSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stafette.score.Articulation;
import stafette.score.Tone;
import stafette.score.Tuplet;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * Notes that are written at one place of a voice, one or several; no rests.
 *
 * @param onset when
 * @param notes in the order in which they stand; the first says how long all of them are
 * @param tuplet the group to which they belong
 */
record Chord(
    int staff, String voice, Position onset, List<WrittenNote> notes, Optional<Tuplet> tuplet) {

  WrittenNote first() {
    return notes.get(0);
  }

  /** Whether it takes no time of its own, as grace notes do. */
  boolean ornamental() {
    return first().ornamental();
  }

  Length length() {
    return first().text().length();
  }

  Position end() {
    return onset.plus(length());
  }

  Optional<Notations.Slashes> slashes() {
    return notes.stream().flatMap(note -> note.notations().tremolo().stream()).findFirst();
  }

  boolean isJoined(Notations.Joined joined) {
    return slashes().map(slashes -> slashes.joined() == joined).orElse(false);
  }

  /** How long the notes would be without any tuplet. */
  Rational writtenQuarters() {
    return first().value().map(Length::quarters).orElse(length().quarters().dividedBy(ratio()));
  }

  /** What the tuplet makes of the written value. */
  Rational ratio() {
    return first().modification().map(TimeModification::ratio).orElse(Rational.ONE);
  }

  /** How it alone is played, against what is in force. */
  MannerInForce played(MannerInForce inForce) {
    MannerInForce played = inForce;
    for (WrittenNote note : notes) {
      for (MannerMark mark : note.manners()) {
        played = mark.apply(played);
      }
    }
    return played;
  }

  Set<Articulation> articulations() {
    Set<Articulation> all = EnumSet.noneOf(Articulation.class);
    notes.forEach(note -> all.addAll(note.notations().articulations()));
    return all;
  }

  List<Tone> tones() {
    return tonesOf(notes);
  }

  /** The tones of some notes from low to high, each key once. */
  static List<Tone> tonesOf(List<WrittenNote> notes) {
    NavigableMap<Integer, Tone> byKey = new TreeMap<>();
    notes.forEach(note -> note.tone().ifPresent(tone -> byKey.putIfAbsent(tone.key(), tone)));
    return List.copyOf(byKey.values());
  }
}
