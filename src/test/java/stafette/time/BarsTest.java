package stafette.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * Metrical ranks: common practice, no source, apart from the beat of compound time, which any
 * primer of music theory gives.
 */
class BarsTest {
  @Test
  void four_four_has_its_beats_on_quarters_and_halves_of_them_between() {
    assertEquals(List.of(0, 3, 2, 3, 1, 3, 2, 3), ranks(Meter.of(List.of(4), 4), 1, 4, 8));
  }

  @Test
  void six_eight_has_two_dotted_beats_in_thirds() {
    assertEquals(
        List.of(0, 3, 2, 3, 2, 3, 1, 3, 2, 3, 2, 3), ranks(Meter.of(List.of(6), 8), 1, 4, 12));
  }

  @Test
  void three_eight_is_counted_in_three() {
    assertEquals(List.of(0, 2, 1, 2, 1, 2), ranks(Meter.of(List.of(3), 8), 1, 4, 6));
  }

  @Test
  void additive_metres_follow_their_groups() {
    assertEquals(
        List.of(0, 3, 2, 3, 2, 3, 1, 3, 2, 3), ranks(Meter.of(List.of(3, 2), 8), 1, 4, 10));
  }

  @Test
  void a_group_of_four_eighths_is_halved_not_divided_in_three() {
    assertEquals(List.of(0, 3, 2, 3, 1), ranks(Meter.of(List.of(4, 3), 8), 1, 2, 5));
  }

  @Test
  void triplets_in_simple_time_fall_elsewhere() {
    assertEquals(List.of(0, 3, 3, 1), ranks(Meter.COMMON, 1, 3, 4));
  }

  @Test
  void a_pickup_counts_from_the_end_of_its_bar() {
    Bar pickup =
        new Bar(
            0, "0", Span.of(Position.START, Length.QUARTER), Meter.COMMON, Length.ofQuarters(3, 1));
    Bar full =
        new Bar(
            1,
            "1",
            Span.of(Position.ofQuarters(1, 1), Length.ofQuarters(4, 1)),
            Meter.COMMON,
            Length.ZERO);
    Bars bars = new Bars(List.of(pickup, full));
    assertEquals("bar 0, beat 4", bars.nameOf(Position.START).toString());
    assertEquals("bar 0, second half of beat 4", bars.nameOf(Position.ofQuarters(1, 2)).toString());
    assertEquals(Rank.BEAT, bars.rankOf(Position.START));
    assertEquals("bar 1, beat 1", bars.nameOf(Position.ofQuarters(1, 1)).toString());
  }

  @Test
  void each_position_finds_its_bar() {
    Bars bars = Bars.regular(Meter.of(List.of(3), 4), 5);
    for (int quarter = 0; quarter < 15; quarter++) {
      assertEquals(quarter / 3, bars.at(Position.ofQuarters(quarter, 1)).index());
    }
    assertEquals(4, bars.at(Position.ofQuarters(99, 1)).index());
  }

  @Test
  void bars_must_follow_one_another() {
    Bar late = new Bar(0, "1", Span.of(Position.START, Length.QUARTER), Meter.COMMON, Length.ZERO);
    assertThrows(IllegalArgumentException.class, () -> new Bars(List.of(late, late)));
  }

  @Test
  void a_pickup_of_two_sixteenths_begins_within_a_beat_that_lies_before_the_score() {
    Bars bars = pickup(Meter.COMMON, Length.ofQuarters(1, 2));
    Bar first = bars.get(0);
    assertEquals("bar 0, second half of beat 4", bars.nameOf(Position.START).toString());
    assertEquals(Rank.HALF, bars.rankOf(Position.START));
    assertEquals(Position.ofQuarters(-1, 2), first.beatStart(Position.START));
    assertEquals(List.of(new Span(Position.START, Position.ofQuarters(1, 2))), first.beats());
  }

  @Property
  void a_bar_of_any_length_is_the_sum_of_its_beats_and_each_place_lies_within_its_own(
      @ForAll @IntRange(min = 1, max = 40) int sixteenths,
      @ForAll @IntRange(min = 1, max = 15) int upper,
      @ForAll("lowerFigures") int lower,
      @ForAll boolean fromTheEnd) {
    Meter meter = Meter.of(List.of(upper), lower);
    Length length = Length.ofQuarters(sixteenths, 4);
    Bars bars = fromTheEnd ? pickup(meter, length) : shortened(meter, length);
    Bar bar = bars.get(0);
    assertEquals(length, bar.beats().stream().map(Span::length).reduce(Length.ZERO, Length::plus));
    for (int i = 0; i < sixteenths; i++) {
      Position at = Position.ofQuarters(i, 4);
      Span beat = Span.of(bar.beatStart(at), bar.beatLengthAt(at));
      assertTrue(beat.contains(at), beat + " " + at);
      assertEquals(at.equals(beat.start()), bar.rankOf(at).compareTo(Rank.BEAT) <= 0);
    }
  }

  @Provide
  Arbitrary<Integer> lowerFigures() {
    return Arbitraries.of(1, 2, 4, 8, 16);
  }

  @Test
  void past_the_end_of_the_metre_the_last_beat_goes_on() {
    Meter meter = Meter.of(List.of(3, 2), 8);
    Bar bar = new Bar(0, "1", Span.of(Position.START, Length.ofQuarters(5, 1)), meter, Length.ZERO);
    assertEquals("bar 1, beat 4", bar.nameOf(Position.ofQuarters(7, 2)).toString());
    assertEquals(Rank.BEAT, bar.rankOf(Position.ofQuarters(7, 2)));
    assertEquals(5, bar.beats().size());
  }

  /** Counted one by one, these beats would not be through before the sun is out. */
  @Test
  void a_place_is_found_at_once_however_long_the_bar() {
    long quarters = 1L << 50;
    Bar bar =
        new Bar(
            0,
            "1",
            Span.of(Position.START, Length.ofQuarters(quarters, 1)),
            Meter.COMMON,
            Length.ZERO);
    Position last = Position.ofQuarters(2 * quarters - 1, 2);
    assertEquals("bar 1, second half of beat " + quarters, bar.nameOf(last).toString());
    assertEquals(Rank.HALF, bar.rankOf(last));
  }

  @Test
  void a_metre_has_no_beats_of_nothing() {
    assertThrows(IllegalArgumentException.class, () -> new Meter(List.of(Length.ZERO)));
    assertThrows(IllegalArgumentException.class, () -> new Meter(List.of()));
  }

  @Test
  void a_movement_begins_where_numbers_fall_back_to_the_first() {
    assertEquals("[1, 1, 1, 2, 2, 3, 3, 3]", movements("1", "2", "3", "1", "2", "0", "1", "2"));
  }

  @Test
  void a_second_ending_with_the_numbers_of_the_first_is_no_movement() {
    assertEquals("[]", movements("1", "2", "3", "4", "3", "4", "5"));
  }

  @Test
  void bars_without_a_number_and_bars_in_two_halves_are_no_movements() {
    assertEquals("[]", movements("1", "1", "X1", "2", "2a", "3"));
  }

  @Test
  void only_the_first_movement_has_the_title_that_the_file_prints() {
    Bars bars = new Bars(numbered("1", "2", "1"), Optional.of("Allegro"));
    assertEquals("Allegro", bars.movementOf(bars.get(1)).orElseThrow().toString());
    assertEquals("movement 2", bars.movementOf(bars.get(2)).orElseThrow().toString());
    assertTrue(bars.isPrintedOnce("2") && !bars.isPrintedOnce("1") && !bars.isPrintedOnce("3"));
  }

  private static String movements(String... numbers) {
    Bars bars = new Bars(numbered(numbers));
    List<Integer> movements = new ArrayList<>();
    bars.forEach(bar -> bars.movementOf(bar).ifPresent(found -> movements.add(found.number())));
    return movements.toString();
  }

  private static List<Bar> numbered(String... numbers) {
    List<Bar> bars = new ArrayList<>();
    for (String number : numbers) {
      Position start = Position.ofQuarters(4L * bars.size(), 1);
      Span span = Span.of(start, Length.ofQuarters(4, 1));
      bars.add(new Bar(bars.size(), number, span, Meter.COMMON, Length.ZERO));
    }
    return bars;
  }

  private static Bars pickup(Meter meter, Length length) {
    Length whole = meter.length();
    Length lead = whole.compareTo(length) > 0 ? whole.minus(length) : Length.ZERO;
    return new Bars(List.of(new Bar(0, "0", Span.of(Position.START, length), meter, lead)));
  }

  private static Bars shortened(Meter meter, Length length) {
    return new Bars(List.of(new Bar(0, "1", Span.of(Position.START, length), meter, Length.ZERO)));
  }

  private static List<Integer> ranks(Meter meter, int numerator, int denominator, int count) {
    Bars bars = Bars.regular(meter, 3);
    List<Integer> ranks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ranks.add(bars.rankOf(Position.ofQuarters((long) i * numerator, denominator)).ordinal());
    }
    return ranks;
  }
}
