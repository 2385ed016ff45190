package stafette.desktop.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.desktop.Snapshot;
import stafette.desktop.passages.PassagesView;
import stafette.desktop.players.Entry;
import stafette.desktop.players.PlayersView;
import stafette.desktop.relay.RelayView;
import stafette.desktop.tempo.TempoRule;
import stafette.desktop.texts.Texts;
import stafette.desktop.verdict.VerdictView;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Tremolo;
import stafette.work.JudgedPlan;
import stafette.work.LimitsInForce;
import stafette.work.LineRequest;
import stafette.work.PlayerWish;
import stafette.work.Refusal;
import stafette.work.Relaying;
import stafette.work.SideBySide;
import stafette.work.SplitLine;

/** The whole window, filled from a sample, in both styles and languages. */
@ExtendWith(ApplicationExtension.class)
class FrameTest {
  private static final Path SAMPLE = Path.of("samples", "lantern-run.musicxml");

  private static SideBySide plans;
  private static Opened opened;
  private Stage stage;

  @BeforeAll
  static void plan() throws Refusal {
    opened = Opened.read(SAMPLE);
    LineRequest line =
        new LineRequest(
            SAMPLE,
            new LineChoice(
                "Piano",
                Optional.of(new BarChoice("5-16")),
                OptionalInt.of(1),
                Optional.empty(),
                Optional.empty()),
            Optional.empty(),
            Tremolo.AS_WRITTEN,
            false);
    SplitLine.Request request =
        new SplitLine.Request(
            line,
            PlayerWish.parse("Flute 1, Flute 2, Clarinet 1"),
            Optional.empty(),
            List.of(),
            Assurance.DEFAULT,
            OverlapRule.DEFAULT,
            Rules.DEFAULT_READY_SECONDS,
            Favour.BALANCE,
            Relaying.PLAIN,
            20,
            java.util.Map.of());
    plans = SideBySide.split(request, LimitsInForce.load(Optional.empty()), 2, progress -> {});
  }

  @Start
  void start(Stage window) {
    stage = window;
  }

  @Test
  void everything_is_seen_in_light_english_and_dark_german(FxRobot robot) {
    robot.interact(() -> show(Locale.ENGLISH, Style.LIGHT, "verdict"));
    robot.interact(() -> checked("window-light-en"));
    robot.interact(() -> show(Locale.GERMAN, Style.DARK, "players"));
    robot.interact(() -> checked("window-dark-de"));
  }

  @Test
  void the_verdict_names_the_cost(FxRobot robot) {
    robot.interact(() -> show(Locale.ENGLISH, Style.LIGHT, "verdict"));
    int cost = judged().verdict().cost().total();
    Labeled head = robot.lookup("#verdict-head").queryAs(Labeled.class);
    assertEquals(
        String.format(Locale.ENGLISH, "The plan holds, at a cost of %,d points.", cost),
        head.getText());
  }

  private static JudgedPlan judged() {
    return plans.main().plan().orElseThrow();
  }

  private void show(Locale locale, Style style, String front) {
    Texts texts = Texts.in(locale);
    Untouched untouched = new Untouched();
    Plan plan = judged().plan();
    RelayView relay = new RelayView(texts, untouched);
    relay.show(plan, judged().verdict());
    PassagesView passages = new PassagesView(texts, untouched);
    passages.show(opened.passages(), opened.score().parts());
    TempoRule tempo = new TempoRule(texts, untouched);
    tempo.show(plan.line().tempo().at(plan.line().stroke(0).onset()), judged().window());
    PlayersView players = new PlayersView(texts, untouched);
    players.offer(List.of("Flute 3"), List.of("flute", "oboe"));
    players.show(plan.brief().players().stream().map(player -> entry(plan, player)).toList());
    VerdictView verdict = new VerdictView(texts, untouched);
    verdict.show(plan, judged().verdict(), false);
    verdict.compare(plans);
    Frame frame = new Frame(new Frame.Panels(passages, relay, tempo, players, verdict), texts);
    frame.bring(front);
    Scene scene = new Scene(frame);
    style.applyTo(scene);
    stage.setScene(scene);
    stage.show();
  }

  private static Entry entry(Plan plan, Player player) {
    int index = plan.brief().players().indexOf(player);
    return new Entry(
        player.name(),
        Optional.of(player.instrument().name()),
        player.skills(),
        index == 0,
        !player.busy().isEmpty(),
        true,
        Optional.empty(),
        plan.segmentsOf(index).size());
  }

  /** Neither empty nor black, anywhere that something should stand. */
  private void checked(String name) {
    Snapshot seen = Snapshot.of(stage.getScene(), name);
    int width = seen.image().getWidth();
    int height = seen.image().getHeight();
    for (int third = 0; third < 3; third++) {
      int left = width * third / 3 + 8;
      double ink = seen.ink(left, 60, width / 3 - 16, height - 160);
      assertTrue(ink > 0.005 && ink < 0.5, name + ", third " + third + ": " + ink);
    }
  }
}
