package stafette.desktop.playing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.desktop.ShownRelays;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** What somebody wants to hear. */
class HearingWishTest {
  private static final Plan PLAN = ShownRelays.plan();

  @Test
  void the_handoff_that_comes_next_is_meant_until_another_is_chosen() {
    assertEquals(OptionalInt.of(0), HearingWish.PLAIN.handoffIn(PLAN));
    assertEquals(OptionalInt.of(1), HearingWish.PLAIN.from(entryMicros(1)).handoffIn(PLAN));
    assertEquals(OptionalInt.of(2), HearingWish.PLAIN.from(entryMicros(1) + 1).handoffIn(PLAN));
    assertEquals(OptionalInt.of(2), HearingWish.PLAIN.from(Long.MAX_VALUE).handoffIn(PLAN));
    assertEquals(OptionalInt.of(2), HearingWish.PLAIN.withHandoff(2).handoffIn(PLAN));
    assertEquals(OptionalInt.of(0), HearingWish.PLAIN.withHandoff(2).from(0).handoffIn(PLAN));
    assertEquals(OptionalInt.of(0), HearingWish.PLAIN.withHandoff(9).handoffIn(PLAN));
  }

  @Test
  void a_stretch_reaches_two_seconds_beyond_the_overlap() {
    assertEquals(Optional.empty(), HearingWish.PLAIN.stretch(PLAN));
    LoopStretch stretch = HearingWish.PLAIN.again(true).withHandoff(1).stretch(PLAN).orElseThrow();
    assertEquals(entryMicros(1) - 2_000_000, stretch.fromMicros());
    Handoff second = PLAN.handoffs().get(1);
    assertEquals(PLAN.line().endMicros(second.leaves().last()) + 2_000_000, stretch.toMicros());
    assertTrue(stretch.contains(stretch.fromMicros()));
    assertTrue(!stretch.contains(stretch.toMicros()));
  }

  @Test
  void a_plan_without_handoffs_repeats_nothing() {
    Brief brief = PLAN.brief();
    Plan one = new Plan(brief, List.of(new Segment(0, 0, 0, brief.line().count() - 1)));
    assertEquals(OptionalInt.empty(), HearingWish.PLAIN.again(true).handoffIn(one));
    assertEquals(Optional.empty(), HearingWish.PLAIN.again(true).stretch(one));
  }

  @Test
  void only_speeds_that_are_offered_can_be_wished() {
    assertEquals(25, HearingWish.PLAIN.at(25).percent());
    assertThrows(IllegalArgumentException.class, () -> HearingWish.PLAIN.at(24));
    assertThrows(IllegalArgumentException.class, () -> HearingWish.PLAIN.at(151));
  }

  private static long entryMicros(int handoff) {
    return PLAN.line().onsetMicros(PLAN.handoffs().get(handoff).enters().first());
  }
}
