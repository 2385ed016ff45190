package stafette.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keys and pitches of transposing parts, as any primer of theory has them (from memory). */
class SpellingTest {
  /** Chromatic and diatonic steps from written to sounding; keys in fifths. */
  @ParameterizedTest
  @CsvSource({
    // instrument in B-flat: a whole tone up, two sharps more
    "-2, -1, 0, 2",
    "-2, -1, -3, -1",
    "-2, -1, 4, 6",
    "-2, -1, -7, -5",
    // in B-flat, beyond seven sharps: B major is written in D-flat major
    "-2, -1, 5, 7",
    "-2, -1, 6, -4",
    "-2, -1, 7, -3",
    // in A: a minor third up, three flats more
    "-3, -2, 0, -3",
    "-3, -2, 2, -1",
    "-3, -2, -4, -7",
    "-3, -2, -5, 4",
    // in F: a fifth up, one sharp more
    "-7, -4, 0, 1",
    "-7, -4, -1, 0",
    "-7, -4, 7, -4",
    // in E-flat: a major sixth up, three sharps more
    "-9, -5, 0, 3",
    "-9, -5, -3, 0",
    "-9, -5, 5, -4",
    // piccolo and double bass: octaves change no key
    "12, 7, 3, 3",
    "-12, -7, -6, -6"
  })
  void keys_are_written_where_the_primer_has_them(
      int chromatic, int diatonic, int sounding, int written) {
    Transposition transposition = new Transposition(diatonic, chromatic);
    assertEquals(written, Spelling.writtenKey(sounding, transposition));
  }

  @ParameterizedTest
  @CsvSource({
    // C major: B-flat clarinet writes D major
    "-2, -1, 0, C 0 5, D 0 5",
    "-2, -1, 0, E 0 4, F 1 4",
    "-2, -1, 0, B -1 3, C 0 4",
    // horn in F, C major
    "-7, -4, 0, F 0 3, C 0 4",
    "-7, -4, 0, F 1 4, C 1 5",
    "-7, -4, 0, B 0 3, F 1 4",
    // clarinet in A, D major: F is written, B-flat of the key
    "-3, -2, 2, D 0 5, F 0 5",
    "-3, -2, 2, F 1 4, A 0 4",
    "-3, -2, 2, G 0 4, B -1 4",
    // piccolo
    "12, 7, 0, C 0 6, C 0 5",
    // no transposition: the line's own spelling stays
    "0, 0, 0, G 1 4, G 1 4",
    "0, 0, 0, A -1 4, A -1 4",
    // B-flat clarinet where F-sharp major sounds: written in A-flat major, letters change
    "-2, -1, 6, F 1 4, A -1 4",
    "-2, -1, 6, E 1 4, G 0 4",
    "-2, -1, 6, B 0 4, D -1 5"
  })
  void pitches_are_written_where_the_primer_has_them(
      int chromatic, int diatonic, int soundingKey, String sounding, String written) {
    Transposition transposition = new Transposition(diatonic, chromatic);
    assertEquals(
        pitch(written),
        Spelling.written(
            pitch(sounding),
            transposition,
            soundingKey,
            Spelling.writtenKey(soundingKey, transposition)));
  }

  private static Pitch pitch(String text) {
    String[] words = text.split(" ", -1);
    return new Pitch(
        Step.valueOf(words[0]), Integer.parseInt(words[1]), Integer.parseInt(words[2]));
  }

  @Property
  void what_is_written_sounds_as_it_should_and_has_no_double_accidental(
      @ForAll Step step,
      @ForAll @IntRange(min = -2, max = 2) int alter,
      @ForAll @IntRange(min = 0, max = 8) int octave,
      @ForAll @IntRange(min = -7, max = 7) int key,
      @ForAll @IntRange(max = 5) int instrument) {
    Transposition transposition =
        new Transposition[] {
              Transposition.NONE,
              new Transposition(-1, -2),
              new Transposition(-2, -3),
              new Transposition(-4, -7),
              new Transposition(-5, -9),
              new Transposition(7, 12)
            }
            [instrument];
    Pitch sounding = new Pitch(step, alter, octave);
    int partKey = Spelling.writtenKey(key, transposition);
    Pitch written = Spelling.written(sounding, transposition, key, partKey);
    assertEquals(sounding.midi(), written.midi() + transposition.chromatic());
    assertTrue(Math.abs(written.alter()) <= 1, written.toString());
    assertTrue(Math.abs(partKey) <= 7);
  }
}
