package stafette.desktop.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.check.Cost;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.desktop.PanelWindow;
import stafette.desktop.ShownRelays;
import stafette.desktop.SplitSample;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.split.SplitResult;
import stafette.work.JudgedPlan;
import stafette.work.Refusal;
import stafette.work.SideBySide;

/** The verdict in a window. */
@ExtendWith(ApplicationExtension.class)
class VerdictViewTest {
  private static SideBySide plans;

  private final List<Finding> places = new ArrayList<>();
  private final List<Integer> taken = new ArrayList<>();
  private Stage stage;
  private VerdictView view;

  @BeforeAll
  static void plan() throws Refusal {
    plans = SplitSample.plans(2);
  }

  private final class Heard implements VerdictView.Jumps {
    @Override
    public void to(Finding finding) {
      places.add(finding);
    }

    @Override
    public void take(int alternative) {
      taken.add(alternative);
    }
  }

  @Start
  void start(Stage window) {
    stage = window;
    show(Locale.ENGLISH, Style.LIGHT);
  }

  private void show(Locale locale, Style style) {
    view = new VerdictView(Texts.in(locale), new Heard());
    PanelWindow.show(stage, view, style, 310, 760);
    JudgedPlan judged = plans.main().plan().orElseThrow();
    view.show(judged.plan(), judged.verdict(), false);
    view.proven(plans.main().result());
    view.compare(plans);
  }

  @Test
  void what_was_proven_is_said_until_another_plan_is_shown(FxRobot robot) {
    Plan plan = ShownRelays.plan();
    Labeled proof = robot.lookup("#verdict-proof").queryAs(Labeled.class);
    robot.interact(() -> view.proven(new SplitResult.Best(plan, 7)));
    assertEquals("No other plan costs less.", proof.getText());
    robot.interact(
        () -> view.proven(new SplitResult.Stopped(Optional.of(plan), OptionalInt.of(9), 5)));
    assertEquals("The best found in time; no plan costs less than 5 points.", proof.getText());
    robot.interact(() -> view.show(plan, Judge.judge(plan), false));
    assertEquals("", proof.getText());
  }

  @Test
  void each_finding_reports_its_place(FxRobot robot) {
    Plan relay = ShownRelays.plan();
    Segment whole = new Segment(1, 0, 0, relay.line().count() - 1);
    Plan plan = new Plan(relay.brief(), List.of(whole));
    Verdict verdict = Judge.judge(plan);
    assertTrue(verdict.findings().size() > 1);
    robot.interact(() -> view.show(plan, verdict, false));
    robot.interact(() -> ((javafx.scene.control.Hyperlink) find(robot, "#finding-2")).fire());
    assertEquals(List.of(verdict.findings().get(1)), places);
    PanelWindow.picture(robot, stage, "verdict-fails");
  }

  @Test
  void an_alternative_is_taken(FxRobot robot) {
    Node take = find(robot, "#take-2");
    assertTrue(take.getAccessibleText().startsWith("Take the plan that favours"));
    robot.interact(() -> ((javafx.scene.control.Button) take).fire());
    assertEquals(List.of(1), taken);
  }

  private static Node find(FxRobot robot, String id) {
    return robot.lookup(id).query();
  }

  @Test
  void the_parts_of_the_cost_are_all_of_it() {
    JudgedPlan judged = plans.main().plan().orElseThrow();
    Cost cost = judged.verdict().cost();
    List<CostRow> rows = CostRow.of(judged.plan(), cost, Texts.in(Locale.ENGLISH));
    assertEquals(cost.total(), rows.stream().mapToInt(CostRow::points).sum());
  }

  @Test
  void it_is_seen_in_both_styles(FxRobot robot) {
    assertTrue(PanelWindow.picture(robot, stage, "verdict-light").ink(0, 0, 310, 760) > 0.02);
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    assertTrue(PanelWindow.picture(robot, stage, "verdict-dark").ink(0, 0, 310, 760) > 0.02);
  }
}
