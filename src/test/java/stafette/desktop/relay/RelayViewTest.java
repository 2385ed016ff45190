package stafette.desktop.relay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Scene;
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
import stafette.desktop.Snapshot;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.plan.Plan;
import stafette.time.Position;
import stafette.time.Span;

/** Drives the relay in a window, without a display. */
@ExtendWith(ApplicationExtension.class)
class RelayViewTest {
  private final List<String> told = new ArrayList<>();
  private final Plan plan = ShownRelays.plan();
  private RelayView relay;

  @Start
  void start(Stage stage) {
    relay = new RelayView(Texts.in(Locale.ENGLISH), new Told(told));
    Scene scene = new Scene(relay, 1100, 420);
    Style.LIGHT.applyTo(scene);
    relay.show(plan, Judge.judge(plan));
    stage.setScene(scene);
    stage.show();
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
  void plus_and_minus_zoom_and_zero_shows_the_whole(FxRobot robot) {
    double whole = width(robot, "#segment-2");
    robot.interact(() -> relay.zoom(2));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(2 * whole, width(robot, "#segment-2"), 0.5);
    robot.interact(relay::showWhole);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(whole, width(robot, "#segment-2"), 0.5);
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
  void the_picture_has_ink_where_somebody_plays_and_none_where_nobody_does(FxRobot robot) {
    robot.interact(
        () -> {
          Snapshot seen = Snapshot.of(relay.getScene(), "relay-light");
          int middle = (int) lanes().middle(0);
          assertTrue(seen.ink(150, middle - 8, 200, 16) > 0.1);
          assertFalse(seen.ink(420, middle - 8, 180, 16) > 0.08);
        });
  }

  @Test
  void notes_are_written_where_there_is_room(FxRobot robot) {
    robot.interact(() -> relay.zoom(8));
    robot.interact(() -> Snapshot.of(relay.getScene(), "relay-notes"));
    robot.interact(() -> relay.reveal(new Span(Position.START, Position.ofQuarters(1, 1))));
    robot.interact(() -> Snapshot.of(relay.getScene(), "relay-notes-start"));
    robot.interact(() -> Style.DARK.applyTo(relay.getScene()));
    robot.interact(relay::showWhole);
    robot.interact(() -> Snapshot.of(relay.getScene(), "relay-dark"));
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
    robot.interact(relay::clear);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(
        robot.lookup("No plan yet. Choose a passage and its players.").tryQuery().isPresent());
    assertTrue(robot.lookup("#segment-1").tryQuery().isEmpty());
  }

  private String percent(int segment) {
    double strain = Judge.judge(plan).segments().get(segment).strain();
    return Texts.in(Locale.ENGLISH).percent(strain);
  }

  private static LaneScale lanes() {
    return LaneScale.plain(3, 0, 420 - 14);
  }

  private double pixelsPerQuarter() {
    return (1100 - LaneNames.WIDTH - 14 - 2 * TimeScale.MARGIN) / 32;
  }

  private static double width(FxRobot robot, String id) {
    return robot.lookup(id).query().getBoundsInParent().getWidth();
  }

  /** Writes down what is told. */
  private record Told(List<String> told) implements RelayGestures {
    @Override
    public void moveHandoff(int handoff, End end, int stroke, boolean done) {
      told.add("move " + handoff + " " + end + " " + stroke + (done ? " done" : " going"));
    }

    @Override
    public void cancelMove() {
      told.add("cancel");
    }

    @Override
    public void give(int segment, int player) {
      told.add("give " + segment + " " + player);
    }

    @Override
    public void split(int segment, int stroke) {
      told.add("split " + segment + " " + stroke);
    }

    @Override
    public void join(int handoff) {
      told.add("join " + handoff);
    }

    @Override
    public void lockHandoff(int handoff) {
      told.add("lock handoff " + handoff);
    }

    @Override
    public void lockSegment(int segment) {
      told.add("lock " + segment);
    }

    @Override
    public void hocket(int segment) {
      told.add("hocket " + segment);
    }

    @Override
    public void chosen(int segment) {}

    @Override
    public void chosenHandoff(int handoff) {}
  }
}
