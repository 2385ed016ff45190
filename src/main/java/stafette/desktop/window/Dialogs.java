package stafette.desktop.window;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.DialogPane;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import stafette.desktop.texts.Texts;

/** Asks in dialogs over the window: the system's own for files, in the window's style otherwise. */
public final class Dialogs implements Asking {
  private static final double WIDTH_EM = 38;
  private static final double MOST_HEIGHT_EM = 22;

  private final Stage window;
  private final Texts texts;

  public Dialogs(Stage window, Texts texts) {
    this.window = window;
    this.texts = texts;
  }

  @Override
  public Optional<Path> toOpen() {
    FileChooser chooser = new FileChooser();
    chooser
        .getExtensionFilters()
        .add(
            new FileChooser.ExtensionFilter(
                texts.get("dialog.files"), "*.musicxml", "*.xml", "*.mxl", "*.json"));
    return Optional.ofNullable(chooser.showOpenDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> toWrite(Path proposed) {
    FileChooser chooser = new FileChooser();
    chooser.setInitialFileName(proposed.getFileName().toString());
    Optional.ofNullable(proposed.toAbsolutePath().getParent())
        .filter(Files::isDirectory)
        .ifPresent(folder -> chooser.setInitialDirectory(folder.toFile()));
    return Optional.ofNullable(chooser.showSaveDialog(window)).map(File::toPath);
  }

  @Override
  public boolean agrees(Proposal proposal) {
    ButtonType action = new ButtonType(proposal.action(), ButtonBar.ButtonData.OK_DONE);
    return ask(proposal.title(), content(proposal.what(), proposal.note()), List.of(action))
        .filter(action::equals)
        .isPresent();
  }

  @Override
  public Parting parting() {
    ButtonType keep = new ButtonType(texts.get("parting.keep"), ButtonBar.ButtonData.YES);
    ButtonType leave = new ButtonType(texts.get("parting.leave"), ButtonBar.ButtonData.NO);
    VBox why = content(List.of(texts.get("parting.why")), "");
    Optional<ButtonType> answer = ask(texts.get("parting.title"), why, List.of(keep, leave));
    if (answer.filter(keep::equals).isPresent()) {
      return Parting.KEEP;
    }
    return answer.filter(leave::equals).isPresent() ? Parting.LEAVE : Parting.CANCEL;
  }

  private Optional<ButtonType> ask(String title, VBox content, List<ButtonType> actions) {
    Dialog<ButtonType> dialog = new Dialog<>();
    dialog.initOwner(window);
    dialog.setTitle(texts.get("window.title"));
    DialogPane pane = dialog.getDialogPane();
    pane.getStyleClass().add("asking");
    window.getScene().getStylesheets().forEach(pane.getStylesheets()::add);
    window.getScene().getRoot().getStyleClass().stream()
        .filter("dark"::equals)
        .forEach(pane.getStyleClass()::add);
    Label head = new Label(title);
    head.getStyleClass().add("panel-title");
    content.getChildren().add(0, wrapped(head));
    pane.setContent(content);
    pane.getButtonTypes().setAll(actions);
    pane.getButtonTypes()
        .add(new ButtonType(texts.get("parting.cancel"), ButtonBar.ButtonData.CANCEL_CLOSE));
    return dialog.showAndWait();
  }

  private static VBox content(List<String> what, String note) {
    VBox lines = new VBox(4);
    what.forEach(line -> lines.getChildren().add(wrapped(new Label(line))));
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("flat-scroll");
    double em = new Label().getFont().getSize();
    scroll.setMaxHeight(MOST_HEIGHT_EM * em);
    VBox content = new VBox(em, scroll);
    content.setPrefWidth(WIDTH_EM * em);
    if (!note.isEmpty()) {
      Label small = wrapped(new Label(note));
      small.getStyleClass().add("quiet");
      content.getChildren().add(small);
    }
    return content;
  }

  private static Label wrapped(Label label) {
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
