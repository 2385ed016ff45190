package stafette.desktop.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.control.Labeled;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import stafette.check.JudgedPlan;
import stafette.desktop.PanelWindow;
import stafette.desktop.SplitSample;
import stafette.desktop.playing.Ear;
import stafette.desktop.playing.Playing;
import stafette.desktop.relay.RelayPresenter;
import stafette.desktop.relay.RelayView;
import stafette.desktop.state.BackgroundWork;
import stafette.desktop.state.Desk;
import stafette.desktop.state.LineInWords;
import stafette.desktop.state.SavedState;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.work.OpenLine;

/** Hearing a plan from the strip and the lanes. */
@ExtendWith(ApplicationExtension.class)
class HearingPresenterTest {
  /** Searched for once. */
  private static Optional<JudgedPlan> found = Optional.empty();

  private final Texts texts = Texts.in(Locale.ENGLISH);
  private final Ear ear = new Ear();
  private final List<String> said = new ArrayList<>();
  private final Queue<Runnable> waiting = new ArrayDeque<>();
  private boolean wait;
  private Optional<Playing> playing = Optional.empty();
  private OpenLine line;
  private Plan plan;
  private RelayPresenter gestures;
  private HearingPresenter listener;
  private Stage stage;

  @Start
  void start(Stage window) throws Exception {
    stage = window;
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    line = SplitSample.line();
    if (found.isEmpty()) {
      found = line.plan(() -> false, progress -> {}).plan();
    }
    JudgedPlan judged = found.orElseThrow();
    plan = judged.plan();
    Path folder = Files.createTempDirectory("stafette-listener");
    Session session =
        new Session(
            limits, new Remembered(folder), new BackgroundWork(Runnable::run, Runnable::run));
    gestures = new RelayPresenter(session, texts, () -> {});
    RelayView relay = gestures.view();
    listener =
        new HearingPresenter(
            relay,
            texts,
            limits,
            new BackgroundWork(this::aside, Platform::runLater),
            this::open,
            words());
    gestures.heardBy(listener);
    relay.show(plan, judged.verdict());
    listener.show(desk(plan));
    BorderPane both = new BorderPane(relay);
    both.setBottom(listener.strip());
    PanelWindow.show(stage, both, Style.LIGHT, 1100, 480);
  }

  private Desk desk(Plan other) {
    return new Desk(
        Optional.empty(),
        Optional.of(line),
        Optional.of(JudgedPlan.atOnce(other)),
        Optional.empty(),
        WrittenAs.plain(SourceTreatment.KEEP),
        SavedState.EASILY_HAD_AGAIN);
  }

  private void aside(Runnable work) {
    if (wait) {
      waiting.add(work);
    } else {
      work.run();
    }
  }

  private Optional<Playing> open() {
    playing = Playing.into(Optional.of(ear));
    return playing;
  }

  private LineInWords words() {
    return new LineInWords() {
      @Override
      public void say(String words) {
        said.add(words);
      }

      @Override
      public void warn(String words) {
        said.add(words);
      }

      @Override
      public void rest() {
        said.add("rest");
      }

      @Override
      public Path proposed(String ending) {
        return Path.of(ending);
      }
    };
  }

  @AfterEach
  void close(FxRobot robot) {
    robot.interact(listener::close);
  }

  @Test
  void hears_pauses_goes_on_and_falls_silent(FxRobot robot) throws TimeoutException {
    robot.clickOn("#hear-now");
    until(() -> isPlaying() && robot.lookup("#play-cursor").query().isVisible());
    assertEquals(List.of("Preparing what is heard …", "Heard from bar 5, beat 1."), said);
    robot.clickOn("#hear-pause");
    assertFalse(isPlaying());
    assertTrue(robot.lookup("#play-cursor").query().isVisible());
    long stood = at();
    robot.clickOn("#hear-pause");
    until(() -> isPlaying() && at() > stood);
    robot.clickOn("#hear-now");
    assertFalse(isPlaying());
    assertFalse(robot.lookup("#play-cursor").query().isVisible());
    assertEquals("rest", said.get(said.size() - 1));
    assertEquals("Hear", text(robot, "#hear-now"));
  }

  @Test
  void another_speed_and_the_score_behind_keep_the_place(FxRobot robot) throws TimeoutException {
    robot.interact(() -> listener.choose(1));
    long from = plan.line().onsetMicros(plan.segments().get(1).first());
    robot.clickOn("#hear-now");
    until(() -> at() > from);
    robot.interact(() -> robot.lookup("#hear-speed").query().requestFocus());
    robot.push(KeyCode.LEFT);
    robot.push(KeyCode.LEFT);
    assertEquals("90 %", text(robot, "#hear-percent"));
    robot.clickOn("#hear-behind");
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(isPlaying());
    assertTrue(at() > from && at() < from + 15_000_000, from + " and " + at());
    until(() -> ear.channels().size() > 2);
  }

  @Test
  void one_handoff_is_heard_again_and_again_and_then_another(FxRobot robot)
      throws TimeoutException {
    robot.clickOn("#hear-again");
    robot.clickOn("#hear-now");
    until(this::isPlaying);
    assertTrue(isNear(0), at() + " is not at the first handoff");
    robot.interact(() -> robot.lookup("#handoff-2").query().requestFocus());
    assertEquals("Handoff 2 again and again", text(robot, "#hear-again"));
    until(() -> isNear(1));
    robot.clickOn("#hear-again");
    assertTrue(isPlaying());
  }

  private boolean isNear(int handoff) {
    Handoff now = plan.handoffs().get(handoff);
    return at() >= plan.line().onsetMicros(now.enters().first()) - 2_300_000
        && at() <= plan.line().endMicros(now.leaves().last()) + 2_300_000;
  }

  @Test
  void a_player_is_silenced_at_once_and_stays_so_when_the_plan_changes(FxRobot robot)
      throws TimeoutException {
    String first = plan.player(plan.segments().get(0)).name();
    int lane = 1 + plan.segments().get(0).player();
    robot.clickOn("#lane-silenced-" + lane);
    assertFalse(listener.heard().contains(first));
    robot.clickOn("#hear-now");
    until(() -> isPlaying() && at() > plan.line().onsetMicros(12));
    assertEquals(Set.of(), ear.channels());
    Plan other = plan.with(new PlanEdit.Join(0)).orElseThrow();
    robot.interact(() -> listener.show(desk(other)));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(isPlaying());
    assertEquals(Set.of(), ear.channels());
    assertTrue(at() > plan.line().onsetMicros(6));
    assertTrue(robot.lookup("#lane-silenced-" + lane).queryAs(ToggleButton.class).isSelected());
    robot.interact(() -> robot.lookup("#lane-alone-" + lane).query().requestFocus());
    robot.push(KeyCode.SPACE);
    assertFalse(robot.lookup("#lane-silenced-" + lane).queryAs(ToggleButton.class).isSelected());
    assertEquals(List.of(first), listener.heard());
    until(() -> ear.channels().size() == 1);
    PanelWindow.picture(robot, stage, "hearing-alone");
  }

  @Test
  void what_is_being_prepared_can_be_given_up(FxRobot robot) {
    wait = true;
    robot.clickOn("#hear-now");
    assertEquals("Preparing …", text(robot, "#hear-notice"));
    robot.clickOn("#hear-now");
    assertEquals("", text(robot, "#hear-notice"));
    robot.interact(() -> waiting.forEach(Runnable::run));
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(isPlaying());
    assertEquals("Hear", text(robot, "#hear-now"));
  }

  @Test
  void clicking_elsewhere_while_it_plays_jumps_there(FxRobot robot) throws TimeoutException {
    robot.clickOn("#hear-now");
    until(this::isPlaying);
    long there = plan.line().onsetMicros(150);
    robot.interact(() -> gestures.playFrom(there + 10));
    until(() -> at() >= there - 200_000);
    assertEquals(there, listener.wish().fromMicros());
  }

  @Test
  void without_a_plan_there_is_nothing_to_hear(FxRobot robot) throws TimeoutException {
    robot.clickOn("#hear-now");
    until(this::isPlaying);
    robot.interact(() -> listener.show(Desk.EMPTY));
    assertFalse(isPlaying());
    assertTrue(robot.lookup("#hear-now").query().isDisabled());
    assertEquals(List.of(), listener.heard());
  }

  private boolean isPlaying() {
    return playing.filter(Playing::isPlaying).isPresent();
  }

  private long at() {
    return playing.orElseThrow().lineMicros().orElseThrow();
  }

  private static String text(FxRobot robot, String query) {
    return robot.lookup(query).queryAs(Labeled.class).getText();
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        40, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
  }
}
