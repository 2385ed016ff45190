package stafette.desktop.relay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
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
import stafette.desktop.ShownRelays;
import stafette.desktop.texts.Texts;
import stafette.plan.Plan;

/** Drives the relay in a window, without a display. */
@ExtendWith(ApplicationExtension.class)
class RelayViewTest {
  private final List<String> told = new ArrayList<>();
  private final Plan plan = ShownRelays.plan();
  private RelayView relay;

  @Start
  void start(Stage stage) {
    relay = RelayWindow.open(stage, told, plan);
  }

  @Test
  void a_dragged_landing_tells_strokes_on_the_way_and_at_the_end(FxRobot robot) {
    double beat = pixelsPerQuarter();
    robot.drag("#handoff-1-leaves").moveBy(beat, 0).drop();
    assertTrue(told.size() >= 2, told::toString);
    assertEquals("move 0 LEAVES 36 done", told.get(told.size() - 1));
    assertTrue(told.get(0).endsWith("going"), told::toString);
  }

  @Test
  void a_drag_with_shift_lands_on_beats_only(FxRobot robot) {
    robot.press(KeyCode.SHIFT);
    robot.drag("#handoff-2").moveBy(pixelsPerQuarter() * 0.9, 0).drop();
    robot.release(KeyCode.SHIFT);
    assertEquals("move 1 BOTH 72 done", told.get(told.size() - 1));
  }

  @Test
  void a_segment_dragged_to_another_lane_is_given_to_its_player(FxRobot robot) {
    robot.drag("#segment-2").moveBy(0, lanes().laneHeight()).drop();
    assertTrue(told.contains("give 1 2"), told::toString);
  }

  @Test
  void arrows_move_what_has_the_keyboard_by_a_stroke_and_with_shift_by_a_beat(FxRobot robot) {
    robot.interact(() -> robot.lookup("#handoff-1").query().requestFocus());
    robot.type(KeyCode.RIGHT);
    robot.press(KeyCode.SHIFT).type(KeyCode.RIGHT).release(KeyCode.SHIFT);
    robot.interact(() -> robot.lookup("#segment-1").query().requestFocus());
    robot.type(KeyCode.DOWN, KeyCode.S, KeyCode.L, KeyCode.H);
    assertEquals(
        List.of(
            "move 0 BOTH 33 done",
            "move 0 BOTH 36 done",
            "give 0 1",
            "split 0 16",
            "lock 0",
            "hocket 0"),
        told);
  }

  @Test
  void whatever_can_be_taken_hold_of_says_what_it_is(FxRobot robot) {
    assertEquals(
        "Segment 2: Flute 2, tonguing, bar 3, beat 1 to bar 5, beat 2, strain " + percent(1),
        robot.lookup("#segment-2").query().getAccessibleText());
    assertEquals(
        "Handoff 2: Flute 2 to Oboe 1, bar 5, beat 1 to bar 5, beat 2",
        robot.lookup("#handoff-2").query().getAccessibleText());
  }

  @Test
  void a_plan_that_only_moves_keeps_its_nodes(FxRobot robot) {
    Node before = robot.lookup("#handoff-1-leaves").query();
    robot.interact(() -> relay.show(plan, Judge.judge(plan)));
    assertTrue(before == robot.lookup("#handoff-1-leaves").query());
  }

  @Test
  void escape_gives_a_drag_up(FxRobot robot) {
    robot.drag("#handoff-1-enters").moveBy(-pixelsPerQuarter(), 0);
    robot.type(KeyCode.ESCAPE);
    robot.drop();
    assertEquals("cancel", told.get(told.size() - 1));
  }

  @Test
  void a_menu_offers_all_that_keys_do(FxRobot robot) {
    robot.interact(
        () ->
            robot
                .lookup("#segment-2")
                .query()
                .fireEvent(
                    new ContextMenuEvent(
                        ContextMenuEvent.CONTEXT_MENU_REQUESTED, 30, 5, 400, 170, true, null)));
    robot.clickOn("#lock");
    assertEquals(List.of("lock 1"), told);
  }

  @Test
  void without_a_plan_it_says_what_to_do(FxRobot robot) {
    robot.interact(() -> relay.clear("No plan yet."));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(robot.lookup("No plan yet.").tryQuery().isPresent());
    assertTrue(robot.lookup("#segment-1").tryQuery().isEmpty());
  }

  private String percent(int segment) {
    double strain = Judge.judge(plan).segments().get(segment).strain();
    return Texts.in(Locale.ENGLISH).percent(strain);
  }

  private LaneScale lanes() {
    return RelayWindow.whole(plan).lanes();
  }

  private double pixelsPerQuarter() {
    return RelayWindow.whole(plan).time().pixelsPerQuarter();
  }
}
