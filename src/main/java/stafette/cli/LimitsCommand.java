package stafette.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stafette.keep.LimitsInForce;
import stafette.words.Refusal;

@Command(
    name = "limits",
    description = "Shows the limits in force with their sources, or checks tables of your own.",
    mixinStandardHelpOptions = true)
final class LimitsCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(arity = "0..1", paramLabel = "INSTRUMENT", description = "One instrument, in full.")
  private @Nullable String instrument;

  @Option(
      names = "--limits",
      paramLabel = "DIR",
      description = "Your own tables, laid over the built-in ones.")
  private @Nullable Path own;

  @Option(
      names = "--validate",
      paramLabel = "DIR",
      description = "Checks a folder of tables and says what is wrong.")
  private @Nullable Path validate;

  LimitsCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    if (validate != null) {
      return validated(validate);
    }
    LimitsInForce limits = LimitsInForce.load(Optional.ofNullable(own));
    if (instrument == null) {
      output.out().print(LimitsText.overview(limits.catalogue().instruments()));
    } else {
      output.out().print(LimitsText.of(limits.instrument(instrument)));
      output.out().println();
      output.out().println(NumberText.CAUTION);
    }
    return Commands.FINE;
  }

  private int validated(Path folder) {
    List<String> problems = LimitsInForce.problemsIn(folder);
    problems.forEach(output.out()::println);
    if (problems.isEmpty()) {
      output.out().println(folder + ": these tables can be used");
    }
    return problems.isEmpty() ? Commands.FINE : Commands.FILE;
  }
}
