package stafette.desktop.relay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import javafx.scene.control.Labeled;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import stafette.check.Judge;
import stafette.desktop.PanelWindow;
import stafette.desktop.ShownRelays;
import stafette.desktop.Snapshot;
import stafette.desktop.window.Style;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** What is locked is seen to be, and said to be. */
@ExtendWith(ApplicationExtension.class)
class RelayLocksTest {
  private static final Plan FREE = ShownRelays.plan();
  private static final Plan LOCKED = locked();

  private Stage stage;
  private RelayView relay;

  @Start
  void start(Stage shown) {
    stage = shown;
    relay = RelayWindow.open(stage, new ArrayList<>(), FREE);
  }

  /** The first segment, the second handoff, a part of the third segment and an empty stretch. */
  private static Plan locked() {
    Segment first = FREE.segments().get(0);
    Segment third = FREE.segments().get(2);
    Handoff second = FREE.handoffs().get(1);
    List<Lock> locks =
        List.of(
            new Lock.Exactly(0, first.player(), OptionalInt.of(0), first.first(), first.last()),
            new Lock.At(0, second.enters().first(), second.leaves().last()),
            new Lock.In(0, third.player(), third.first() + 16, third.first() + 23),
            new Lock.Out(0, first.player(), 64, 79));
    return new Plan(FREE.brief().with(FREE.brief().rules().with(locks)), FREE.segments());
  }

  private Snapshot picture(FxRobot robot, Plan plan, String name) {
    robot.interact(() -> relay.show(plan, Judge.judge(plan)));
    return PanelWindow.picture(robot, stage, name);
  }

  @Test
  void a_locked_segment_and_handoff_are_held_in_clamps(FxRobot robot) {
    Snapshot free = picture(robot, FREE, "relay-free");
    Snapshot locked = picture(robot, LOCKED, "relay-locked");
    View view = RelayWindow.whole(LOCKED);
    double x = 132 + view.time().x(LOCKED.brief().line().stroke(0).onset());
    double foot = view.lanes().middle(0) + view.lanes().half();
    assertMoreInk(free, locked, x - 4, foot + 1, 60, 6);
    double neck = 132 + view.time().x(LOCKED.brief().line().stroke(64).onset());
    double below = view.lanes().middle(1) + view.lanes().half();
    assertMoreInk(free, locked, neck - 8, below + 6, 7, 12);
    assertMoreInk(free, locked, neck - 3, view.lanes().middle(0) - 18, 8, 12);
  }

  private static void assertMoreInk(
      Snapshot free, Snapshot locked, double x, double y, int width, int height) {
    double before = free.ink((int) x, (int) y, width, height);
    double after = locked.ink((int) x, (int) y, width, height);
    assertTrue(after > before + 0.1, before + " " + after);
  }

  @Test
  void a_lock_is_seen_in_the_dark_and_within_notes(FxRobot robot) {
    robot.interact(() -> Style.DARK.applyTo(relay.getScene()));
    picture(robot, LOCKED, "relay-locked-dark");
    robot.interact(() -> relay.zoom(6));
    Snapshot noted = picture(robot, LOCKED, "relay-locked-notes-dark");
    robot.interact(() -> Style.LIGHT.applyTo(relay.getScene()));
    picture(robot, LOCKED, "relay-locked-notes");
    assertTrue(noted.ink(400, 60, 200, 300) > 0.02);
  }

  @Test
  void a_lock_is_said(FxRobot robot) {
    robot.interact(() -> relay.show(LOCKED, Judge.judge(LOCKED)));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(words(robot, "#segment-1").endsWith(", locked"));
    assertTrue(words(robot, "#handoff-2").endsWith(", locked"));
    assertTrue(words(robot, "#segment-3").endsWith(", partly locked"));
    assertTrue(!words(robot, "#segment-2").contains("locked"));
    assertTrue(!words(robot, "#handoff-1").contains("locked"));
  }

  private static String words(FxRobot robot, String id) {
    return robot.lookup(id).query().getAccessibleText();
  }

  @Test
  void a_menu_unlocks_what_is_locked(FxRobot robot) {
    robot.interact(() -> relay.show(LOCKED, Judge.judge(LOCKED)));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("Unlock", offered(robot, "#segment-1"));
    assertEquals("Lock", offered(robot, "#segment-2"));
    assertEquals("Unlock this handoff", offered(robot, "#handoff-2"));
    assertEquals("Lock this handoff", offered(robot, "#handoff-3"));
  }

  private static String offered(FxRobot robot, String id) {
    robot.interact(
        () ->
            robot
                .lookup(id)
                .query()
                .fireEvent(
                    new ContextMenuEvent(
                        ContextMenuEvent.CONTEXT_MENU_REQUESTED, 5, 5, 400, 170, true, null)));
    String words = robot.lookup("#lock .label").<Labeled>query().getText();
    robot.type(KeyCode.ESCAPE);
    return words;
  }
}
