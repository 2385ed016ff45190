package stafette.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stafette.ask.SplitRequest;
import stafette.ask.TempiWish;
import stafette.keep.LimitsInForce;
import stafette.words.Refusal;
import stafette.work.CompareTempi;
import stafette.work.Reports;

@Command(
    name = "tempo",
    description = {
      "Tempo against number of players: which combinations hold, with what strain.",
      "So many players are the best so many of those listed."
    },
    mixinStandardHelpOptions = true)
final class TempoCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(paramLabel = "SCORE", description = "A MusicXML file, plain or compressed.")
  private Path score = Path.of("");

  @Mixin private ScoreOptions line = new ScoreOptions();
  @Mixin private PlanOptions options = new PlanOptions();

  @Option(
      names = "--tempi",
      paramLabel = "A-B/STEP",
      description =
          "Which tempi: 80-120, 80-120/4, \"dotted quarter = 60-90\" (default: about eight from 70 to 130 %% of the present one).")
  private @Nullable TempiWish tempi;

  @Option(names = "--json", description = "Prints JSON.")
  private boolean json;

  TempoCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    LimitsInForce limits = line.limits();
    SplitRequest request =
        WhoText.among(
            options.request(score, line, false),
            options,
            limits,
            json ? output.toErrors() : output);
    CompareTempi.TempoOutcome outcome =
        CompareTempi.compare(
            new CompareTempi.TempoRequest(request, Optional.ofNullable(tempi)),
            limits,
            () -> false,
            new Waiting(output)::comparing);
    output.out().print(json ? Reports.json(outcome) : TempoText.of(outcome));
    return outcome.presentPlan().isPresent() ? Commands.FINE : Commands.FINDINGS;
  }
}
