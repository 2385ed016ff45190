package stafette.desktop;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.stage.Stage;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Dialogs;
import stafette.desktop.window.MainWindow;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.words.Refusal;

/** The desktop as the toolkit starts it. */
public final class DesktopApplication extends Application {
  private static final Logger LOG = Logger.getLogger("stafette.desktop");

  @Override
  public void start(Stage stage) {
    Texts texts = Texts.in(Locale.getDefault());
    MainWindow window =
        new MainWindow(stage, texts, limits(), new Remembered(folder()), new Dialogs(stage, texts));
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, why) -> {
          LOG.log(Level.SEVERE, "unforeseen", why);
          window.failed(why);
        });
    window.show();
    getParameters().getUnnamed().stream().findFirst().map(Path::of).ifPresent(window::open);
  }

  private static LimitsInForce limits() {
    try {
      return LimitsInForce.load(Optional.empty());
    } catch (Refusal e) {
      throw new IllegalStateException("the limits of our own can't be read", e);
    }
  }

  /** Where the user's programs keep what they remember. */
  private static Path folder() {
    String home = System.getProperty("user.home", ".");
    return Optional.ofNullable(System.getenv("XDG_STATE_HOME"))
        .filter(set -> !set.isBlank())
        .map(Path::of)
        .orElse(Path.of(home, ".local", "state"))
        .resolve("stafette");
  }
}
