package stafette.desktop.relay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
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
import stafette.plan.Plan;
import stafette.score.Line;

/** Where it plays from, and what the score gives somebody there. */
@ExtendWith(ApplicationExtension.class)
class RelayPlaceTest {
  private static final Plan PLAN = ShownRelays.plan();
  private static final Line LINE = PLAN.brief().line();

  private final List<String> told = new ArrayList<>();
  private final View view = RelayWindow.whole(PLAN);
  private Stage stage;
  private RelayView relay;

  @Start
  void start(Stage shown) {
    stage = shown;
    relay = RelayWindow.open(stage, told, PLAN);
  }

  private void click(FxRobot robot, double x, double y) {
    robot.clickOn(relay.localToScreen(x + 132, y));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static String from(int stroke) {
    return "from " + LINE.onsetMicros(stroke);
  }

  @Test
  void a_click_on_the_ruler_says_where_it_plays_from(FxRobot robot) {
    assertFalse(robot.lookup("#play-from").query().isVisible());
    click(robot, view.time().x(LINE.stroke(32).onset()) + 2, 20);
    assertEquals(List.of(from(32)), told);
    Node mark = robot.lookup("#play-from").query();
    assertTrue(mark.isVisible());
    assertEquals("Plays from bar 3, beat 1", mark.getAccessibleText());
    PanelWindow.picture(robot, stage, "relay-from");
  }

  @Test
  void a_click_where_nothing_is_says_it_too(FxRobot robot) {
    click(robot, view.time().x(LINE.stroke(100).onset()), view.lanes().middle(1));
    assertEquals(List.of(from(100)), told);
  }

  @Test
  void a_click_gives_the_relay_the_keyboard(FxRobot robot) {
    robot.interact(() -> robot.lookup("#handoff-1").query().requestFocus());
    click(robot, 200, 20);
    assertTrue(relay.isFocused());
  }

  @Test
  void a_click_on_a_segment_does_not(FxRobot robot) {
    robot.clickOn("#segment-1");
    assertEquals(List.of(), told);
  }

  @Test
  void comma_and_point_go_from_beat_to_beat(FxRobot robot) {
    robot.interact(() -> robot.lookup("#segment-1").query().requestFocus());
    robot.type(KeyCode.PERIOD, KeyCode.PERIOD, KeyCode.PERIOD, KeyCode.COMMA);
    robot.interact(() -> robot.lookup("#play-from").query().requestFocus());
    robot.type(KeyCode.RIGHT);
    assertEquals(List.of(from(0), from(4), from(8), from(4), from(8)), told);
  }

  @Test
  void the_mark_stays_at_its_beat_when_the_plan_changes_and_goes_with_it(FxRobot robot) {
    click(robot, view.time().x(LINE.stroke(64).onset()), 20);
    Node mark = robot.lookup("#play-from").query();
    Bounds before = mark.getBoundsInParent();
    robot.interact(() -> relay.show(PLAN, Judge.judge(PLAN)));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(mark.isVisible());
    assertEquals(before, mark.getBoundsInParent());
    robot.interact(() -> relay.clear("No plan yet."));
    assertFalse(mark.isVisible());
  }

  @Test
  void lanes_say_in_how_many_bars_their_players_are_taken(FxRobot robot) {
    assertEquals("Flute 1, flute", words(robot, "Flute 1"));
    assertEquals("Flute 2, flute, already plays in 2 bars here", words(robot, "Flute 2"));
  }

  private static String words(FxRobot robot, String name) {
    return robot.lookup(name).query().getParent().getAccessibleText();
  }

  @Test
  void what_the_score_gives_somebody_is_ticked_stroke_by_stroke(FxRobot robot) {
    Snapshot seen = PanelWindow.picture(robot, stage, "relay-given");
    double second = 132 + view.time().x(view.shown().clock().quarters(500_000));
    int top = (int) (view.lanes().middle(1) - 9);
    assertTrue(darkest(seen, (int) second - 2, top) < 60);
    assertTrue(darkest(seen, (int) second + 10, top) > 70);
  }

  /** Of a few dots, from 0 to 255. */
  private static int darkest(Snapshot seen, int left, int top) {
    int darkest = 255;
    for (int x = left; x < left + 6; x++) {
      for (int y = top; y < top + 6; y++) {
        darkest = Math.min(darkest, seen.image().getRGB(x, y) & 0xff);
      }
    }
    return darkest;
  }
}
