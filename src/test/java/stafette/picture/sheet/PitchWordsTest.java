package stafette.picture.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import stafette.score.Transposition;

/** At what pitch notes are read. */
class PitchWordsTest {
  /** Common practice: how the usual transposing instruments sound; no source. */
  @Test
  void intervals_have_their_usual_names() {
    assertEquals("a major second", PitchWords.interval(new Transposition(-1, -2)).toString());
    assertEquals("a perfect fifth", PitchWords.interval(new Transposition(-4, -7)).toString());
    assertEquals("a minor third", PitchWords.interval(new Transposition(2, 3)).toString());
    assertEquals("a major sixth", PitchWords.interval(new Transposition(-5, -9)).toString());
    assertEquals("an octave", PitchWords.interval(new Transposition(7, 12)).toString());
    assertEquals(
        "an octave and a major second", PitchWords.interval(new Transposition(-8, -14)).toString());
    assertEquals("2 octaves", PitchWords.interval(new Transposition(14, 24)).toString());
  }
}
