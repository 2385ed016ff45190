package stafette.desktop.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.TabPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import stafette.desktop.Coarse;
import stafette.desktop.Snapshot;
import stafette.desktop.texts.Texts;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.words.Refusal;

/** The whole way through the window, from opening a sample to a written score. */
@ExtendWith(ApplicationExtension.class)
class WindowTest {
  private final List<String> agreedTo = new ArrayList<>();
  private Path folder;
  private MainWindow window;
  private Stage stage;

  @Start
  void start(Stage shown) throws Refusal, IOException {
    folder = Files.createTempDirectory("stafette-window");
    stage = shown;
    window =
        new MainWindow(
            shown,
            Texts.in(Locale.ENGLISH),
            LimitsInForce.load(Optional.empty()),
            new Remembered(folder.resolve("remembered")),
            new Agreeing());
    window.show();
  }

  /** Always agrees, and names files in the folder. */
  private final class Agreeing implements Asking {
    @Override
    public Optional<Path> toOpen() {
      return Optional.of(Path.of("samples", "mill-stairs.musicxml"));
    }

    @Override
    public Optional<Path> toWrite(Path proposed) {
      return Optional.of(folder.resolve(proposed.getFileName()));
    }

    @Override
    public boolean agrees(Proposal proposal) {
      agreedTo.addAll(proposal.what());
      return true;
    }

    @Override
    public Parting parting() {
      return Parting.LEAVE;
    }
  }

  @Test
  void a_musician_opens_a_sample_and_gets_a_written_score(FxRobot robot)
      throws TimeoutException, IOException {
    opened(robot);
    seen("1-opened");
    choose(robot);
    seen("2-planned");
    robot.clickOn("#tool-write");
    until(() -> says(robot).startsWith("Written:"));
    assertTrue(
        agreedTo.contains("Flute 1, bars 5–6: 24 notes in each, before no notes"),
        agreedTo::toString);
    Path written = folder.resolve("lantern-run-relay.musicxml");
    assertTrue(Files.readString(written).contains("<part-name>"));
    seen("3-written");
  }

  @Test
  void handoffs_are_dragged_with_the_judge_watching_and_taken_back(FxRobot robot)
      throws TimeoutException {
    planned(robot);
    String before = text(robot, "#verdict-head");
    String place = place(robot);
    robot.drag("#handoff-1").moveBy(120, 0);
    WaitForAsyncUtils.waitForFxEvents();
    seen("4-dragging");
    robot.drop();
    WaitForAsyncUtils.waitForFxEvents();
    String moved = place(robot);
    assertFalse(place.equals(moved), place);
    robot.clickOn("#tool-undo");
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(place, place(robot));
    assertEquals(before, text(robot, "#verdict-head"));
    robot.clickOn("#tool-redo");
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(moved, place(robot));
  }

  @Test
  void tempo_lock_and_a_new_plan_go_by_the_keyboard(FxRobot robot) throws TimeoutException {
    planned(robot);
    String tempo = text(robot, "#tempo-mark");
    robot.interact(() -> robot.lookup("#tempo-now").query().requestFocus());
    robot.type(KeyCode.LEFT);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(tempo.equals(text(robot, "#tempo-mark")));
    robot.interact(() -> robot.lookup("#handoff-1").query().requestFocus());
    robot.type(KeyCode.RIGHT);
    WaitForAsyncUtils.waitForFxEvents();
    robot.type(KeyCode.L);
    WaitForAsyncUtils.waitForFxEvents();
    String place = place(robot);
    robot.press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
    until(() -> says(robot).contains("proven"));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(
        robot.lookup(".handoff-both").queryAll().stream()
            .anyMatch(node -> place.equals(node.getAccessibleText())),
        place);
    seen("5-planned-around-a-lock");
  }

  @Test
  void what_is_written_is_seen_as_music_before_and_after(FxRobot robot) throws TimeoutException {
    planned(robot);
    select(robot, 3);
    until(() -> !robot.lookup("#written-bars").queryListView().getItems().isEmpty());
    WaitForAsyncUtils.waitForFxEvents();
    seen("6-as-written");
    select(robot, 0);
    robot.clickOn("#tool-more");
    robot.clickOn("#tool-dark");
    seen("7-players-dark");
  }

  @Test
  void with_or_without_a_sound_card_the_cursor_moves_while_it_plays(FxRobot robot)
      throws TimeoutException {
    planned(robot);
    robot.clickOn("#hear-now");
    until(() -> robot.lookup("#play-cursor").query().isVisible());
    robot.clickOn("#hear-now");
    until(() -> !robot.lookup("#play-cursor").query().isVisible());
  }

  @Test
  void a_sheet_is_printed_that_names_the_players(FxRobot robot)
      throws TimeoutException, IOException {
    robot.clickOn("#tool-more").clickOn("#tool-SHEET");
    assertEquals("Open a score, or drop one here.", says(robot));
    planned(robot);
    robot.clickOn("#tool-more").clickOn("#tool-SHEET");
    until(() -> says(robot).startsWith("Written:"));
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("lantern-run-sheet.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("Flute 1") && text.contains("Flute 2"), text);
    }
  }

  @Test
  void what_is_heard_becomes_a_file_unless_nobody_is_heard(FxRobot robot)
      throws TimeoutException, IOException {
    planned(robot);
    robot.clickOn("#lane-silenced-1").clickOn("#tool-more").clickOn("#tool-SOUND");
    until(() -> says(robot).startsWith("Written:"));
    assertTrue(Files.size(folder.resolve("lantern-run.wav")) > 1000);
    robot.clickOn("#lane-silenced-2").clickOn("#tool-more").clickOn("#tool-SOUND");
    assertTrue(says(robot).startsWith("Nobody would be heard"), says(robot));
  }

  @Test
  void a_file_that_is_none_is_refused_in_words(FxRobot robot) throws TimeoutException {
    robot.interact(() -> window.open(Path.of("samples", "missing.musicxml")));
    until(() -> says(robot).contains("there is no such file"));
  }

  private void planned(FxRobot robot) throws TimeoutException {
    opened(robot);
    choose(robot);
  }

  private void opened(FxRobot robot) throws TimeoutException {
    robot.interact(() -> window.open(Path.of("samples", "lantern-run.musicxml")));
    until(() -> !robot.lookup("#passages-list").queryListView().getItems().isEmpty());
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void choose(FxRobot robot) throws TimeoutException {
    ListView<?> passages = robot.lookup("#passages-list").queryListView();
    robot.interact(() -> passages.getSelectionModel().select(0));
    until(() -> says(robot).contains("proven"));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static void select(FxRobot robot, int tab) {
    robot.interact(
        () -> robot.lookup(".tab-pane").queryAs(TabPane.class).getSelectionModel().select(tab));
  }

  private static String place(FxRobot robot) {
    return String.valueOf(robot.lookup("#handoff-1").query().getAccessibleText());
  }

  private static String says(FxRobot robot) {
    return text(robot, "#status");
  }

  private static String text(FxRobot robot, String query) {
    return robot.lookup(query).queryAs(Labeled.class).getText();
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        40, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
  }

  /** Looks as it should, from afar. */
  private void seen(String name) {
    Snapshot picture =
        WaitForAsyncUtils.waitForAsyncFx(
            5000, () -> Snapshot.of(stage.getScene(), "window-" + name));
    Coarse coarse = Coarse.of(picture);
    double likeness = coarse.likeness(Coarse.known("window-" + name));
    assertTrue(likeness > 0.55, name + ": likeness " + likeness + ", seen from afar:\n" + coarse);
  }
}
