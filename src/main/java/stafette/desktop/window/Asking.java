package stafette.desktop.window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Window;

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

  /** With the system's own dialogs. */
  static Asking inDialogs(Window window) {
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
    };
  }
}
