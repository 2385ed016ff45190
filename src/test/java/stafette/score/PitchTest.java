package stafette.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PitchTest {
  /** MIDI 1.0 specification: middle C is note 60. */
  @Test
  void middle_c_is_midi_sixty() {
    assertEquals(60, new Pitch(Step.C, 0, 4).midi());
    assertEquals(59, new Pitch(Step.C, -1, 4).midi());
    assertEquals(69, new Pitch(Step.A, 0, 4).midi());
  }

  @Property
  void moving_by_an_interval_and_back_changes_nothing(
      @ForAll Step step,
      @ForAll @IntRange(min = -1, max = 1) int alter,
      @ForAll @IntRange(min = 0, max = 8) int octave,
      @ForAll @IntRange(min = -14, max = 14) int letters,
      @ForAll @IntRange(min = -24, max = 24) int semitones) {
    Pitch pitch = new Pitch(step, alter, octave);
    Transposition interval = new Transposition(letters, semitones);
    assertEquals(pitch.midi() + semitones, pitch.movedBy(interval).midi());
    assertEquals(pitch, pitch.movedBy(interval).movedBy(interval.inverse()));
  }

  /**
   * A horn in F sounds a perfect fifth lower than written: any instrumentation primer, from memory.
   */
  @Test
  void a_written_c_of_the_horn_in_f_sounds_the_f_below() {
    assertEquals(
        new Pitch(Step.F, 0, 4), new Pitch(Step.C, 0, 5).movedBy(new Transposition(-4, -7)));
    assertEquals("Bb3", new Pitch(Step.B, -1, 3).toString());
  }
}
