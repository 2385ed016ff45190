package stafette.desktop.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.plan.Handoff;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.plan.Turn;
import stafette.score.LineChoice;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Refusal;

/** Edits by hand that the plan has no place for: it stays as it is, and the reason is told. */
class ByHandTest {
  @TempDir private Path folder = Path.of("");
  private Opened desk = Opened.nothing();
  private ByHand byHand = desk.session().byHand();

  @BeforeEach
  void plan() throws Refusal {
    desk = Opened.lanternRun(folder);
    byHand = desk.session().byHand();
  }

  private void refuses(Runnable edit, String why) {
    Plan before = desk.plan();
    edit.run();
    assertEquals(before, desk.plan());
    assertEquals(1, desk.refused().size(), desk.refused().toString());
    assertTrue(desk.refused().get(0).contains(why), desk.refused().get(0));
  }

  @Test
  void a_handoff_dragged_beyond_its_neighbours_goes_back_and_says_why() {
    Handoff first = desk.plan().handoffs().get(0);
    int end = first.leaves().last();
    refuses(
        () -> {
          byHand.drag(new PlanEdit.Move(0, first.enters().first() + 6, end + 6));
          byHand.edit(new PlanEdit.Move(0, first.leaves().first(), end));
        },
        "begins and ends later");
  }

  @Test
  void a_handoff_put_back_where_it_was_is_no_step() {
    Handoff first = desk.plan().handoffs().get(0);
    Plan before = desk.plan();
    byHand.drag(new PlanEdit.Move(0, first.enters().first() + 6, first.leaves().last() + 6));
    byHand.edit(new PlanEdit.Move(0, first.enters().first(), first.leaves().last()));
    assertEquals(before, desk.plan());
    desk.session().undo();
    assertTrue(desk.session().desk().plan().isEmpty());
  }

  @Test
  void a_segment_is_not_divided_at_its_end() {
    refuses(() -> byHand.split(0, desk.plan().segments().get(0).last()), "notes of their own");
  }

  @Test
  void who_is_alone_has_nobody_to_divide_with() throws Refusal {
    LineChoice bars = Opened.bars("Piano", 1, "5-6", Optional.empty());
    desk = Opened.on(folder.resolve("alone"), "lantern-run.musicxml", bars, "Flute 1");
    desk.session().tempo(new TempoMark(BeatUnit.QUARTER, Rational.of(40)), true);
    desk.planned();
    byHand = desk.session().byHand();
    refuses(() -> byHand.split(0, 10), "nobody else");
  }

  @Test
  void a_hocket_that_the_rules_do_not_allow_says_where_to_allow_it() {
    refuses(() -> byHand.hocket(0), "no hocket");
  }

  @Test
  void a_segment_given_to_the_other_half_of_its_hocket_stays() throws Refusal {
    desk.session().rules().hocket(Hocket.BEAT);
    byHand.hocket(0);
    assertTrue(desk.plan().turns().get(0).isHocket());
    int other = desk.plan().segments().get(1).player();
    refuses(() -> byHand.give(0, other), "the other half");
  }

  @Test
  void whom_a_hocket_is_divided_to_has_no_part_in_it() throws Refusal {
    desk.session().rules().hocket(Hocket.BEAT);
    byHand.hocket(0);
    Turn pair = desk.plan().turns().get(0);
    byHand.split(0, (pair.first() + pair.last()) / 2 / 6 * 6);
    int second = desk.plan().turns().get(1).segments().get(0).player();
    assertFalse(pair.has(second));
  }
}
