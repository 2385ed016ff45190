package stafette.desktop.relay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import javafx.geometry.Bounds;
import javafx.scene.control.ScrollBar;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
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
import stafette.plan.Plan;

/** How the relay is zoomed and scrolled, and how it fits its window. */
@ExtendWith(ApplicationExtension.class)
class RelayZoomTest {
  private static final Plan PLAN = ShownRelays.plan();

  private Stage stage;
  private RelayView relay;

  @Start
  void start(Stage shown) {
    stage = shown;
    relay = RelayWindow.open(stage, new ArrayList<>(), PLAN);
  }

  private static Bounds bounds(FxRobot robot, String id) {
    WaitForAsyncUtils.waitForFxEvents();
    return robot.lookup(id).query().getBoundsInParent();
  }

  /** Turns the wheel over the canvas; x from its left edge. */
  private void wheel(FxRobot robot, double x, double turned, boolean control, boolean shift) {
    robot.interact(
        () ->
            relay.fireEvent(
                new ScrollEvent(
                    ScrollEvent.SCROLL,
                    132 + x,
                    200,
                    132 + x,
                    200,
                    shift,
                    control,
                    false,
                    false,
                    false,
                    false,
                    0,
                    turned,
                    0,
                    turned,
                    ScrollEvent.HorizontalTextScrollUnits.NONE,
                    0,
                    ScrollEvent.VerticalTextScrollUnits.NONE,
                    0,
                    0,
                    null)));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void type(FxRobot robot, String text, KeyCode code, boolean control, boolean shift) {
    robot.interact(
        () ->
            relay.fireEvent(
                new KeyEvent(
                    KeyEvent.KEY_PRESSED, text, text, code, shift, control, false, false)));
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void the_wheel_with_control_zooms_around_the_mouse(FxRobot robot) {
    Bounds before = bounds(robot, "#segment-2");
    wheel(robot, before.getMinX(), 40, true, false);
    Bounds after = bounds(robot, "#segment-2");
    assertEquals(before.getMinX(), after.getMinX(), 0.5);
    assertEquals(before.getWidth() * 1.25, after.getWidth(), 0.5);
  }

  @Test
  void the_wheel_with_shift_scrolls_along_the_line(FxRobot robot) {
    robot.interact(() -> relay.zoom(3));
    Bounds before = bounds(robot, "#segment-2");
    wheel(robot, 400, -30, false, true);
    assertEquals(before.getMinX() - 30, bounds(robot, "#segment-2").getMinX(), 0.5);
    assertEquals(before.getMinY(), bounds(robot, "#segment-2").getMinY(), 0.5);
  }

  @Test
  void the_wheel_with_control_and_shift_makes_lanes_higher_and_a_new_plan_keeps_them(
      FxRobot robot) {
    Bounds before = bounds(robot, "#segment-2");
    wheel(robot, 400, 40, true, true);
    wheel(robot, 400, 40, true, true);
    Bounds higher = bounds(robot, "#segment-2");
    assertTrue(higher.getHeight() > before.getHeight() * 1.3);
    assertEquals(before.getWidth(), higher.getWidth(), 0.5);
    robot.interact(() -> relay.show(PLAN, Judge.judge(PLAN)));
    assertEquals(higher.getHeight(), bounds(robot, "#segment-2").getHeight(), 0.5);
    PanelWindow.picture(robot, stage, "relay-high-lanes");
    type(robot, "0", KeyCode.DIGIT0, false, false);
    assertEquals(before.getHeight(), bounds(robot, "#segment-2").getHeight(), 0.5);
  }

  @Test
  void the_same_goes_by_keys(FxRobot robot) {
    Bounds before = bounds(robot, "#segment-2");
    type(robot, "+", KeyCode.PLUS, false, false);
    assertEquals(before.getWidth() * 1.25, bounds(robot, "#segment-2").getWidth(), 0.5);
    type(robot, "-", KeyCode.MINUS, false, false);
    assertEquals(before.getWidth(), bounds(robot, "#segment-2").getWidth(), 0.5);
    for (int i = 0; i < 4; i++) {
      type(robot, "", KeyCode.MINUS, true, true);
    }
    assertTrue(bounds(robot, "#segment-2").getHeight() < before.getHeight() * 0.85);
    PanelWindow.picture(robot, stage, "relay-low-lanes");
    assertTrue(!robot.lookup("#relay-down").<ScrollBar>query().isVisible());
    type(robot, "", KeyCode.EQUALS, true, true);
    type(robot, "0", KeyCode.DIGIT0, false, false);
    assertEquals(before.getHeight(), bounds(robot, "#segment-2").getHeight(), 0.5);
  }

  @Test
  void the_whole_stays_in_view_when_the_window_changes_until_somebody_zooms(FxRobot robot) {
    double whole = bounds(robot, "#segment-1").getWidth();
    robot.interact(() -> stage.setWidth(RelayWindow.WIDTH - 300));
    double narrow = bounds(robot, "#segment-1").getWidth();
    assertTrue(narrow < whole - 50, whole + " " + narrow);
    robot.interact(() -> stage.setWidth(RelayWindow.WIDTH));
    assertEquals(whole, bounds(robot, "#segment-1").getWidth(), 0.5);
    robot.interact(() -> relay.zoom(2));
    double zoomed = bounds(robot, "#segment-1").getWidth();
    robot.interact(() -> stage.setWidth(RelayWindow.WIDTH - 300));
    assertEquals(zoomed, bounds(robot, "#segment-1").getWidth(), 0.5);
  }

  @Test
  void everything_follows_the_size_of_type(FxRobot robot) {
    Bounds usual = bounds(robot, "#handoff-1-enters");
    robot.interact(
        () -> {
          relay = RelayWindow.open(stage, new ArrayList<>(), PLAN, 20);
          relay.setStyle("-fx-font-size: 20px");
        });
    Bounds large = bounds(robot, "#handoff-1-enters");
    assertEquals(usual.getHeight() * 20 / 13, large.getHeight(), 0.5);
    Bounds name = robot.lookup("Flute 1").query().getParent().getBoundsInParent();
    assertTrue(name.getMaxX() <= 132 * 20 / 13.0);
    PanelWindow.picture(robot, stage, "relay-large-type");
  }
}
