package stafette.desktop.passages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.desktop.PanelWindow;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.score.Line;
import stafette.score.Reading;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.work.CheckScore;

/** The fast passages in a window. */
@ExtendWith(ApplicationExtension.class)
class PassagesViewTest {
  private static CheckScore.CheckedScore checked;

  private final List<CheckScore.PassageVerdicts> passages = new ArrayList<>();
  private final List<LineForm.Wish> lines = new ArrayList<>();
  private Stage stage;
  private PassagesView view;

  @BeforeAll
  static void check() throws Refusal {
    checked =
        CheckScore.passages(
            java.nio.file.Path.of("samples", "mill-stairs.musicxml"),
            Tremolo.AS_WRITTEN,
            Optional.empty(),
            Assurance.DEFAULT,
            List.of(),
            LimitsInForce.load(Optional.empty()));
  }

  private final class Heard implements PassagesView.Chosen {
    @Override
    public void passage(CheckScore.PassageVerdicts passage) {
      passages.add(passage);
    }

    @Override
    public void line(LineForm.Wish line) {
      lines.add(line);
    }
  }

  @Start
  void start(Stage window) {
    stage = window;
    show(Locale.ENGLISH, Style.LIGHT);
  }

  private void show(Locale locale, Style style) {
    view = new PassagesView(Texts.in(locale), new Heard());
    PanelWindow.show(stage, view, style, 260, 560);
    view.show(checked.reports(), checked.score().score().parts());
  }

  @Test
  void the_passage_on_the_desk_is_marked_without_being_chosen_anew(FxRobot robot) {
    ListView<CheckScore.PassageVerdicts> list = robot.lookup("#passages-list").queryListView();
    CheckScore.PassageVerdicts first = checked.reports().get(0);
    robot.interact(() -> view.mark(Optional.of(first.line().source())));
    assertEquals(first, list.getSelectionModel().getSelectedItem());
    robot.interact(() -> view.mark(Optional.empty()));
    assertTrue(list.getSelectionModel().isEmpty());
    assertEquals(List.of(), passages);
  }

  @Test
  void the_keyboard_chooses_passages_worst_first(FxRobot robot) {
    ListView<CheckScore.PassageVerdicts> list = robot.lookup("#passages-list").queryListView();
    assertEquals(checked.reports(), list.getItems());
    robot.interact(list::requestFocus);
    robot.push(KeyCode.HOME);
    assertEquals(checked.reports().subList(0, 1), passages);
  }

  @Test
  void a_line_is_named_by_part_staff_and_bars(FxRobot robot) {
    robot.interact(
        () -> {
          robot.lookup("#passages-other").queryAs(TitledPane.class).setExpanded(true);
          robot.lookup("#line-staff").queryAs(ComboBox.class).getSelectionModel().select(1);
          robot.lookup("#line-bars").queryAs(TextField.class).setText(" 3-4 ");
          robot.lookup("#line-tone").queryAs(ComboBox.class).getSelectionModel().select(1);
        });
    robot.interact(() -> robot.lookup("#line-show").queryButton().fire());
    assertEquals(
        List.of(
            new LineForm.Wish(
                checked.score().score().parts().get(0).id(),
                List.of(1),
                List.of(),
                Optional.of("3-4"),
                new ToneChoice.FromTop(1),
                Reading.ALL)),
        lines);
  }

  @Test
  void parts_that_nobody_judges_are_told_once_below_the_passages(FxRobot robot) {
    Label notJudged = robot.lookup("#passages-not-judged").queryAs(Label.class);
    assertFalse(notJudged.isVisible());
    Line line = checked.reports().get(0).line();
    CheckScore.PassageVerdicts unknown = new CheckScore.PassageVerdicts(line, List.of());
    robot.interact(() -> view.show(List.of(unknown, unknown), checked.score().score().parts()));
    String part = line.source().partName();
    assertEquals("Not judged, singers or instruments unknown: " + part, notJudged.getText());
    assertTrue(notJudged.isVisible());
  }

  @Test
  void it_is_seen_in_both_styles(FxRobot robot) {
    robot.interact(() -> open(robot));
    assertTrue(PanelWindow.picture(robot, stage, "passages-light").ink(0, 0, 260, 560) > 0.01);
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    robot.interact(() -> open(robot));
    assertTrue(PanelWindow.picture(robot, stage, "passages-dark").ink(0, 0, 260, 560) > 0.01);
  }

  private static void open(FxRobot robot) {
    robot.lookup("#passages-list").queryListView().getSelectionModel().select(0);
    TitledPane other = robot.lookup("#passages-other").queryAs(TitledPane.class);
    other.setAnimated(false);
    other.setExpanded(true);
  }
}
