package stafette;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import stafette.cli.Commands;
import stafette.desktop.Desktop;

/** The one door into the program. */
public final class Stafette {
  private Stafette() {}

  /** Runs a command and ends with its exit code. */
  public static void main(String[] args) {
    Charset charset = terminalCharset();
    System.exit(
        Commands.run(
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            charset,
            Desktop::open,
            args));
  }

  /**
   * What the terminal shows: JDK 17 knows it only as a property of its own, and not when the output
   * is a pipe.
   */
  private static Charset terminalCharset() {
    return Optional.ofNullable(System.getProperty("sun.stdout.encoding"))
        .filter(Charset::isSupported)
        .map(Charset::forName)
        .orElse(StandardCharsets.UTF_8);
  }
}
