package stafette.desktop.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import stafette.desktop.texts.Texts;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.words.Refusal;

/** The window in words: what each control in it is, and what went wrong. */
@ExtendWith(ApplicationExtension.class)
class WindowNamesTest {
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
            new Remembered(Files.createTempDirectory("stafette-names")),
            new Refusing());
    window.show();
  }

  /** Names no file and agrees to nothing. */
  private static final class Refusing implements Asking {
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

  @Test
  void every_control_that_the_keyboard_reaches_has_a_name(FxRobot robot) throws TimeoutException {
    assertEquals(Set.of(), nameless());
    robot.interact(() -> window.open(Path.of("samples", "lantern-run.musicxml")));
    ListView<?> passages = robot.lookup("#passages-list").queryListView();
    until(() -> !passages.getItems().isEmpty());
    robot.interact(() -> passages.getSelectionModel().select(0));
    until(() -> robot.lookup("#segment-1").tryQuery().isPresent());
    robot.interact(
        () ->
            robot.lookup(".titled-pane").queryAllAs(TitledPane.class).stream()
                .limit(2)
                .forEach(pane -> pane.setExpanded(true)));
    until(() -> reached().count() > 40);
    TabPane side = robot.lookup(".tab-pane").queryAs(TabPane.class);
    for (int tab = 0; tab < side.getTabs().size(); tab++) {
      int chosen = tab;
      robot.interact(() -> side.getSelectionModel().select(chosen));
      WaitForAsyncUtils.waitForFxEvents();
      assertEquals(Set.of(), nameless(), side.getTabs().get(tab).getText());
    }
  }

  @Test
  void what_should_not_happen_is_said(FxRobot robot) {
    window.failed(new IllegalStateException("no such lane"));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(
        "this should not happen: java.lang.IllegalStateException: no such lane",
        robot.lookup("#status").queryAs(Label.class).getText());
  }

  private Set<String> nameless() {
    Set<Node> labelled =
        everything(stage.getScene().getRoot())
            .flatMap(node -> node instanceof Label label ? Stream.of(label) : Stream.empty())
            .flatMap(label -> Stream.ofNullable(label.getLabelFor()))
            .collect(Collectors.toSet());
    return reached()
        .filter(node -> !labelled.contains(node) && !hasName(node))
        .map(node -> node.getClass().getSimpleName() + "#" + node.getId())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Stream<Node> reached() {
    return everything(stage.getScene().getRoot())
        .filter(Node::isFocusTraversable)
        .filter(node -> !(node instanceof ScrollPane) && !(node instanceof TabPane));
  }

  private static boolean hasName(Node node) {
    boolean words = node instanceof Labeled labeled && !isBlank(labeled.getText());
    return words || !isBlank(node.getAccessibleText());
  }

  private static boolean isBlank(@org.jspecify.annotations.Nullable String text) {
    return text == null || text.isBlank();
  }

  private static Stream<Node> everything(Node node) {
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(WindowNamesTest::everything)
            : Stream.empty();
    return node.isVisible() ? Stream.concat(Stream.of(node), below) : Stream.empty();
  }

  private static void until(java.util.function.BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        40, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
  }
}
