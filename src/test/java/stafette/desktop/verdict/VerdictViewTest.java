package stafette.desktop.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.Invented;
import stafette.check.Cost;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.JudgedPlan;
import stafette.check.Verdict;
import stafette.desktop.PanelWindow;
import stafette.desktop.ShownRelays;
import stafette.desktop.SplitSample;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.limits.Instrument;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.split.SplitResult;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.PlanInWords;
import stafette.work.SideBySide;

/** The verdict in a window. */
@ExtendWith(ApplicationExtension.class)
class VerdictViewTest {
  private static SideBySide plans;

  private final List<Finding> places = new ArrayList<>();
  private final List<Integer> taken = new ArrayList<>();
  private final List<Integer> helped = new ArrayList<>();
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

    @Override
    public void help(int remedy) {
      helped.add(remedy);
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
    view.show(judged, false);
    view.proven(PlanInWords.why(plans.main().result(), judged));
    view.compare(plans);
  }

  @Test
  void what_was_proven_is_said_until_another_plan_is_shown(FxRobot robot) {
    Plan plan = ShownRelays.plan();
    Labeled proof = robot.lookup("#verdict-proof").queryAs(Labeled.class);
    robot.interact(
        () -> view.proven(PlanInWords.why(new SplitResult.Best(plan, 7), JudgedPlan.of(plan))));
    assertEquals("Why: no plan costs less under these weights.", proof.getText());
    SplitResult stopped = new SplitResult.Stopped(Optional.of(plan), OptionalInt.of(9), 5);
    robot.interact(() -> view.proven(PlanInWords.why(stopped, JudgedPlan.of(plan))));
    assertEquals(
        "Why: the best that was found; there may be one that costs less.", proof.getText());
    robot.interact(() -> view.show(JudgedPlan.of(plan), false));
    assertEquals("", proof.getText());
  }

  @Test
  void each_finding_reports_its_place(FxRobot robot) {
    Plan relay = ShownRelays.plan();
    Segment whole = new Segment(1, 0, 0, relay.line().count() - 1);
    Plan plan = new Plan(relay.brief(), List.of(whole));
    Verdict verdict = Judge.judge(plan);
    assertTrue(verdict.findings().size() > 1);
    robot.interact(() -> view.show(new JudgedPlan(plan, verdict, Optional.empty()), false));
    robot.interact(() -> ((javafx.scene.control.Hyperlink) find(robot, "#finding-2")).fire());
    assertEquals(List.of(verdict.findings().get(1)), places);
    PanelWindow.picture(robot, stage, "verdict-fails");
  }

  @Test
  void an_alternative_is_taken(FxRobot robot) {
    Button take = (Button) find(robot, "#take-1");
    assertTrue(take.getAccessibleText().startsWith("Take the plan that favours"));
    robot.interact(take::fire);
    assertEquals(List.of(1), taken);
  }

  @Test
  void the_plan_on_the_desk_is_marked_among_those_side_by_side(FxRobot robot) {
    Button main = (Button) find(robot, "#take-0");
    Button first = (Button) find(robot, "#take-1");
    assertTrue(main.isDisabled());
    assertEquals("Shown", main.getText());
    JudgedPlan other = plans.columns().get(0).plan();
    robot.interact(() -> view.show(other, false));
    assertTrue(first.isDisabled());
    assertEquals("Take", main.getText());
    assertEquals("Take the plan that favours balance", main.getAccessibleText());
  }

  @Test
  void plans_side_by_side_leave_with_the_notes_that_they_were_found_for(FxRobot robot) {
    Plan another = ShownRelays.plan();
    robot.interact(() -> view.show(JudgedPlan.of(another), true));
    assertTrue(robot.lookup("#take-1").tryQuery().isPresent());
    robot.interact(() -> view.show(JudgedPlan.of(another), false));
    assertTrue(robot.lookup("#take-1").tryQuery().isEmpty());
  }

  @Test
  void what_there_is_to_see_to_at_joins_is_said_in_the_users_language(FxRobot robot) {
    Plan even = ShownRelays.plan();
    robot.interact(() -> view.show(JudgedPlan.of(even), false));
    assertTrue(robot.lookup("#joins .label").tryQuery().isEmpty());
    Plan loud = withTrumpet(even);
    robot.interact(() -> view.show(JudgedPlan.of(loud), false));
    assertEquals(
        List.of("To see to at the joins", "trumpet in B-flat p against flute mf (at 5.2, 7.1)"),
        joins(robot));
    PanelWindow.picture(robot, stage, "verdict-joins");
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    robot.interact(() -> view.show(JudgedPlan.of(loud), false));
    assertEquals("Trompete in B p gegen Flöte mf (bei 5.2, 7.1)", joins(robot).get(1));
  }

  private static List<String> joins(FxRobot robot) {
    return robot.lookup("#joins .label").queryAllAs(Labeled.class).stream()
        .map(Labeled::getText)
        .toList();
  }

  private static Plan withTrumpet(Plan plan) {
    Instrument plain = Invented.instrument("trumpet in B-flat");
    Instrument loud = plain.with(100, Optional.empty(), plain.techniques());
    List<Player> players = new ArrayList<>(plan.brief().players());
    players.set(2, Invented.player("Trumpet 1", loud, 9, 8.5, 14, 8));
    return new Plan(plan.brief().with(players), plan.segments());
  }

  @Test
  void what_would_help_is_done_by_mouse_or_keyboard_where_it_can_be(FxRobot robot) {
    refuse(robot);
    assertEquals("What would help", said(robot, "#remedies .panel-title"));
    assertEquals(
        "with 1 more flute: Flute 1, Flute 2; highest strain 91 %", said(robot, "#remedy-2"));
    Button button = (Button) find(robot, "#help-2");
    assertEquals("Do it", button.getText());
    assertEquals("Do it: " + said(robot, "#remedy-2"), button.getAccessibleText());
    robot.interact(button::requestFocus);
    robot.interact(
        () ->
            List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)
                .forEach(kind -> button.fireEvent(space(kind))));
    assertEquals(List.of(1), helped);
    assertTrue(robot.lookup("#help-1").tryQuery().isEmpty(), "notes can't be left out from here");
    PanelWindow.picture(robot, stage, "verdict-helps");
    JudgedPlan judged = plans.main().plan().orElseThrow();
    robot.interact(() -> view.show(judged, false));
    assertTrue(robot.lookup("#help-2").tryQuery().isEmpty());
  }

  @Test
  void what_would_help_is_said_in_german(FxRobot robot) {
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    refuse(robot);
    assertEquals("Was helfen würde", said(robot, "#remedies .panel-title"));
    Button button = (Button) find(robot, "#help-2");
    assertEquals("So machen", button.getText());
    assertEquals("So machen: " + said(robot, "#remedy-2"), button.getAccessibleText());
    assertEquals(
        "mit ausgedünnter Linie, jede zweite Note: Flute 1, Flute 2;" + " höchste Anspannung 91 %",
        said(robot, "#remedy-1"));
    PanelWindow.picture(robot, stage, "verdict-helps-german");
  }

  private static KeyEvent space(EventType<KeyEvent> kind) {
    return new KeyEvent(kind, " ", " ", KeyCode.SPACE, false, false, false, false);
  }

  private void refuse(FxRobot robot) {
    Sentence flutes = Sentence.list(List.of("Flute 1", "Flute 2"));
    robot.interact(
        () ->
            view.refuse(
                List.of(Sentence.of("{0} is too fast", Sentence.name("flute"))),
                List.of(
                    help(Sentence.name("with the whole line thinned, half"), flutes, false),
                    help(Sentence.of("with 1 more {0}", Sentence.name("flute")), flutes, true))));
  }

  private static VerdictView.Help help(Sentence change, Sentence players, boolean can) {
    return new VerdictView.Help(
        Sentence.of("{0}: {1}; highest strain {2} %", change, players, 91L), can);
  }

  private static String said(FxRobot robot, String query) {
    return robot.lookup(query).queryAs(Labeled.class).getText();
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
