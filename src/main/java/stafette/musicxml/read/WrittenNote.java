package stafette.musicxml.read;

import java.util.List;
import java.util.Optional;
import stafette.musicxml.text.DecimalText;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Malformed;
import stafette.musicxml.text.Origin.NoteText;
import stafette.score.Drum;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Tone;
import stafette.score.Transposition;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.words.Sentence;

/**
 * A note element.
 *
 * @param text what it says about its place
 * @param tone what sounds; empty for a rest
 * @param slashed whether it is a grace note that is crossed out
 * @param tiedOn whether a tie leads on from it
 * @param value its written value with dots, before any tuplet; empty if it states none
 * @param modification its tuplet's ratio
 * @param beams the beams under which it stands
 * @param notations the marks on it
 * @param manners how it alone is played
 */
record WrittenNote(
    NoteText text,
    Optional<Tone> tone,
    boolean slashed,
    boolean tiedOn,
    Optional<Length> value,
    Optional<TimeModification> modification,
    NoteBeams beams,
    Notations notations,
    List<MannerMark> manners) {
  private static final int MOST_STAVES = 99;
  private static final int LOWEST_OCTAVE = -1;
  private static final int HIGHEST_OCTAVE = 10;
  private static final int FARTHEST_ALTER = 4;

  /**
   * Reads a note.
   *
   * @param severalInstruments whether the part has more than one instrument
   */
  static WrittenNote of(Element note, AttributesInForce attributes, boolean severalInstruments)
      throws Malformed {
    int staff = DecimalText.wholeOf(note, "staff", 1, MOST_STAVES, 1);
    boolean grace = note.has("grace");
    Optional<Tone> tone = tone(note, attributes.transposition(staff), severalInstruments);
    Notations notations = Notations.in(note);
    NoteText text =
        new NoteText(
            staff,
            note.textOf("voice").orElse("1"),
            grace ? Length.ZERO : lengthOf(note, attributes),
            tone.isEmpty(),
            note.has("chord"),
            grace,
            note.has("cue"),
            notations.tiedFrom() || tie(note, "stop"),
            tone.map(Tone::key).orElse(0));
    return new WrittenNote(
        text,
        tone,
        note.child("grace").map(g -> g.says("slash", "yes")).orElse(false),
        notations.tiedOn() || tie(note, "start"),
        note.textOf("type")
            .flatMap(type -> BeatUnit.of(type, note.all("dot").size()))
            .map(BeatUnit::length),
        TimeModification.in(note),
        NoteBeams.on(note),
        notations,
        MannerMark.onNote(note));
  }

  /** The duration of a note, backup or forward; zero if there is none. */
  static Length lengthOf(Element element, AttributesInForce attributes) throws Malformed {
    Optional<Element> duration = element.child("duration");
    if (duration.isEmpty()) {
      return Length.ZERO;
    }
    return attributes.length(DecimalText.of(duration.get()));
  }

  /** Whether it takes no time of its own. */
  boolean ornamental() {
    return text.grace() || text.length().isZero();
  }

  private static boolean tie(Element note, String type) {
    return note.all("tie").stream().anyMatch(tie -> tie.says("type", type));
  }

  private static Optional<Tone> tone(
      Element note, Transposition transposition, boolean severalInstruments) throws Malformed {
    Optional<Element> pitch = note.child("pitch");
    if (pitch.isPresent()) {
      return Optional.of(pitch(pitch.get()).movedBy(transposition));
    }
    Optional<Element> unpitched = note.child("unpitched");
    return unpitched.isPresent()
        ? Optional.of(drum(note, unpitched.get(), severalInstruments))
        : Optional.empty();
  }

  private static Pitch pitch(Element pitch) throws Malformed {
    return new Pitch(
        step(pitch.textOf("step").orElse("")),
        DecimalText.wholeOf(pitch, "alter", -FARTHEST_ALTER, FARTHEST_ALTER, 0),
        DecimalText.wholeOf(pitch, "octave", LOWEST_OCTAVE, HIGHEST_OCTAVE, 4));
  }

  /** A drum that says no place stands on the middle line. */
  private static Drum drum(Element note, Element unpitched, boolean severalInstruments)
      throws Malformed {
    String instrument =
        note.child("instrument").flatMap(element -> element.attribute("id")).orElse("");
    return new Drum(
        step(unpitched.textOf("display-step").orElse("B")),
        DecimalText.wholeOf(unpitched, "display-octave", LOWEST_OCTAVE, HIGHEST_OCTAVE, 4),
        severalInstruments ? instrument : "");
  }

  private static Step step(String letter) throws Malformed {
    for (Step step : Step.values()) {
      if (step.name().equals(letter)) {
        return step;
      }
    }
    throw new Malformed(
        Sentence.of("a pitch has the step \"{0}\", which is no letter from A to G", letter));
  }
}
