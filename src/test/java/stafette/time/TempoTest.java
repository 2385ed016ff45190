package stafette.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.RoundingMode;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TempoTest {
  private static final BeatUnit DOTTED_QUARTER = BeatUnit.parse("dotted quarter").orElseThrow();

  /**
   * Metronome arithmetic, by definition of the mark: strokes a second = mark × notes per beat ÷ 60.
   */
  @Property
  void strokes_a_second_are_the_mark_times_notes_per_beat_over_sixty(
      @ForAll @IntRange(min = 20, max = 300) int mark,
      @ForAll @IntRange(min = 1, max = 12) int notes) {
    TempoMap map = TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(mark)));
    Rational gap = map.secondsOf(Span.of(Position.START, Length.ofQuarters(1, notes)));
    assertEquals(Rational.of((long) mark * notes, 60), Rational.ONE.dividedBy(gap));
  }

  @Test
  void a_dotted_quarter_counts_three_eighths() {
    TempoMark mark = new TempoMark(DOTTED_QUARTER, Rational.of(92));
    assertEquals(Rational.of(138), mark.quartersPerMinute());
    assertEquals("dotted quarter = 92", mark.toString());
    assertEquals("quarter = 138", mark.in(BeatUnit.QUARTER).toString());
  }

  @Test
  void marks_are_shown_rounded_the_way_that_is_asked_for() {
    TempoMark mark = new TempoMark(BeatUnit.QUARTER, Rational.of(1015, 10));
    assertEquals("quarter = 101", mark.inWords(RoundingMode.FLOOR, 0).toString());
    assertEquals("quarter = 102", mark.inWords(RoundingMode.CEILING, 0).toString());
    assertEquals("quarter = 101.5", mark.toString());
  }

  @Test
  void a_tempo_of_zero_is_refused() {
    assertThrows(
        IllegalArgumentException.class, () -> new TempoMark(BeatUnit.QUARTER, Rational.ZERO));
  }

  @Test
  void the_first_mark_holds_from_the_start_of_the_score() {
    TempoMap map =
        TempoMap.of(
            Map.of(
                Position.ofQuarters(4, 1), new TempoMark(BeatUnit.QUARTER, Rational.of(60)),
                Position.ofQuarters(8, 1), new TempoMark(BeatUnit.QUARTER, Rational.of(120))));
    assertEquals(Rational.of(9), map.secondsAt(Position.ofQuarters(10, 1)));
  }

  @Property
  void scaling_the_tempo_scales_every_clock_time(
      @ForAll @IntRange(min = 1, max = 400) int percent, @ForAll @IntRange(max = 40) int quarters) {
    TempoMap map =
        TempoMap.of(
            Map.of(
                Position.START,
                new TempoMark(BeatUnit.QUARTER, Rational.of(73)),
                Position.ofQuarters(7, 3),
                new TempoMark(DOTTED_QUARTER, Rational.of(91)),
                Position.ofQuarters(20, 1),
                new TempoMark(BeatUnit.QUARTER, Rational.of(101))));
    Rational factor = Rational.of(percent, 100);
    Position at = Position.ofQuarters(quarters, 1);
    assertEquals(map.secondsAt(at), map.times(factor).secondsAt(at).times(factor));
  }

  @Test
  void a_hundred_stepped_marks_stay_exact() {
    Map<Position, TempoMark> marks = new java.util.HashMap<>();
    Rational expected = Rational.ZERO;
    for (int i = 0; i < 100; i++) {
      Rational perMinute = Rational.of(6000 + 37L * i, 97);
      marks.put(Position.ofQuarters(i, 1), new TempoMark(BeatUnit.QUARTER, perMinute));
      expected = expected.plus(Rational.of(60).dividedBy(perMinute));
    }
    assertEquals(expected, TempoMap.of(marks).secondsAt(Position.ofQuarters(100, 1)));
  }

  @Test
  void before_the_start_of_the_score_the_clock_runs_on_backwards() {
    TempoMap map = TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(60)));
    Position before = Position.ofQuarters(-1, 2);
    assertEquals(Rational.of(-1, 2), map.secondsAt(before));
    assertEquals(Rational.ONE, map.secondsOf(Span.of(before, Length.QUARTER)));
  }

  /** As a played tempo is written down: thousands of marks, no two of them alike. */
  @Test
  void thousands_of_odd_marks_do_not_make_endless_fractions() {
    Map<Position, TempoMark> marks = new java.util.HashMap<>();
    for (int i = 0; i < 4_000; i++) {
      Rational perMinute = Rational.of(92_123_456_789L + 7_919L * i * i, 1_000_000_000);
      marks.put(Position.ofQuarters(i, 1), new TempoMark(BeatUnit.QUARTER, perMinute));
    }
    TempoMap map = TempoMap.of(marks);
    double seconds = 0;
    for (TempoMark mark : marks.values()) {
      seconds += 60 / mark.perMinute().toDouble();
    }
    Rational last = map.secondsAt(Position.ofQuarters(4_000, 1));
    assertTrue(last.denominator().bitLength() < 5_000, () -> "" + last.denominator().bitLength());
    assertEquals(seconds, last.toDouble(), 1e-6);
  }

  @Test
  void units_are_found_by_length() {
    assertEquals("dotted quarter", BeatUnit.of(Length.ofQuarters(3, 2)).orElseThrow().name());
    assertEquals("half", BeatUnit.of(Length.ofQuarters(2, 1)).orElseThrow().name());
    assertEquals(true, BeatUnit.of(Length.ofQuarters(5, 2)).isEmpty());
  }
}
