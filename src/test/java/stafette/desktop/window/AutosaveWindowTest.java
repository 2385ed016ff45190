package stafette.desktop.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import stafette.desktop.LeftBehind;
import stafette.desktop.Snapshot;
import stafette.desktop.texts.Texts;
import stafette.keep.Remembered;
import stafette.words.Refusal;

/** A window in which work by hand was left behind, and is not lost. */
@ExtendWith(ApplicationExtension.class)
class AutosaveWindowTest {
  private Path folder = Path.of("");
  private Path score = Path.of("");
  private MainWindow window;
  private Stage stage;
  private Asking.Parting answer = Asking.Parting.CANCEL;
  private Path toOpen = Path.of("");
  private int asked;

  @Start
  void start(Stage shown) throws IOException, Refusal {
    folder = Files.createTempDirectory("stafette-keeping");
    score = LeftBehind.score(folder);
    LeftBehind.crashed(state(), score);
    Remembered remembered = new Remembered(state());
    remembered.opened(folder.resolve("gone.musicxml"));
    stage = shown;
    window =
        new MainWindow(
            shown, Texts.in(Locale.ENGLISH), LeftBehind.limits(), remembered, new Answers());
  }

  private Path state() {
    return folder.resolve("state");
  }

  /** What is asked is answered as the test wants it. */
  private final class Answers implements Asking {
    @Override
    public Optional<Path> toOpen() {
      return Optional.of(toOpen);
    }

    @Override
    public Optional<Path> toWrite(Path proposed) {
      return Optional.of(folder.resolve(proposed.getFileName()));
    }

    @Override
    public boolean agrees(Proposal proposal) {
      return true;
    }

    @Override
    public Parting parting() {
      asked++;
      return answer;
    }
  }

  @Test
  void what_was_left_is_put_back_and_closing_asks_about_it(FxRobot robot) throws TimeoutException {
    recovered(robot);
    seen("recovered");
    close(robot);
    assertEquals(1, asked);
    assertTrue(stage.isShowing(), "the user would rather not");
    answer = Asking.Parting.KEEP;
    close(robot);
    assertFalse(stage.isShowing());
    assertTrue(Files.exists(folder.resolve("bells.json")));
    assertEquals(List.of(), new Remembered(state()).unfinished().left());
  }

  @Test
  void work_left_on_purpose_is_gone_with_the_window(FxRobot robot) throws TimeoutException {
    recovered(robot);
    answer = Asking.Parting.LEAVE;
    close(robot);
    assertFalse(stage.isShowing());
    assertFalse(Files.exists(folder.resolve("bells.json")));
    assertEquals(List.of(), new Remembered(state()).unfinished().left());
  }

  @Test
  void a_file_dropped_on_it_asks_first_and_then_opens(FxRobot robot) throws TimeoutException {
    recovered(robot);
    Path sample = Path.of("samples", "lantern-run.musicxml");
    robot.interact(() -> window.drop(List.of(sample.toFile())));
    assertEquals(1, asked);
    assertTrue(stage.getTitle().startsWith("bells"), stage.getTitle());
    answer = Asking.Parting.KEEP;
    robot.interact(() -> window.drop(List.of(sample.toFile())));
    until(() -> stage.getTitle().startsWith("lantern-run"));
    robot.interact(() -> window.drop(List.of(folder.resolve("bells.json").toFile())));
    until(() -> robot.lookup("#segment-1").tryQuery().isPresent());
    assertEquals(2, asked, "a sample just opened is asked about by nobody");
  }

  @Test
  void another_passage_is_not_chosen_over_work_by_hand_unasked(FxRobot robot)
      throws TimeoutException {
    recovered(robot);
    var passages = robot.lookup("#passages-list").queryListView();
    robot.interact(() -> passages.getSelectionModel().select(0));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(1, asked);
    assertTrue(passages.getSelectionModel().isEmpty());
    answer = Asking.Parting.LEAVE;
    robot.interact(() -> passages.getSelectionModel().select(0));
    until(() -> says(robot).contains("proven"));
    close(robot);
    assertFalse(stage.isShowing(), "what a search brings back needs no asking");
  }

  @Test
  void a_score_that_is_gone_is_looked_for_and_the_desk_comes_back(FxRobot robot)
      throws TimeoutException, IOException {
    toOpen = Files.move(score, folder.resolve("moved.musicxml"));
    offered(robot);
    robot.clickOn("#offer-accept");
    until(() -> robot.lookup("#offer-score").tryQuery().isPresent());
    assertTrue(text(robot, "#offer-words").contains("there is no such file"));
    seen("score-gone");
    robot.clickOn("#offer-copy");
    until(() -> Files.exists(folder.resolve("bells-unfinished.json")));
    robot.clickOn("#offer-score");
    until(() -> robot.lookup("#segment-1").tryQuery().isPresent());
  }

  @Test
  void a_score_that_is_another_one_keeps_the_players_and_offers_the_old_plan(FxRobot robot)
      throws TimeoutException, IOException {
    LeftBehind.silenceFirstNotes(score);
    offered(robot);
    robot.clickOn("#offer-accept");
    until(() -> says(robot).contains("fits no more"));
    assertFalse(robot.lookup("#offer-accept").tryQuery().isPresent());
    seen("score-changed");
    robot.clickOn("#offer-discard");
    until(() -> !robot.lookup("#offer").query().isVisible());
    close(robot);
    assertEquals(List.of(), new Remembered(state()).unfinished().left());
  }

  @Test
  void what_is_put_off_is_there_the_next_time(FxRobot robot) throws TimeoutException {
    offered(robot);
    robot.clickOn("#offer-later");
    assertFalse(robot.lookup("#offer").query().isVisible());
    close(robot);
    assertEquals(1, new Remembered(state()).unfinished().left().size());
  }

  @Test
  void a_recent_file_that_is_gone_is_said_so_and_leaves_the_list(FxRobot robot)
      throws TimeoutException {
    offered(robot);
    MenuButton open = robot.lookup("#tool-open").queryAs(MenuButton.class);
    MenuItem gone = open.getItems().get(1);
    assertEquals("gone.musicxml", gone.getText());
    robot.interact(gone::fire);
    assertTrue(says(robot).contains("is not there any more"), says(robot));
    assertFalse(new Remembered(state()).recent().contains(folder.resolve("gone.musicxml")));
  }

  private void offered(FxRobot robot) throws TimeoutException {
    robot.interact(window::show);
    until(() -> robot.lookup("#offer").query().isVisible());
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void recovered(FxRobot robot) throws TimeoutException {
    offered(robot);
    assertTrue(text(robot, "#offer-words").contains("bells.musicxml"));
    seen("offered");
    robot.clickOn("#offer-accept");
    until(() -> robot.lookup("#segment-1").tryQuery().isPresent());
    until(() -> !robot.lookup("#offer").query().isVisible());
  }

  private void close(FxRobot robot) {
    robot.interact(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static String says(FxRobot robot) {
    return text(robot, "#status");
  }

  private static String text(FxRobot robot, String query) {
    return robot.lookup(query).queryAs(Labeled.class).getText();
  }

  private void seen(String name) {
    WaitForAsyncUtils.waitForFxEvents();
    WaitForAsyncUtils.waitForAsyncFx(5000, () -> Snapshot.of(stage.getScene(), "keeping-" + name));
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        40, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
  }
}
