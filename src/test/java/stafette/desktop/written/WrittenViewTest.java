package stafette.desktop.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.desktop.Snapshot;
import stafette.desktop.SplitSample;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.plan.SourceTreatment;
import stafette.words.Refusal;
import stafette.work.ChangedPart;

/** The bars that would be written, in a window. */
@ExtendWith(ApplicationExtension.class)
class WrittenViewTest {
  private static List<ChangedPart> changed = List.of();

  private final List<String> jumps = new ArrayList<>();
  private Stage stage;

  @BeforeAll
  static void plan() throws Refusal {
    changed = SplitSample.changed(SourceTreatment.REMOVE);
  }

  @Start
  void start(Stage window) {
    stage = window;
  }

  private WrittenView show(Locale locale, Style style) {
    WrittenView view = new WrittenView(Texts.in(locale), bar -> jumps.add(bar.number()));
    Scene scene = new Scene(view, 900, 620);
    style.applyTo(scene);
    stage.setScene(scene);
    stage.show();
    view.show(changed);
    return view;
  }

  private Snapshot picture(FxRobot robot, String name) {
    robot.interact(() -> {});
    List<Snapshot> seen = new ArrayList<>();
    robot.interact(() -> seen.add(Snapshot.of(stage.getScene(), name)));
    return seen.get(0);
  }

  @Test
  void music_is_seen_in_both_styles(FxRobot robot) {
    robot.interact(() -> show(Locale.ENGLISH, Style.LIGHT));
    double light = picture(robot, "written-light").ink(20, 90, 840, 500);
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    double dark = picture(robot, "written-dark").ink(20, 90, 840, 500);
    assertTrue(light > 0.02 && light < 0.3, "light: " + light);
    assertTrue(dark > 0.02 && dark < 0.3, "dark: " + dark);
  }

  @Test
  void each_changed_part_can_be_chosen_and_says_what_changes(FxRobot robot) {
    robot.interact(() -> show(Locale.ENGLISH, Style.LIGHT));
    ComboBox<?> choice = robot.lookup("#written-part").queryAs(ComboBox.class);
    assertEquals(changed.stream().map(ChangedPart::name).toList(), choice.getItems());
    robot.interact(() -> choice.getSelectionModel().select(choice.getItems().indexOf("Flute 2")));
    ChangedPart flute =
        changed.stream().filter(part -> part.name().equals("Flute 2")).findFirst().orElseThrow();
    String said = robot.lookup("#written-summary").queryAs(Labeled.class).getText();
    assertTrue(said.contains(flute.bars().size() + " bars"), said);
    assertTrue(said.contains(flute.strokesAfter() + " notes"), said);
    picture(robot, "written-flute");
  }

  @Test
  void a_row_says_its_bars_and_notes(FxRobot robot) {
    robot.interact(() -> show(Locale.ENGLISH, Style.LIGHT));
    robot.interact(() -> {});
    assertTrue(
        robot.lookup("#written-bars").lookup(".list-cell").queryAll().stream()
            .map(cell -> String.valueOf(cell.getAccessibleText()))
            .anyMatch(said -> said.matches("Bars 5 to \\d+: \\d+ notes before, \\d+ after")));
  }

  @Test
  void a_row_is_opened_from_the_keyboard(FxRobot robot) {
    robot.interact(() -> show(Locale.ENGLISH, Style.LIGHT));
    ListView<?> rows = robot.lookup("#written-bars").queryListView();
    robot.interact(rows::requestFocus);
    robot.interact(() -> rows.getSelectionModel().select(0));
    robot.push(KeyCode.ENTER);
    assertEquals(List.of(changed.get(0).bars().get(0).number()), jumps);
  }

  @Test
  void without_changes_it_says_so(FxRobot robot) {
    robot.interact(() -> show(Locale.ENGLISH, Style.LIGHT).show(List.of()));
    ListView<?> rows = robot.lookup("#written-bars").queryListView();
    assertTrue(rows.getItems().isEmpty());
    assertEquals("Nothing would be written.", ((Labeled) rows.getPlaceholder()).getText());
    assertTrue(robot.lookup("#written-part").query().isDisabled());
  }
}
