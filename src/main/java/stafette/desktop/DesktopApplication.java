package stafette.desktop;

import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Application;
import javafx.stage.Stage;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.MainWindow;

/** The desktop as the toolkit starts it. */
public final class DesktopApplication extends Application {
  @Override
  public void start(Stage stage) {
    MainWindow window = new MainWindow(stage, Texts.in(Locale.getDefault()));
    window.show();
    getParameters().getUnnamed().stream().findFirst().map(Path::of).ifPresent(window::open);
  }
}
