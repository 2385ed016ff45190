package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.desktop.ShownRelays;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** Locks that are put on and taken off, also those that a plan file brought. */
class LockingTest {
  private static final Plan PLAN = ShownRelays.plan();
  private static final Segment SEGMENT = PLAN.segments().get(1);
  private static final Handoff HANDOFF = PLAN.handoffs().get(1);
  private static final Lock OTHER = new Lock.Out(0, 2, 0, 7);

  @Test
  void a_segment_is_locked_and_unlocked_again() {
    List<Lock> locked = Locking.toggled(List.of(OTHER), SEGMENT);
    assertEquals(2, locked.size());
    assertTrue(locked.stream().anyMatch(lock -> Lock.keeps(lock, SEGMENT)));
    assertEquals(List.of(OTHER), Locking.toggled(locked, SEGMENT));
  }

  @Test
  void a_handoff_is_locked_and_unlocked_again() {
    List<Lock> locked = Locking.toggled(List.of(OTHER), HANDOFF);
    assertTrue(locked.stream().anyMatch(lock -> Lock.keeps(lock, HANDOFF)));
    assertEquals(List.of(OTHER), Locking.toggled(locked, HANDOFF));
  }

  @Test
  void a_lock_that_says_less_keeps_a_segment_too_and_goes_with_one_step() {
    Lock anySkill =
        new Lock.Exactly(0, SEGMENT.player(), OptionalInt.empty(), SEGMENT.first(), SEGMENT.last());
    Lock within = new Lock.In(0, SEGMENT.player(), SEGMENT.first(), SEGMENT.last());
    assertEquals(List.of(OTHER), Locking.toggled(List.of(anySkill, OTHER, within), SEGMENT));
  }

  @Test
  void a_lock_about_other_strokes_players_or_skills_keeps_no_segment() {
    int first = SEGMENT.first();
    int last = SEGMENT.last();
    assertFalse(Lock.keeps(new Lock.In(0, SEGMENT.player(), first, last - 1), SEGMENT));
    assertFalse(Lock.keeps(new Lock.In(0, SEGMENT.player() + 1, first, last), SEGMENT));
    assertFalse(Lock.keeps(new Lock.Out(0, SEGMENT.player(), first, last), SEGMENT));
    assertFalse(
        Lock.keeps(
            new Lock.Exactly(0, SEGMENT.player(), OptionalInt.of(SEGMENT.way() + 1), first, last),
            SEGMENT));
  }
}
