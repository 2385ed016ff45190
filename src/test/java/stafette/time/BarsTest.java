package stafette.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
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
    assertEquals("bar 0, beat 4+1/2", bars.nameOf(Position.ofQuarters(1, 2)).toString());
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

  private static List<Integer> ranks(Meter meter, int numerator, int denominator, int count) {
    Bars bars = Bars.regular(meter, 3);
    List<Integer> ranks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ranks.add(bars.rankOf(Position.ofQuarters((long) i * numerator, denominator)).ordinal());
    }
    return ranks;
  }
}
