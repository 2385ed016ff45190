package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.score.Articulation;
import stafette.score.Drum;
import stafette.score.Dynamic;
import stafette.score.Grace;
import stafette.score.Manner;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Value;
import stafette.time.Length;
import stafette.time.Position;

/** How marks sound. */
class TouchTest {
  private static final SoundingVoice PIPER =
      new SoundingVoice("Piper", 73, OptionalInt.empty(), 64, false);
  private static final long LONG = 1_000_000;

  @Test
  void staccato_is_short_and_tenuto_full() {
    assertEquals(880_000, length(with(Articulation.STRESS)));
    assertEquals(500_000, length(with(Articulation.STACCATO)));
    assertEquals(300_000, length(with(Articulation.STACCATISSIMO)));
    assertEquals(700_000, length(with(Articulation.STACCATO, Articulation.TENUTO)));
    assertTrue(length(with(Articulation.TENUTO)) > length(with(Articulation.DETACHED_LEGATO)));
  }

  @Test
  void accents_are_louder_and_dynamics_rise_step_by_step() {
    int plain = velocity(stroke(Dynamic.MF, false, false, Set.of()));
    assertTrue(velocity(with(Articulation.ACCENT)) > plain);
    assertTrue(velocity(with(Articulation.STRONG_ACCENT)) > velocity(with(Articulation.ACCENT)));
    int softer = 0;
    for (Dynamic dynamic : Dynamic.values()) {
      int here = velocity(stroke(dynamic, false, false, Set.of()));
      assertTrue(here > softer, dynamic.toString());
      softer = here;
    }
  }

  @Test
  void under_a_slur_a_note_lasts_to_the_next_one_and_is_struck_less() {
    Stroke from = stroke(Dynamic.MF, false, true, Set.of());
    Stroke to = stroke(Dynamic.MF, true, false, Set.of());
    assertEquals(900_000, Touch.notes(from, PIPER, 0, 0, LONG, 900_000).get(0).toMicros());
    assertEquals(LONG, Touch.notes(from, PIPER, 0, 0, LONG, 1_100_000).get(0).toMicros());
    assertTrue(velocity(to) < velocity(from));
  }

  @Test
  void a_note_ends_before_the_next_one_of_its_player() {
    assertEquals(
        399_000,
        Touch.notes(with(Articulation.TENUTO), PIPER, 0, 0, LONG, 400_000).get(0).toMicros());
  }

  @Test
  void grace_notes_take_time_from_the_stroke() {
    Grace grace = new Grace(List.of(InventedRelay.scale(1)), true);
    Stroke plain = stroke(Dynamic.MF, false, false, Set.of());
    Stroke graced =
        new Stroke(
            plain.onset(),
            plain.tones(),
            plain.values(),
            List.of(grace, grace),
            false,
            false,
            true,
            Set.of(),
            Dynamic.MF,
            Manner.PLAIN);
    List<Note> notes = Touch.notes(graced, PIPER, 0, 0, LONG, Long.MAX_VALUE);
    assertEquals(List.of(0L, 70_000L, 140_000L), notes.stream().map(Note::fromMicros).toList());
    assertEquals(880_000, notes.get(2).toMicros());
  }

  @Test
  void an_unmeasured_tremolo_is_struck_again_and_again() {
    Stroke plain = stroke(Dynamic.MF, false, false, Set.of());
    Stroke roll =
        new Stroke(
            plain.onset(),
            plain.tones(),
            plain.values(),
            List.of(),
            false,
            false,
            false,
            Set.of(),
            Dynamic.MF,
            Manner.PLAIN);
    assertEquals(11, Touch.notes(roll, PIPER, 0, 0, LONG, Long.MAX_VALUE).size());
  }

  /** Keys of General MIDI, level 1 (MIDI Manufacturers Association 1991). */
  @Test
  void a_drum_has_its_key_and_no_pitch() {
    assertEquals(38, Drums.key("snare drum"));
    assertEquals(60, Drums.key("Bongos"));
    assertEquals(36, Drums.key("Bass Drum"));
    SoundingVoice drum = new SoundingVoice("Drum", 0, OptionalInt.of(38), 64, false);
    assertEquals(OptionalInt.of(38), drum.key(new Drum(Step.B, 4, "")));
    assertEquals(OptionalInt.empty(), drum.key(Invented.A4));
    assertEquals(OptionalInt.of(69), PIPER.key(Invented.A4));
  }

  private static Stroke with(Articulation... marks) {
    return stroke(Dynamic.MF, false, false, Set.of(marks));
  }

  private static Stroke stroke(
      Dynamic dynamic, boolean slurred, boolean slurContinues, Set<Articulation> marks) {
    return new Stroke(
        Position.START,
        List.of(Invented.A4),
        List.of(new Value(Length.QUARTER, Optional.empty())),
        List.of(),
        slurred,
        slurContinues,
        true,
        marks,
        dynamic,
        Manner.PLAIN);
  }

  private static long length(Stroke stroke) {
    Note note = Touch.notes(stroke, PIPER, 0, 0, LONG, Long.MAX_VALUE).get(0);
    return note.toMicros() - note.fromMicros();
  }

  private static int velocity(Stroke stroke) {
    return Touch.of(stroke).velocity();
  }
}
