package stafette.desktop.relay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.desktop.ShownRelays;
import stafette.desktop.relay.RelayGestures.HandoffEnd;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/** Time to pixels, lanes, snapping and reach: all without a screen. */
class ScalesTest {
  private static final Line LINE = Invented.line(8, 4, 120);
  private static final List<Bar> BARS = bars(LINE);

  private static final Viewport PORT = new Viewport(900, 400, 1);
  private static final TimeScale WHOLE = TimeScale.whole(BARS, 60, PORT);

  private static List<Bar> bars(Line line) {
    return IntStream.range(0, 8).mapToObj(line.bars()::get).toList();
  }

  @Property(tries = 200)
  void a_pixel_and_its_time_are_each_others_inverse(
      @ForAll @DoubleRange(min = 1, max = 40) double zoom,
      @ForAll @DoubleRange(min = 0, max = 900) double x) {
    TimeScale scale = WHOLE.zoomed(zoom, 300);
    assertEquals(x, scale.x(scale.quartersAt(x)), 1e-6);
  }

  @Property(tries = 200)
  void zooming_keeps_what_is_under_the_mouse_unless_an_end_is_reached(
      @ForAll @DoubleRange(min = 1.1, max = 6) double factor,
      @ForAll @DoubleRange(min = 400, max = 500) double x) {
    TimeScale before = WHOLE.zoomed(4, 450);
    TimeScale after = before.zoomed(factor, x);
    assertEquals(before.quartersAt(x), after.quartersAt(x), 1e-6);
  }

  @Property(tries = 200)
  void nothing_beyond_the_ends_is_ever_scrolled_to(
      @ForAll @DoubleRange(min = 0.01, max = 60) double zoom,
      @ForAll @DoubleRange(min = -9000, max = 9000) double pixels) {
    TimeScale scale = WHOLE.zoomed(zoom, 450).scrolledBy(pixels);
    assertTrue(scale.x(0.0) <= 60 + 1e-6);
    assertTrue(scale.x(32.0) >= 900 - TimeScale.MARGIN - 1e-6);
  }

  @Test
  void only_bars_that_are_seen_are_drawn() {
    TimeScale scale = WHOLE.zoomed(8, 450);
    assertTrue(scale.row(BARS).bars().size() <= 3);
    assertEquals(8, WHOLE.row(BARS).bars().size());
  }

  @Test
  void a_stretch_is_shown_with_as_little_scrolling_as_it_takes() {
    TimeScale scale = WHOLE.zoomed(4, 0);
    Span late = new Span(Position.ofQuarters(20, 1), Position.ofQuarters(22, 1));
    TimeScale shown = scale.showing(late);
    assertEquals(900 - TimeScale.MARGIN, shown.x(late.end()), 1e-6);
    assertEquals(shown, shown.showing(late));
  }

  @Property(tries = 100)
  void the_middle_of_a_lane_is_in_that_lane(
      @ForAll @IntRange(min = 0, max = 5) int lane,
      @ForAll @DoubleRange(min = 0, max = 300) double scrolled) {
    LaneScale lanes = LaneScale.plain(6, PORT).scrolledTo(scrolled);
    double y = lanes.middle(lane);
    assertEquals(y < PORT.ruler() ? OptionalInt.empty() : OptionalInt.of(lane), lanes.laneAt(y));
  }

  @Test
  void a_place_snaps_to_the_nearest_stroke_and_to_a_beat_that_is_near_enough() {
    Snap onsets = Snap.toOnsets(LINE);
    assertEquals(9, onsets.stroke(2.3));
    assertEquals(8, onsets.beat(2.3));
    assertEquals(8, onsets.magnetic(2.2, 0.21));
    assertEquals(9, onsets.magnetic(2.2, 0.1));
    assertEquals(8, Snap.toEnds(LINE).stroke(2.3));
  }

  @Test
  void the_next_beat_is_found_and_never_beyond_the_line() {
    Snap snap = Snap.toOnsets(LINE);
    assertEquals(8, snap.beatFrom(5, 1));
    assertEquals(4, snap.beatFrom(5, -1));
    assertEquals(127, snap.beatFrom(126, 1));
    assertEquals(0, snap.strokeFrom(0, -1));
  }

  @Property(tries = 200)
  void a_moved_end_leaves_both_turns_something_and_opens_no_gap(
      @ForAll @IntRange(min = 0, max = 2) int which,
      @ForAll HandoffEnd end,
      @ForAll @IntRange(min = -5, max = 140) int stroke) {
    Plan plan = ShownRelays.plan();
    Handoff handoff = plan.handoffs().get(which);
    int moved = new HandoffReach(handoff).nearest(end, stroke);
    int first = handoff.enters().first();
    int last = handoff.leaves().last();
    int newFirst =
        end == HandoffEnd.ENTERS ? moved : end == HandoffEnd.BOTH ? first + moved - last : first;
    int newLast = end == HandoffEnd.ENTERS ? last : moved;
    assertTrue(newFirst > handoff.leaves().first() && newFirst <= newLast + 1);
    assertTrue(newLast >= handoff.leaves().first() && newLast < handoff.enters().last());
  }

  @Property(tries = 100)
  void the_clock_runs_as_the_lines_own(@ForAll @IntRange(min = 0, max = 127) int stroke) {
    double quarters = new BeatClock(LINE, BARS).quarters(LINE.onsetMicros(stroke));
    assertEquals(stroke / 4.0, quarters, 1e-4);
  }
}
