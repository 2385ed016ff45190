package stafette.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Refusal;

class TempiWishTest {
  @Property
  void around_any_tempo_there_are_about_eight_marks_and_the_present_one_among_them(
      @ForAll @IntRange(min = 10, max = 1000) int perMinute) {
    TempoMark present = quarters(Rational.of(perMinute));
    List<TempoMark> marks = TempiWish.around(present).with(present);
    assertTrue(marks.contains(present));
    assertTrue(marks.size() >= 5 && marks.size() <= 13, marks.toString());
    double slowest = marks.get(0).perMinute().toDouble();
    double fastest = marks.get(marks.size() - 1).perMinute().toDouble();
    assertTrue(slowest >= perMinute * 0.7 && fastest <= perMinute * 1.3, marks.toString());
    for (int i = 1; i < marks.size(); i++) {
      assertTrue(marks.get(i - 1).perMinute().compareTo(marks.get(i).perMinute()) < 0);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "104|80 88 96 104 112 120 128",
        "120|90 100 110 120 130 140 150",
        "60|45 50 55 60 65 70 75",
      })
  void usual_tempi_get_round_marks(long perMinute, String expected) {
    TempoMark present = quarters(Rational.of(perMinute));
    assertEquals(expected, text(TempiWish.around(present).with(present)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "80-100/4|80 84 88 92 92.5 96 100",
        "90 – 95 / 2|90 92 92.5 94",
        "quarter = 60-64/2|60 62 64 92.5",
        "half = 40-50/5|40 45 46.25 50",
        "91-91|91 92.5",
      })
  void tempi_are_read_as_people_write_them(String wish, String expected) throws Refusal {
    assertEquals(expected, text(TempiWish.parse(wish).with(quarters(Rational.parse("92.5")))));
  }

  @Test
  void the_unit_asked_for_is_that_of_all_marks() throws Refusal {
    List<TempoMark> marks =
        TempiWish.parse("dotted quarter = 60-80/10").with(quarters(Rational.of(96)));
    assertEquals("dotted quarter = 64", marks.get(1).toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "80",
        "100-80",
        "0-80",
        "80-3000",
        "80-100/0",
        "1-2000/1",
        "a-b",
        "banana = 80-90"
      })
  void anything_else_is_refused_with_what_to_write(String wish) {
    Refusal refusal = assertThrows(Refusal.class, () -> TempiWish.parse(wish));
    assertTrue(
        String.valueOf(refusal.getMessage())
            .matches("write .*|.* is no note value|tempi lie .*|.* step .*"),
        refusal.getMessage());
  }

  private static String text(List<TempoMark> marks) {
    return String.join(
        " ", marks.stream().map(mark -> mark.toString().replaceAll(".* = ", "")).toList());
  }

  private static TempoMark quarters(Rational perMinute) {
    return new TempoMark(BeatUnit.QUARTER, perMinute);
  }
}
