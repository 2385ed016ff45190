package stafette;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
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
    PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, charset);
    PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, charset);
    int exitCode = Commands.run(out, err, charset, Desktop::open, args);
    out.flush();
    System.exit(exitCode);
  }

  /**
   * What the terminal shows: JDK 17 knows it only as a property of its own, and not when the output
   * is a pipe.
   */
  private static Charset terminalCharset() {
    return Optional.ofNullable(System.getProperty("sun.stdout.encoding"))
        .map(Charset::forName)
        .orElse(StandardCharsets.UTF_8);
  }
}
