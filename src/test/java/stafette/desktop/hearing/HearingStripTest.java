package stafette.desktop.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.desktop.PanelWindow;
import stafette.desktop.ShownRelays;
import stafette.desktop.Snapshot;
import stafette.desktop.hearing.HearingStrip.Going;
import stafette.desktop.hearing.HearingStrip.ShownHearing;
import stafette.desktop.playing.HearingWish;
import stafette.desktop.playing.Places;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;

/** The strip for hearing in a window. */
@ExtendWith(ApplicationExtension.class)
class HearingStripTest {
  private static final Places PLACES = Places.of(ShownRelays.plan());
  private static final List<String> CONTROLS =
      List.of(
          "hear-now",
          "hear-pause",
          "hear-from",
          "hear-speed",
          "hear-again",
          "hear-behind",
          "hear-by-one");

  private final List<String> told = new ArrayList<>();
  private Stage stage;
  private HearingStrip strip;

  @Start
  void start(Stage window) {
    stage = window;
    show(Locale.ENGLISH, Style.LIGHT, 1100);
  }

  private void show(Locale locale, Style style, int width) {
    strip = new HearingStrip(Texts.in(locale), new Told());
    PanelWindow.show(stage, new VBox(strip), style, width, 90);
    strip.show(shown(HearingWish.PLAIN, Going.SILENT));
  }

  private static ShownHearing shown(HearingWish wish, Going going) {
    return new ShownHearing(Optional.of(PLACES), wish, OptionalInt.of(1), going, true);
  }

  private final class Told implements HearingStrip.HearingAsked {
    @Override
    public void hear() {
      told.add("hear");
    }

    @Override
    public void pause() {
      told.add("pause");
    }

    @Override
    public void from(long lineMicros) {
      told.add("from " + PLACES.name(lineMicros).dotted());
    }

    @Override
    public void speed(int percent, boolean settled) {
      told.add("speed " + percent + (settled ? " settled" : ""));
    }

    @Override
    public void again(boolean now) {
      told.add("again " + now);
    }

    @Override
    public void behind(boolean now) {
      told.add("behind " + now);
    }

    @Override
    public void byOne(boolean now) {
      told.add("by one " + now);
    }
  }

  @Test
  void each_tool_goes_by_the_keyboard_and_tells_what_is_asked(FxRobot robot) {
    for (String id : List.of("hear-now", "hear-again", "hear-behind", "hear-by-one")) {
      focus(robot, "#" + id);
      robot.push(KeyCode.SPACE);
    }
    assertEquals(List.of("hear", "again true", "behind true", "by one true"), told);
    told.clear();
    robot.interact(() -> strip.show(shown(HearingWish.PLAIN, Going.PLAYING)));
    assertEquals("Silence", text(robot, "#hear-now"));
    focus(robot, "#hear-pause");
    robot.push(KeyCode.SPACE);
    assertEquals(List.of("pause"), told);
    robot.interact(() -> strip.show(shown(HearingWish.PLAIN, Going.PAUSED)));
    assertEquals("Go on", text(robot, "#hear-pause"));
  }

  @Test
  void the_place_is_moved_by_beats_or_typed(FxRobot robot) {
    focus(robot, "#hear-from");
    robot.push(KeyCode.UP);
    robot.push(KeyCode.UP);
    robot.push(KeyCode.DOWN);
    assertEquals(List.of("from 1.2", "from 1.3", "from 1.2"), told);
    told.clear();
    type(robot, "3.2");
    type(robot, "3");
    type(robot, "99");
    assertEquals(List.of("from 3.1"), told.subList(told.size() - 1, told.size()));
    focus(robot, "#hear-now");
    assertTrue(place(robot).startsWith("bar 3"), place(robot));
  }

  private static void type(FxRobot robot, String words) {
    focus(robot, "#hear-from");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write(words, 0);
    robot.push(KeyCode.ENTER);
  }

  private static String place(FxRobot robot) {
    return robot.lookup("#hear-from .text-field").queryTextInputControl().getText();
  }

  @Test
  void the_speed_goes_by_steps_and_settles_when_it_is_let_go(FxRobot robot) {
    focus(robot, "#hear-speed");
    robot.push(KeyCode.LEFT);
    assertEquals("speed 95 settled", told.get(told.size() - 1));
    told.clear();
    robot.drag("#hear-speed .thumb").moveBy(-30, 0);
    assertFalse(told.isEmpty());
    assertFalse(told.stream().anyMatch(words -> words.endsWith("settled")), told.toString());
    robot.drop();
    assertTrue(told.get(told.size() - 1).endsWith("settled"), told.toString());
  }

  @Test
  void showing_asks_for_nothing_and_says_what_there_is(FxRobot robot) {
    HearingWish wish = HearingWish.PLAIN.from(PLACES.next(0)).at(75).again(true);
    robot.interact(() -> strip.show(shown(wish, Going.SILENT)));
    assertEquals(List.of(), told);
    assertEquals("75 %", text(robot, "#hear-percent"));
    assertEquals("Handoff 2 again and again", text(robot, "#hear-again"));
    assertEquals("bar 1, beat 2", place(robot));
    robot.interact(
        () ->
            strip.show(
                new ShownHearing(
                    Optional.of(PLACES), wish, OptionalInt.empty(), Going.SILENT, false)));
    assertTrue(robot.lookup("#hear-again").query().isDisabled());
    assertEquals("No sound card", text(robot, "#hear-notice"));
    for (String id : CONTROLS) {
      assertFalse(robot.lookup("#" + id).query().getAccessibleText().isBlank(), id);
    }
  }

  @Test
  void nothing_is_cut_off_in_either_language_and_style(FxRobot robot) {
    HearingWish wish =
        HearingWish.PLAIN.from(PLACES.nearest(5_300_000)).at(145).again(true).behind(true);
    for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      for (Style style : Style.values()) {
        robot.interact(
            () -> {
              show(locale, style, 1100);
              strip.show(
                  new ShownHearing(
                      Optional.of(PLACES), wish, OptionalInt.of(10), Going.PLAYING, false));
            });
        Snapshot picture = PanelWindow.picture(robot, stage, "hearing-" + locale + "-" + style);
        assertTrue(picture.ink(0, 0, 1100, 90) > 0.005);
        for (Node child : strip.getChildren()) {
          assertTrue(child.getBoundsInParent().getMaxX() <= 1100, child + " is cut off");
          assertTrue(
              child.getBoundsInParent().getWidth() >= child.prefWidth(-1) - 1, child.getId());
        }
      }
    }
  }

  private static void focus(FxRobot robot, String query) {
    robot.interact(() -> robot.lookup(query).query().requestFocus());
  }

  private static String text(FxRobot robot, String query) {
    return robot.lookup(query).queryAs(Labeled.class).getText();
  }
}
