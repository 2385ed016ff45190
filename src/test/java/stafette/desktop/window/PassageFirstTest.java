package stafette.desktop.window;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import stafette.desktop.Snapshot;
import stafette.desktop.texts.Texts;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.words.Refusal;

/** Whatever passage is clicked, there is music to look at, and then a relay. */
@ExtendWith(ApplicationExtension.class)
class PassageFirstTest {
  private MainWindow window;
  private Stage stage;

  @Start
  void start(Stage shown) throws Refusal, IOException {
    stage = shown;
    window =
        new MainWindow(
            shown,
            Texts.in(Locale.ENGLISH),
            LimitsInForce.load(Optional.empty()),
            new Remembered(Files.createTempDirectory("stafette-passages")),
            new NobodyAsked());
    window.show();
  }

  /** Leaves everything as it is. */
  private static final class NobodyAsked implements Asking {
    @Override
    public Optional<Path> toOpen() {
      return Optional.empty();
    }

    @Override
    public Optional<Path> toWrite(Path proposed) {
      return Optional.empty();
    }

    @Override
    public boolean agrees(Proposal proposal) {
      return false;
    }

    @Override
    public Parting parting() {
      return Parting.LEAVE;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "mill-stairs", "signal-hill", "weir-gate"})
  void the_first_click_on_each_passage_of_a_sample_draws_a_relay(String sample, FxRobot robot)
      throws TimeoutException {
    ListView<?> passages = opened(robot, sample);
    for (int i = 0; i < passages.getItems().size(); i++) {
      int passage = i;
      robot.interact(() -> passages.getSelectionModel().select(passage));
      until(() -> isAtRest(robot) && robot.lookup("#segment-1").tryQuery().isPresent());
      assertTrue(robot.lookup("#handoff-1").tryQuery().isPresent(), sample + " " + passage);
      assertFalse(robot.lookup("#relay-caption").query().isVisible());
    }
  }

  @Test
  void a_passage_is_seen_as_it_is_written_while_players_are_looked_for(FxRobot robot)
      throws TimeoutException {
    ListView<?> passages = opened(robot, "lantern-run");
    robot.interact(
        () -> {
          passages.getSelectionModel().select(0);
          assertTrue(caption(robot).startsWith("As it is written"), caption(robot));
          assertTrue(robot.lookup("#segment-1").tryQuery().isEmpty());
          Snapshot seen = Snapshot.of(stage.getScene(), "window-as-written");
          double middle = stage.getScene().getWidth() / 2;
          assertTrue(seen.ink((int) middle - 100, 100, 200, 120) > 0.02);
        });
    until(() -> robot.lookup("#segment-1").tryQuery().isPresent());
  }

  private ListView<?> opened(FxRobot robot, String sample) throws TimeoutException {
    robot.interact(() -> window.open(Path.of("samples", sample + ".musicxml")));
    ListView<?> passages = robot.lookup("#passages-list").queryListView();
    until(() -> !passages.getItems().isEmpty() && isAtRest(robot));
    return passages;
  }

  private static boolean isAtRest(FxRobot robot) {
    return robot.lookup("#tool-stop").query().isDisabled();
  }

  private static String caption(FxRobot robot) {
    return robot.lookup("#relay-caption").queryAs(Labeled.class).getText();
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        40, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
    WaitForAsyncUtils.waitForFxEvents();
  }
}
