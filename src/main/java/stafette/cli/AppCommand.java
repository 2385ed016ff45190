package stafette.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "app",
    description = "Opens the desktop: see a plan, hear it, change it by hand.",
    mixinStandardHelpOptions = true)
final class AppCommand implements Callable<Integer> {
  private final Output output;
  private final Commands.WindowDoor desktop;

  @Parameters(arity = "0..1", paramLabel = "SCORE", description = "A score or a plan to open.")
  private @Nullable Path file;

  AppCommand(Output output, Commands.WindowDoor desktop) {
    this.output = output;
    this.desktop = desktop;
  }

  @Override
  public Integer call() {
    Optional<String> problem = desktop.open(Optional.ofNullable(file));
    problem.ifPresent(output.err()::println);
    return problem.isPresent() ? Commands.FILE : Commands.FINE;
  }
}
