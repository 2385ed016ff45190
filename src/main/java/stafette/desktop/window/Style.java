package stafette.desktop.window;

import java.util.Objects;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** The two styles, light and dark. */
public enum Style {
  LIGHT,
  DARK;

  private static final String SHEET =
      Objects.requireNonNull(
              Style.class.getResource("/stafette/desktop/window/desktop.css"), "style sheet")
          .toExternalForm();

  static Style of(boolean dark) {
    return dark ? DARK : LIGHT;
  }

  /** Gives a window this style. */
  public void applyTo(Scene scene) {
    if (!scene.getStylesheets().contains(SHEET)) {
      scene.getStylesheets().add(SHEET);
    }
    Parent root = scene.getRoot();
    root.getStyleClass().remove("dark");
    if (this == DARK) {
      root.getStyleClass().add("dark");
    }
  }
}
