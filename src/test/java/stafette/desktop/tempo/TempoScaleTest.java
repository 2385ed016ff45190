package stafette.desktop.tempo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Where tempi stand on the strip. */
class TempoScaleTest {
  @Property(tries = 300)
  void a_place_on_the_strip_is_found_again_by_its_tempo(
      @ForAll @DoubleRange(min = 20, max = 400) double now,
      @ForAll @DoubleRange(min = 0.3, max = 1) double slowest,
      @ForAll @DoubleRange(min = 1, max = 3) double fastest,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    TempoScale scale = TempoScale.around(now, now * slowest, now * fastest, 700);
    assertEquals(share * 700, scale.x(scale.perMinuteAt(share * 700)), 1e-6);
  }

  @Property(tries = 300)
  void the_present_tempo_and_both_ends_of_its_window_stand_inside(
      @ForAll @DoubleRange(min = 20, max = 400) double now,
      @ForAll @DoubleRange(min = 0.3, max = 1) double slowest,
      @ForAll @DoubleRange(min = 1, max = 3) double fastest) {
    TempoScale scale = TempoScale.around(now, now * slowest, now * fastest, 700);
    double from = scale.x(now * slowest);
    double to = scale.x(now * fastest);
    assertTrue(0 < from && from <= scale.x(now) && scale.x(now) <= to && to < 700);
  }

  @Example
  void equal_ratios_are_equally_wide() {
    TempoScale scale = new TempoScale(50, 200, 600);
    assertEquals(300, scale.x(100), 1e-9);
    assertEquals(scale.x(150) - scale.x(100), scale.x(120) - scale.x(80), 1e-9);
  }

  @Example
  void tempi_beyond_the_strip_stand_at_its_nearer_end() {
    TempoScale scale = new TempoScale(50, 200, 600);
    assertEquals(0, scale.x(10), 0);
    assertEquals(600, scale.x(1000), 0);
  }

  @Example
  void a_window_without_ends_leaves_the_strip_finite() {
    TempoScale scale = TempoScale.around(120, 0, Double.POSITIVE_INFINITY, 600);
    assertTrue(scale.slowest() > 0 && scale.fastest() < 1000);
  }

  @Example
  void a_strip_stays_while_a_tempo_and_its_window_have_room_on_it() {
    TempoScale strip = TempoScale.around(100, 80, 110, 400);
    assertTrue(strip.hasRoomFor(120, 0, 0));
    assertTrue(strip.hasRoomFor(120, 80, Double.POSITIVE_INFINITY));
    assertFalse(strip.hasRoomFor(strip.fastest(), 0, 0));
    assertFalse(strip.hasRoomFor(100, strip.slowest() / 2, 110));
  }
}
