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
  private static final String IN_FORCE = "";

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
      arity = "0..1",
      fallbackValue = IN_FORCE,
      paramLabel = "DIR",
      description =
          "Checks a folder of tables, or those in force, and says what is wrong and which limits"
              + " contradict what sources say of them.")
  private @Nullable Path validate;

  LimitsCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    if (validate != null) {
      return validated(
          validate.toString().equals(IN_FORCE) ? Optional.ofNullable(own) : Optional.of(validate));
    }
    LimitsInForce limits = LimitsInForce.load(Optional.ofNullable(own));
    if (instrument == null) {
      output.out().print(LimitsText.overview(limits.catalogue().instruments()));
    } else {
      output.out().print(LimitsText.of(limits.instrument(instrument), limits.evidence()));
      output.out().println();
      output.out().println(NumberText.CAUTION);
    }
    return Commands.FINE;
  }

  private int validated(Optional<Path> folder) throws Refusal {
    List<String> problems = folder.map(LimitsInForce::problemsIn).orElse(List.of());
    problems.forEach(output.out()::println);
    if (!problems.isEmpty()) {
      return Commands.FILE;
    }
    List<String> contradictions = LimitsInForce.contradictions(folder);
    contradictions.forEach(output.out()::println);
    String tables = folder.map(path -> path + ": these tables").orElse("the built-in tables");
    output.out().println(tables + " can be used" + allTheSame(contradictions.size()));
    return contradictions.isEmpty() ? Commands.FINE : Commands.FINDINGS;
  }

  private static String allTheSame(int contradictions) {
    return switch (contradictions) {
      case 0 -> "";
      case 1 -> ", though one limit contradicts what a source says";
      default -> ", though limits contradict what sources say, " + contradictions + " times";
    };
  }
}
