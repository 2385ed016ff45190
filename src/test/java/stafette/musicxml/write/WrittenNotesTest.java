package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.Beam;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Tie;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.Tuplet;
import org.audiveris.proxymusic.util.Marshalling;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.read.Document;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Rational;

/** ProxyMusic, an independent reader of MusicXML, finds in order what was written. */
class WrittenNotesTest {
  private static final Map<String, Case> CASES = new ConcurrentHashMap<>();

  private record Case(Document before, Plan plan, ScorePartwise after) {
    static Case of(String sample) {
      return CASES.computeIfAbsent(sample, Case::written);
    }

    private static Case written(String sample) {
      try {
        Document before = ByHand.sample(sample);
        Plan plan = ByHand.planFor(sample, before.score());
        WrittenScore written =
            ScoreWriter.write(before, plan, SourceTreatment.KEEP, player -> Optional.empty());
        return new Case(
            before,
            plan,
            (ScorePartwise) Marshalling.unmarshal(new ByteArrayInputStream(written.bytes())));
      } catch (Exception e) {
        throw new IllegalStateException(sample, e);
      }
    }

    /** The parts with something of the line in them, by the names of their players. */
    Map<String, ScorePartwise.Part> players() {
      Map<String, ScorePartwise.Part> parts = new TreeMap<>();
      for (ScorePartwise.Part part : after.getPart()) {
        String name = ((ScorePart) part.getId()).getPartName().getValue();
        if (plan.brief().players().stream().anyMatch(player -> player.name().equals(name))) {
          parts.put(name, part);
        }
      }
      return parts;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void the_second_reader_finds_the_notes_of_the_plan(String sample) {
    Case both = Case.of(sample);
    Map<String, ScorePartwise.Part> parts = both.players();
    for (Segment segment : both.plan.segments()) {
      String name = both.plan.player(segment).name();
      List<String> found = sounding(Objects.requireNonNull(parts.get(name)), both);
      for (int j = segment.first(); j <= segment.last(); j++) {
        Stroke stroke = both.plan.line().stroke(j);
        String note = stroke.onset().quarters() + " " + stroke.tones().get(0).key();
        assertEquals(1, found.stream().filter(note::equals).count(), name + ": " + note);
      }
    }
  }

  /** Onsets in quarters and sounding keys of all notes that are struck. */
  private static List<String> sounding(ScorePartwise.Part part, Case both) {
    List<String> notes = new ArrayList<>();
    int divisions = 1;
    int transposed = 0;
    for (int i = 0; i < part.getMeasure().size(); i++) {
      Rational start = both.before.score().bars().get(i).span().start().quarters();
      Rational at = Rational.ZERO;
      Rational chord = at;
      for (Object child : part.getMeasure().get(i).getNoteOrBackupOrForward()) {
        if (child instanceof Attributes attributes) {
          divisions =
              attributes.getDivisions() == null ? divisions : attributes.getDivisions().intValue();
          transposed =
              attributes.getTranspose().isEmpty()
                  ? transposed
                  : attributes.getTranspose().get(0).getChromatic().intValue();
        } else if (child instanceof Backup backup) {
          at = at.minus(quarters(backup.getDuration(), divisions));
        } else if (child instanceof Forward forward) {
          at = at.plus(quarters(forward.getDuration(), divisions));
        } else if (child instanceof Note note) {
          Rational onset = note.getChord() == null ? at : chord;
          boolean held = note.getTie().stream().anyMatch(tie -> says(tie, "STOP"));
          if (note.getPitch() != null && note.getGrace() == null && !held) {
            notes.add(start.plus(onset) + " " + (midi(note) + transposed));
          }
          if (note.getChord() == null && note.getGrace() == null) {
            chord = at;
            at = at.plus(quarters(note.getDuration(), divisions));
          }
        }
      }
    }
    return notes;
  }

  private static boolean says(Tie tie, String type) {
    return tie.getType().name().equals(type);
  }

  private static int midi(Note note) {
    org.audiveris.proxymusic.Pitch pitch = note.getPitch();
    int alter = pitch.getAlter() == null ? 0 : pitch.getAlter().intValue();
    return new Pitch(Step.valueOf(pitch.getStep().name()), alter, pitch.getOctave()).midi();
  }

  private static Rational quarters(BigDecimal duration, int divisions) {
    return Rational.of(duration.longValueExact(), divisions);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void every_bar_of_every_part_adds_up(String sample) {
    Case both = Case.of(sample);
    for (ScorePartwise.Part part : both.after.getPart()) {
      int divisions = 1;
      for (int i = 0; i < part.getMeasure().size(); i++) {
        Rational at = Rational.ZERO;
        Rational reached = Rational.ZERO;
        for (Object child : part.getMeasure().get(i).getNoteOrBackupOrForward()) {
          if (child instanceof Attributes attributes && attributes.getDivisions() != null) {
            divisions = attributes.getDivisions().intValue();
          } else if (child instanceof Backup backup) {
            at = at.minus(quarters(backup.getDuration(), divisions));
          } else if (child instanceof Forward forward) {
            at = at.plus(quarters(forward.getDuration(), divisions));
          } else if (child instanceof Note note
              && note.getChord() == null
              && note.getGrace() == null) {
            at = at.plus(quarters(note.getDuration(), divisions));
          }
          assertTrue(at.signum() >= 0);
          reached = reached.compareTo(at) > 0 ? reached : at;
        }
        assertEquals(
            both.before.score().bars().get(i).span().length().quarters(),
            reached,
            ((ScorePart) part.getId()).getId() + ", bar " + i);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill"})
  void tuplets_are_complete_and_ties_and_beams_balanced(String sample) {
    Case.of(sample)
        .players()
        .forEach(
            (name, part) -> {
              Map<Integer, Integer> tied = new HashMap<>();
              part.getMeasure()
                  .forEach(
                      measure -> {
                        String where = name + ", bar " + measure.getNumber();
                        List<Note> notes =
                            measure.getNoteOrBackupOrForward().stream()
                                .filter(Note.class::isInstance)
                                .map(Note.class::cast)
                                .toList();
                        tupletsComplete(notes, where);
                        beamsBalanced(notes, where);
                        notes.forEach(note -> follow(tied, note, where));
                      });
              assertEquals(Map.of(), tied, name);
            });
  }

  private static void tupletsComplete(List<Note> notes, String where) {
    boolean open = false;
    for (Note note : notes) {
      for (Tuplet tuplet : notations(note, Tuplet.class)) {
        boolean starts = tuplet.getType().name().equals("START");
        assertEquals(!starts, open, where);
        open = starts;
      }
    }
    assertEquals(false, open, where);
  }

  private static void beamsBalanced(List<Note> notes, String where) {
    Map<Integer, Boolean> open = new HashMap<>();
    for (Note note : notes) {
      for (Beam beam : note.getBeam()) {
        boolean is = open.getOrDefault(beam.getNumber(), false);
        switch (beam.getValue()) {
          case BEGIN -> {
            assertEquals(false, is, where);
            open.put(beam.getNumber(), true);
          }
          case END -> {
            assertEquals(true, is, where);
            open.put(beam.getNumber(), false);
          }
          case CONTINUE -> assertEquals(true, is, where);
          default -> assertEquals(false, is, where);
        }
      }
    }
    assertTrue(open.values().stream().noneMatch(is -> is), where);
  }

  /** Ties and their curves: each key leads on once and is reached once. */
  private static void follow(Map<Integer, Integer> tied, Note note, String where) {
    if (note.getPitch() == null) {
      return;
    }
    int key = midi(note);
    List<String> ties = note.getTie().stream().map(tie -> tie.getType().name()).sorted().toList();
    List<String> curves =
        notations(note, Tied.class).stream().map(tie -> tie.getType().name()).sorted().toList();
    assertEquals(curves, ties, where);
    if (ties.contains("STOP")) {
      assertEquals(1, tied.remove(key), where);
    }
    if (ties.contains("START")) {
      tied.put(key, 1);
    }
  }

  private static <T> List<T> notations(Note note, Class<T> type) {
    List<T> found = new ArrayList<>();
    for (Notations notations : note.getNotations()) {
      notations.getTiedOrSlurOrTuplet().stream()
          .filter(type::isInstance)
          .map(type::cast)
          .forEach(found::add);
    }
    return found;
  }
}
