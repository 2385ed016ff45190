package stafette.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A command that was run.
 *
 * @param exitCode what it ended with
 * @param out what it printed
 * @param err what it said
 */
record Ran(int exitCode, String out, String err) {
  static Ran command(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exitCode =
        Commands.run(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            StandardCharsets.UTF_8,
            file -> Optional.of("no window here: " + file),
            args);
    return new Ran(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
