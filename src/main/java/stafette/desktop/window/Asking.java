package stafette.desktop.window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import stafette.desktop.texts.Texts;

/** Asks what only the user knows. */
public interface Asking {
  /** A score or a plan to open. */
  Optional<Path> toOpen();

  /**
   * A file to write.
   *
   * @param proposed its name
   */
  Optional<Path> toWrite(String proposed);

  /** Whether the user agrees to what would be done. */
  boolean agrees(String title, List<String> what);

  /** What shall become of work by hand that is in no file yet, before it leaves the desk. */
  Parting parting();

  /** What becomes of work that leaves the desk. */
  enum Parting {
    KEEP,
    LEAVE,
    CANCEL
  }

  /** With the system's own dialogs. */
  static Asking inDialogs(Window window, Texts texts) {
    return new Asking() {
      @Override
      public Optional<Path> toOpen() {
        FileChooser chooser = new FileChooser();
        chooser
            .getExtensionFilters()
            .add(
                new FileChooser.ExtensionFilter(
                    "MusicXML, JSON", "*.musicxml", "*.xml", "*.mxl", "*.json"));
        return Optional.ofNullable(chooser.showOpenDialog(window)).map(File::toPath);
      }

      @Override
      public Optional<Path> toWrite(String proposed) {
        FileChooser chooser = new FileChooser();
        chooser.setInitialFileName(proposed);
        return Optional.ofNullable(chooser.showSaveDialog(window)).map(File::toPath);
      }

      @Override
      public boolean agrees(String title, List<String> what) {
        Alert alert =
            new Alert(
                Alert.AlertType.CONFIRMATION,
                String.join("\n", what),
                ButtonType.OK,
                ButtonType.CANCEL);
        alert.initOwner(window);
        alert.setHeaderText(title);
        return alert.showAndWait().filter(ButtonType.OK::equals).isPresent();
      }

      @Override
      public Parting parting() {
        ButtonType keep = button("parting.keep", ButtonBar.ButtonData.YES);
        ButtonType leave = button("parting.leave", ButtonBar.ButtonData.NO);
        ButtonType cancel = button("parting.cancel", ButtonBar.ButtonData.CANCEL_CLOSE);
        Alert alert =
            new Alert(Alert.AlertType.CONFIRMATION, texts.get("parting.why"), keep, leave, cancel);
        alert.initOwner(window);
        alert.setTitle(texts.get("window.title"));
        alert.setHeaderText(texts.get("parting.title"));
        ButtonType answer = alert.showAndWait().orElse(cancel);
        return answer == keep ? Parting.KEEP : answer == leave ? Parting.LEAVE : Parting.CANCEL;
      }

      private ButtonType button(String key, ButtonBar.ButtonData kind) {
        return new ButtonType(texts.get(key), kind);
      }
    };
  }
}
