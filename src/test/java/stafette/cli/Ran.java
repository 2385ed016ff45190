package stafette.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * A command that was run.
 *
 * @param exitCode what it ended with
 * @param out what it printed
 * @param err what it said
 */
record Ran(int exitCode, String out, String err) {
  static Ran command(String... args) {
    return command(System::nanoTime, args);
  }

  /** With a clock of its own for what is told of a long search. */
  static Ran command(LongSupplier nanoClock, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exitCode =
        Commands.run(
            Output.of(out, err, StandardCharsets.UTF_8, nanoClock),
            file -> Optional.of("no window here: " + file),
            args);
    return new Ran(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
