package stafette.desktop.tempo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.check.TempoWindow;
import stafette.desktop.PanelWindow;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/** The tempo rule in a window. */
@ExtendWith(ApplicationExtension.class)
class TempoRuleTest {
  private static final TempoWindow WINDOW =
      new TempoWindow(
          0.75,
          1.1,
          new TempoMark(BeatUnit.QUARTER, Rational.of(90)).inWords(),
          new TempoMark(BeatUnit.QUARTER, Rational.of(132)).inWords(),
          Sentence.name("breath of Flute 1 at bar 8, beat 1"),
          Sentence.name("peak rate of Flute 1 at bar 5, beat 1"));

  private final List<Long> moves = new ArrayList<>();
  private final List<Boolean> dones = new ArrayList<>();
  private Stage stage;
  private TempoRule rule;

  @Start
  void start(Stage window) {
    stage = window;
    show(Locale.ENGLISH, Style.LIGHT);
  }

  private void show(Locale locale, Style style) {
    rule = new TempoRule(Texts.in(locale), this::moved);
    PanelWindow.show(stage, rule, style, 640, 110);
    show(120);
  }

  private void show(long perMinute) {
    rule.show(new TempoMark(BeatUnit.QUARTER, Rational.of(perMinute)), Optional.of(WINDOW));
  }

  private void moved(TempoMark tempo, boolean done) {
    moves.add(Math.round(tempo.perMinute().toDouble()));
    dones.add(done);
    show(moves.get(moves.size() - 1));
  }

  @Test
  void arrow_keys_move_by_one_and_with_shift_by_five(FxRobot robot) {
    robot.interact(() -> robot.lookup("#tempo-now").query().requestFocus());
    robot.push(KeyCode.RIGHT);
    robot.push(KeyCode.LEFT);
    robot.push(KeyCode.SHIFT, KeyCode.RIGHT);
    robot.push(KeyCode.SHIFT, KeyCode.LEFT);
    assertEquals(List.of(121L, 120L, 125L, 120L), moves);
    assertFalse(dones.contains(false));
  }

  @Test
  void dragging_tells_each_tempo_and_the_last_as_done(FxRobot robot) {
    robot.drag("#tempo-now", MouseButton.PRIMARY).moveBy(60, 0).drop();
    assertTrue(moves.get(moves.size() - 1) > 125, moves.toString());
    assertEquals(List.of(true), dones.subList(dones.size() - 1, dones.size()));
    assertFalse(dones.subList(0, dones.size() - 1).contains(true));
    assertTrue(dones.size() > 1);
  }

  @Test
  void each_end_names_its_limit_and_the_handle_says_all(FxRobot robot) {
    assertEquals(
        "holds from quarter = 90; below, breath of Flute 1 at bar 8, beat 1",
        robot.lookup("#tempo-slowest").queryAs(Labeled.class).getText());
    Node handle = robot.lookup("#tempo-now").query();
    assertTrue(handle.getAccessibleText().contains("quarter = 120"));
    assertTrue(handle.getAccessibleText().contains("peak rate of Flute 1"));
  }

  @Test
  void it_is_seen_in_both_styles(FxRobot robot) {
    assertTrue(PanelWindow.picture(robot, stage, "tempo-light").ink(0, 0, 640, 100) > 0.02);
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    assertTrue(PanelWindow.picture(robot, stage, "tempo-dark").ink(0, 0, 640, 100) > 0.02);
  }
}
