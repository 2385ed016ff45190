package stafette.desktop;

import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import stafette.desktop.window.Style;

/** One panel alone in a window. */
public final class PanelWindow {
  private PanelWindow() {}

  /** Must be called by the toolkit's thread. */
  public static void show(Stage stage, Parent panel, Style style, int width, int height) {
    Scene scene = new Scene(panel, width, height);
    style.applyTo(scene);
    stage.setScene(scene);
    stage.sizeToScene();
    stage.show();
  }

  /** A picture once everything is laid out; called from a test. */
  public static Snapshot picture(FxRobot robot, Stage stage, String name) {
    robot.interact(() -> {});
    Snapshot[] seen = new Snapshot[1];
    robot.interact(() -> seen[0] = Snapshot.of(stage.getScene(), name));
    return seen[0];
  }
}
