package stafette.desktop;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/**
 * Starts the desktop. It is no application itself, since a main class on the class path must not be
 * one.
 */
public final class Desktop {
  private static final String NO_SCREEN =
      "There is no screen here to open a window on. Start this command where windows can be shown;"
          + " all other commands work without one.";

  /** The toolkit complains here of the class path, which does no harm. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

  private Desktop() {}

  /**
   * Shows the window until it is closed.
   *
   * @param file a score or a plan to open
   * @return why it can't be opened; empty if it could
   */
  public static Optional<String> open(Optional<Path> file) {
    if (!hasScreen()) {
      return Optional.of(NO_SCREEN);
    }
    TOOLKIT.setLevel(Level.SEVERE);
    try {
      Application.launch(
          DesktopApplication.class, file.map(Path::toString).stream().toArray(String[]::new));
      return Optional.empty();
    } catch (UnsupportedOperationException | UnsatisfiedLinkError e) {
      return Optional.of(NO_SCREEN + " (" + e.getMessage() + ")");
    }
  }

  /** On Linux and its like a window needs an X display; elsewhere there is always one to try. */
  private static boolean hasScreen() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    return system.contains("win")
        || system.contains("mac")
        || !Optional.ofNullable(System.getenv("DISPLAY")).orElse("").isBlank();
  }
}
