package stafette.desktop.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.desktop.PanelWindow;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Joins;
import stafette.plan.OverlapRule;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Slurring;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;

/** The rules in a window. */
@ExtendWith(ApplicationExtension.class)
class RulesViewTest {
  private static final int WIDTH = 300;
  private static final int HEIGHT = 700;
  private static final RulesNow USUAL =
      new RulesNow(
          Favour.BALANCE,
          OverlapRule.DEFAULT,
          0.5,
          Assurance.DEFAULT,
          Hocket.NO,
          1,
          new Tones(new ToneChoice.FromTop(1), false),
          3,
          Slurring.AS_WRITTEN,
          Tremolo.AS_WRITTEN,
          WrittenAs.plain(SourceTreatment.KEEP));

  private final List<String> asked = new ArrayList<>();
  private Optional<String> answer = Optional.empty();
  private Stage stage;
  private RulesView view;

  private final class Heard implements RuleGestures {
    private Optional<String> hear(String what) {
      asked.add(what);
      return answer;
    }

    @Override
    public Optional<String> favour(Favour favour) {
      return hear("favour " + favour);
    }

    @Override
    public Optional<String> overlap(OverlapRule overlap) {
      return hear("overlap " + overlap.min() + " " + overlap.max());
    }

    @Override
    public Optional<String> ready(double seconds) {
      return hear("ready " + seconds);
    }

    @Override
    public Optional<String> assurance(Assurance assurance) {
      return hear("assurance " + assurance.percent());
    }

    @Override
    public Optional<String> hocket(Hocket hocket) {
      return hear("hocket " + hocket);
    }

    @Override
    public Optional<String> together(int players) {
      return hear("together " + players);
    }

    @Override
    public Optional<String> tones(ToneChoice choice, boolean each) {
      return hear("tones " + choice.text() + " " + each);
    }

    @Override
    public Optional<String> slurring(Slurring slurring) {
      return hear("slurring " + slurring);
    }

    @Override
    public Optional<String> tremolo(Tremolo tremolo) {
      return hear("tremolo " + tremolo);
    }

    @Override
    public Optional<String> source(SourceTreatment source) {
      return hear("source " + source);
    }

    @Override
    public Optional<String> joins(Joins joins) {
      return hear("joins " + joins);
    }

    @Override
    public Optional<String> balanced(boolean balanced) {
      return hear("balanced " + balanced);
    }

    @Override
    public Optional<String> pedals(boolean told) {
      return hear("pedals " + told);
    }
  }

  @Start
  void start(Stage window) {
    stage = window;
    show(Locale.ENGLISH, Style.LIGHT);
  }

  private void show(Locale locale, Style style) {
    view = new RulesView(Texts.in(locale), new Heard());
    PanelWindow.show(stage, view, style, WIDTH, HEIGHT);
    view.show(Optional.of(USUAL));
  }

  private static ComboBox<?> choice(FxRobot robot, String id) {
    return robot.lookup(id).queryAs(ComboBox.class);
  }

  private static TextField field(FxRobot robot, String id) {
    return robot.lookup(id).queryAs(TextField.class);
  }

  private void pick(FxRobot robot, String id, int number) {
    robot.interact(() -> choice(robot, id).getSelectionModel().select(number));
  }

  private void type(FxRobot robot, String id, String words) {
    robot.interact(() -> field(robot, id).requestFocus());
    robot.interact(() -> field(robot, id).setText(words));
    robot.push(KeyCode.TAB);
  }

  @Test
  void showing_rules_asks_for_none(FxRobot robot) {
    robot.interact(() -> view.show(Optional.empty()));
    assertFalse(robot.lookup(".scroll-pane").query().isVisible());
    robot.interact(() -> view.show(Optional.of(USUAL)));
    assertEquals(List.of(), asked);
  }

  @Test
  void each_choice_is_asked_for_once(FxRobot robot) {
    pick(robot, "#rule-favour", Favour.REGULAR.ordinal());
    pick(robot, "#rule-hocket", Hocket.GROUP.ordinal());
    pick(robot, "#rule-together", 1);
    pick(robot, "#rule-tones", 5);
    pick(robot, "#rule-slurring", Slurring.PAIRS.ordinal());
    pick(robot, "#rule-tremolo", Tremolo.UNMEASURED.ordinal());
    pick(robot, "#rule-source", SourceTreatment.CUE.ordinal());
    pick(robot, "#rule-joins", Joins.SHADED.ordinal());
    pick(robot, "#rule-balance", 1);
    pick(robot, "#rule-pedals", 1);
    assertEquals(
        List.of(
            "favour REGULAR",
            "hocket GROUP",
            "together 2",
            "tones all true",
            "slurring PAIRS",
            "tremolo UNMEASURED",
            "source CUE",
            "joins SHADED",
            "balanced true",
            "pedals false"),
        asked);
  }

  @Test
  void the_keyboard_alone_goes_from_rule_to_rule_and_changes_them(FxRobot robot) {
    robot.interact(() -> robot.lookup("#rule-favour").query().requestFocus());
    robot.push(KeyCode.DOWN);
    robot.push(KeyCode.TAB);
    assertTrue(field(robot, "#rule-assurance").isFocused());
    robot.write("90");
    robot.push(KeyCode.ENTER);
    assertEquals(List.of("favour HANDOFFS", "assurance 90.0"), asked);
  }

  @Test
  void figures_count_when_their_field_is_left(FxRobot robot) {
    type(robot, "#rule-ready", "0,8");
    type(robot, "#rule-overlap-2", "3");
    type(robot, "#rule-overlap", "2");
    assertEquals(
        List.of("ready 0.8", "overlap 1 OptionalInt[3]", "overlap 2 OptionalInt[3]"), asked);
  }

  @Test
  void what_is_no_figure_is_said_at_its_field_and_nothing_is_asked(FxRobot robot) {
    type(robot, "#rule-assurance", "120");
    assertEquals(List.of(), asked);
    Label problem = robot.lookup("#rule-assurance-problem").queryAs(Label.class);
    assertTrue(problem.isVisible() && problem.getText().contains("50 to 99"), problem.getText());
    PanelWindow.picture(robot, stage, "rules-refused");
    type(robot, "#rule-assurance", "95");
    assertFalse(problem.isVisible());
    assertEquals(List.of("assurance 95.0"), asked);
  }

  @Test
  void a_figure_taken_back_can_be_typed_again(FxRobot robot) {
    type(robot, "#rule-ready", "2");
    robot.interact(() -> view.show(Optional.of(USUAL)));
    assertEquals("0.5", field(robot, "#rule-ready").getText());
    type(robot, "#rule-ready", "2");
    type(robot, "#rule-ready", "2");
    assertEquals(List.of("ready 2.0", "ready 2.0"), asked);
  }

  @Test
  void what_is_refused_is_said_and_the_choice_goes_back(FxRobot robot) {
    answer = Optional.of("they don't go together");
    pick(robot, "#rule-together", 2);
    assertEquals(1, choice(robot, "#rule-together").getValue());
    Label problem = robot.lookup("#rule-together-problem").queryAs(Label.class);
    assertEquals("they don't go together", problem.getText());
    robot.interact(() -> view.show(Optional.of(USUAL)));
    assertFalse(problem.isVisible());
    assertEquals(List.of("together 3"), asked);
  }

  @Test
  void every_control_has_a_name_and_help_for_screen_readers(FxRobot robot) {
    Set<Node> controls = all(robot, ".combo-box", ".text-field");
    assertEquals(14, controls.size());
    for (Node control : controls) {
      assertFalse(String.valueOf(control.getAccessibleText()).isBlank(), control.getId());
      assertFalse(String.valueOf(control.getAccessibleHelp()).isBlank(), control.getId());
    }
  }

  @Test
  void nothing_is_cut_off_in_a_narrow_panel_in_either_language_or_style(FxRobot robot) {
    whole(robot, "rules-light");
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    whole(robot, "rules-dark");
  }

  private static Set<Node> all(FxRobot robot, String... styles) {
    Set<Node> nodes = new LinkedHashSet<>();
    for (String style : styles) {
      nodes.addAll(robot.lookup(".rules").lookup(style).queryAll());
    }
    return nodes;
  }

  private void whole(FxRobot robot, String name) {
    ScrollPane scroll = robot.lookup(".scroll-pane").queryAs(ScrollPane.class);
    for (double end : new double[] {0, 1}) {
      robot.interact(() -> scroll.setVvalue(end));
      String part = name + (end == 0 ? "-above" : "-below");
      assertTrue(PanelWindow.picture(robot, stage, part).ink(0, 0, WIDTH, HEIGHT) > 0.01, part);
    }
    double width = scroll.getWidth();
    for (Node node : all(robot, ".label", ".combo-box")) {
      assertTrue(
          node.localToScene(node.getBoundsInLocal()).getMaxX() <= width + 20, node.toString());
      if (node instanceof Labeled label && label.isVisible() && !label.getText().isEmpty()) {
        String shown =
            label.lookupAll(".text").stream()
                .filter(Text.class::isInstance)
                .map(text -> ((Text) text).getText())
                .reduce("", String::concat);
        assertEquals(label.getText(), shown.replace("\n", " "), "cut off");
      }
    }
  }
}
