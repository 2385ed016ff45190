package stafette.musicxml.make;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.audiveris.proxymusic.Accidental;
import org.audiveris.proxymusic.AccidentalValue;
import org.audiveris.proxymusic.Beam;
import org.audiveris.proxymusic.BeamValue;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.EmptyPlacement;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.NoteType;
import org.audiveris.proxymusic.Rest;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.Tie;
import org.audiveris.proxymusic.TimeModification;
import org.audiveris.proxymusic.Unpitched;
import org.audiveris.proxymusic.YesNo;
import stafette.musicxml.text.Origin;
import stafette.notation.Accidentals;
import stafette.notation.BarItem;
import stafette.notation.BarItem.Ratio;
import stafette.notation.BarItem.SoundingItem;
import stafette.notation.NoteShape;
import stafette.notation.NoteSpans;
import stafette.score.Drum;
import stafette.score.Grace;
import stafette.score.Pitch;
import stafette.score.Spelling;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Length;
import stafette.time.Rational;

/**
 * Makes the note elements of one voice in one bar.
 *
 * @param spelling how the part writes a sounding pitch
 * @param accidentals those that hold so far
 * @param voice its name
 * @param staff its staff, where the part has several
 */
public record NoteMaker(
    UnaryOperator<Pitch> spelling, Accidentals accidentals, String voice, Optional<Integer> staff) {

  /** Makes rests alone. */
  public static NoteMaker resting(String voice, Optional<Integer> staff) {
    return new NoteMaker(pitch -> pitch, new Accidentals(0), voice, staff);
  }

  /** How a part writes a sounding pitch. */
  public static UnaryOperator<Pitch> spellingIn(Origin.Attributes inForce) {
    int sounding = Spelling.soundingKey(inForce.fifths(), inForce.transposition());
    return pitch -> Spelling.written(pitch, inForce.transposition(), sounding, inForce.fifths());
  }

  /** A rest. */
  public Note rest(BarItem item, boolean wholeBar, int divisions) {
    Note note = timed(item, divisions);
    Rest rest = new Rest();
    if (wholeBar) {
      rest.setMeasure(YesNo.YES);
    }
    note.setRest(rest);
    NotationsMaker.of(item, Optional.empty(), NoteSpans.NONE).ifPresent(note.getNotations()::add);
    return note;
  }

  /**
   * The notes of a stroke's written value, from low to high, with the grace notes before it.
   *
   * @param reminds which tones show an accidental though they need none
   */
  public List<Note> notes(
      BarItem item,
      SoundingItem sound,
      Stroke stroke,
      NoteSpans spans,
      Predicate<Tone> reminds,
      int divisions) {
    List<Note> notes = new ArrayList<>();
    if (sound.first()) {
      stroke.graces().forEach(grace -> notes.addAll(grace(grace, stroke.graces().size())));
    }
    boolean chord = false;
    for (Tone tone : lowToHigh(stroke.tones())) {
      Note note = timed(item, divisions);
      if (chord) {
        note.setChord(new Empty());
        note.getBeam().clear();
      }
      sounding(note, tone, !sound.first(), reminds.test(tone));
      if (!sound.first()) {
        note.getTie().add(tie(StartStop.STOP));
      }
      if (!sound.last()) {
        note.getTie().add(tie(StartStop.START));
      }
      Optional<Stroke> marked = sound.first() && !chord ? Optional.of(stroke) : Optional.empty();
      BarItem shown = chord ? item.withEdge(BarItem.Edge.NONE) : item;
      NotationsMaker.of(shown, marked, chord ? NoteSpans.NONE : spans)
          .ifPresent(note.getNotations()::add);
      notes.add(note);
      chord = true;
    }
    return notes;
  }

  public static BigDecimal duration(Length length, int divisions) {
    Rational count = length.quarters().times(divisions);
    if (!count.isWhole()) {
      throw new IllegalStateException(
          length + " is no whole number of divisions, at " + divisions + " a quarter");
    }
    return new BigDecimal(count.numerator());
  }

  private Note timed(BarItem item, int divisions) {
    Note note = new Note();
    note.setDuration(duration(item.span().length(), divisions));
    place(note);
    item.shape().ifPresent(shape -> shape(note, shape));
    item.ratio().ifPresent(ratio -> note.setTimeModification(modification(ratio)));
    for (int level = 1; level <= item.beams().size(); level++) {
      Beam beam = new Beam();
      beam.setNumber(level);
      beam.setValue(BeamValue.fromValue(item.beams().get(level - 1)));
      note.getBeam().add(beam);
    }
    return note;
  }

  private void place(Note note) {
    note.setVoice(voice);
    staff.ifPresent(number -> note.setStaff(BigInteger.valueOf(number)));
  }

  private List<Note> grace(Grace grace, int of) {
    List<Note> notes = new ArrayList<>();
    for (Tone tone : lowToHigh(grace.tones())) {
      Note note = new Note();
      org.audiveris.proxymusic.Grace sign = new org.audiveris.proxymusic.Grace();
      if (grace.slashed()) {
        sign.setSlash(YesNo.YES);
      }
      note.setGrace(sign);
      if (!notes.isEmpty()) {
        note.setChord(new Empty());
      }
      sounding(note, tone, false, false);
      place(note);
      shape(note, new NoteShape(of == 1 ? "eighth" : "16th", 0));
      notes.add(note);
    }
    return notes;
  }

  private void sounding(Note note, Tone tone, boolean tiedFrom, boolean reminds) {
    if (tone instanceof Pitch pitch) {
      Pitch written = spelling.apply(pitch);
      note.setPitch(pitch(written));
      boolean needed = !tiedFrom && accidentals.mustShow(written);
      if (needed || (reminds && !tiedFrom)) {
        Accidental accidental = new Accidental();
        accidental.setValue(sign(written));
        if (!needed) {
          accidental.setCautionary(YesNo.YES);
        }
        note.setAccidental(accidental);
      }
    } else if (tone instanceof Drum drum) {
      Unpitched unpitched = new Unpitched();
      unpitched.setDisplayStep(org.audiveris.proxymusic.Step.fromValue(drum.displayStep().name()));
      unpitched.setDisplayOctave(drum.displayOctave());
      note.setUnpitched(unpitched);
    }
  }

  private static org.audiveris.proxymusic.Pitch pitch(Pitch written) {
    org.audiveris.proxymusic.Pitch pitch = new org.audiveris.proxymusic.Pitch();
    pitch.setStep(org.audiveris.proxymusic.Step.fromValue(written.step().name()));
    if (written.alter() != 0) {
      pitch.setAlter(BigDecimal.valueOf(written.alter()));
    }
    pitch.setOctave(written.octave());
    return pitch;
  }

  private static void shape(Note note, NoteShape shape) {
    NoteType type = new NoteType();
    type.setValue(shape.type());
    note.setType(type);
    for (int dot = 0; dot < shape.dots(); dot++) {
      note.getDot().add(new EmptyPlacement());
    }
  }

  private static TimeModification modification(Ratio ratio) {
    TimeModification modification = new TimeModification();
    modification.setActualNotes(BigInteger.valueOf(ratio.actual()));
    modification.setNormalNotes(BigInteger.valueOf(ratio.normal()));
    ratio.unit().ifPresent(modification::setNormalType);
    return modification;
  }

  private static Tie tie(StartStop type) {
    Tie tie = new Tie();
    tie.setType(type);
    return tie;
  }

  private static List<Tone> lowToHigh(List<Tone> tones) {
    return tones.stream().sorted(Comparator.comparingInt(Tone::key)).toList();
  }

  /** The sign that shows how a pitch is written. */
  public static AccidentalValue sign(Pitch written) {
    return switch (written.alter()) {
      case -2 -> AccidentalValue.FLAT_FLAT;
      case -1 -> AccidentalValue.FLAT;
      case 0 -> AccidentalValue.NATURAL;
      case 1 -> AccidentalValue.SHARP;
      case 2 -> AccidentalValue.DOUBLE_SHARP;
      default -> throw new IllegalStateException("no sign for an alter of " + written.alter());
    };
  }
}
