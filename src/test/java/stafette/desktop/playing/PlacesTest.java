package stafette.desktop.playing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;

/** Where a plan can be heard from. */
class PlacesTest {
  /** Two bars of four quarters of half a second, four strokes to each. */
  private static final Places PLACES = places(120);

  private static Places places(long quartersPerMinute) {
    Line line = Invented.line(2, 4, quartersPerMinute);
    Brief brief =
        Invented.brief(
            line, Invented.player("Piper 1", Invented.instrument("pipe"), 13, 10, 100, 8));
    return Places.of(new Plan(brief, List.of(new Segment(0, 0, 0, line.count() - 1))));
  }

  @Test
  void goes_from_beat_to_beat_and_no_further_than_there_are_beats() {
    assertEquals(0, PLACES.first());
    assertEquals(500_000, PLACES.next(0));
    assertEquals(1_000_000, PLACES.next(600_000));
    assertEquals(500_000, PLACES.previous(600_000));
    assertEquals(0, PLACES.previous(500_000));
    assertEquals(0, PLACES.previous(0));
    assertEquals(3_500_000, PLACES.next(3_500_000));
    assertEquals(3_500_000, PLACES.next(9_000_000));
  }

  @Test
  void names_the_beat_or_stroke_that_has_begun() {
    assertEquals("2.1", PLACES.name(2_000_000).dotted());
    assertEquals("1.1+1/4", PLACES.name(125_000).dotted());
    assertEquals("1.1+1/4", PLACES.name(249_999).dotted());
    assertEquals("1.1", PLACES.name(-5).dotted());
  }

  @Test
  void takes_the_nearest_beat_or_stroke() {
    assertEquals(125_000, PLACES.nearest(130_000));
    assertEquals(250_000, PLACES.nearest(200_000));
    assertEquals(0, PLACES.nearest(-1_000));
    assertEquals(3_875_000, PLACES.nearest(99_000_000));
  }

  @Test
  void finds_a_bar_or_a_bar_and_a_beat_in_what_is_typed() {
    assertEquals(OptionalLong.of(2_000_000), PLACES.find("2"));
    assertEquals(OptionalLong.of(2_000_000), PLACES.find("Takt 2"));
    assertEquals(OptionalLong.of(3_000_000), PLACES.find("bar 2, beat 3"));
    assertEquals(OptionalLong.of(125_000), PLACES.find("bar 1, beat 1+1/4"));
    assertEquals(OptionalLong.empty(), PLACES.find("3"));
    assertEquals(OptionalLong.empty(), PLACES.find("2 9"));
    assertEquals(OptionalLong.empty(), PLACES.find("the end"));
  }

  @Test
  void the_same_place_comes_earlier_at_a_faster_tempo() {
    assertEquals(1_000_000, PLACES.carried(2_000_000, places(240)));
    assertEquals(312_500, PLACES.carried(625_000, places(240)));
    assertEquals(4_000_000, places(60).carried(8_000_000, PLACES));
  }
}
