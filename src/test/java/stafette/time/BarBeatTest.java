package stafette.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarBeatTest {
  private static BarBeat at(int beat, int passed, int parts) {
    return new BarBeat("7", Rational.of(beat).plus(Rational.of(passed, parts)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | 1 | bar 7, beat 4 | 7.4",
        "1 | 2 | bar 7, second half of beat 4 | 7.4, second half",
        "1 | 3 | bar 7, middle third of beat 4 | 7.4, middle third",
        "2 | 3 | bar 7, last third of beat 4 | 7.4, last third",
        "1 | 4 | bar 7, second quarter of beat 4 | 7.4, second quarter",
        "3 | 4 | bar 7, last quarter of beat 4 | 7.4, last quarter",
        "2 | 5 | bar 7, third fifth of beat 4 | 7.4, third fifth",
        "1 | 6 | bar 7, second sixth of beat 4 | 7.4, second sixth",
        "5 | 6 | bar 7, last sixth of beat 4 | 7.4, last sixth",
        "4 | 8 | bar 7, second half of beat 4 | 7.4, second half",
        "3 | 7 | bar 7, fourth seventh of beat 4 | 7.4, fourth seventh",
        "5 | 8 | bar 7, sixth eighth of beat 4 | 7.4, sixth eighth",
        "5 | 12 | bar 7, part 6 of 12 of beat 4 | 7.4, part 6 of 12",
      })
  void a_place_inside_a_beat_is_told_by_its_part(
      int passed, int parts, String sentence, String table) {
    assertEquals(sentence, at(4, passed, parts).toString());
    assertEquals(table, at(4, passed, parts).inShort().toString());
  }

  @Test
  void what_is_typed_and_what_machines_read_stays_a_fraction() {
    assertEquals("7.4+5/6", at(4, 5, 6).dotted());
    assertEquals("4+5/6", at(4, 5, 6).beatText());
  }

  @Property
  void nobody_reads_a_fraction(
      @ForAll @IntRange(min = 1, max = 9) int beat,
      @ForAll @IntRange(min = 0, max = 31) int passed,
      @ForAll @IntRange(min = 32, max = 48) int parts) {
    BarBeat place = at(beat, passed, parts);
    assertFalse((place + " " + place.inShort()).contains("/"), place.toString());
  }
}
