package stafette.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stafette.ask.PlayerWish;
import stafette.keep.LimitsInForce;
import stafette.keep.Outputs;
import stafette.plan.Rules;
import stafette.words.Refusal;
import stafette.work.Reports;
import stafette.work.ThinLine;
import stafette.work.WriteScore;

@Command(
    name = "thin",
    description = {
      "Thins a line for players who colour it in the background: as full as each can",
      "play it, harmony and beats kept, with patterns that change at phrases."
    },
    mixinStandardHelpOptions = true)
final class ThinCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(paramLabel = "SCORE", description = "A MusicXML file, plain or compressed.")
  private Path score = Path.of("");

  @Mixin private ScoreOptions line = new ScoreOptions();

  @Option(
      names = "--players",
      paramLabel = "NAMES",
      description = "Who colours the line: \"Trumpet 1, Anna = clarinet\"; each for itself.")
  private @Nullable String players;

  @Option(
      names = "--players-file",
      paramLabel = "FILE",
      description = "Players with measured limits.")
  private @Nullable Path playersFile;

  @Mixin private TechniqueOptions techniques = new TechniqueOptions();

  @Option(
      names = "--ready",
      paramLabel = "SECONDS",
      description = "Rest before an entry after something else (default: 0.5).")
  private double ready = Rules.DEFAULT_READY_SECONDS;

  @Mixin private TimeOptions search = new TimeOptions();

  @Mixin private OutOptions writing = new OutOptions();

  @Option(names = "--json", description = "Prints JSON.")
  private boolean json;

  ThinCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    List<Path> measured = Optional.ofNullable(playersFile).stream().toList();
    Outputs outputs = Outputs.besideAll(List.of(List.of(score), line.inputs(), measured));
    Optional<WriteScore.Target> target = writing.target(score, outputs);
    LimitsInForce limits = line.limits();
    ThinLine.ThinOutcome outcome =
        ThinLine.thin(request(), limits, () -> false, new Waiting(output)::thinning);
    if (json) {
      output.out().println(Reports.json(outcome));
      output.err().print(ThinText.unfinished(outcome));
    } else {
      output.out().print(ThinText.of(outcome));
    }
    if (target.isPresent()) {
      String saved = SplitText.saved(WriteScore.save(outcome, limits, target.get()));
      (json ? output.err() : output.out()).print(saved);
    }
    return outcome.hasFindings() ? Commands.FINDINGS : Commands.FINE;
  }

  private ThinLine.ThinRequest request() throws Refusal {
    if (players == null) {
      throw Refusal.wrongUse(
          "who shall colour the line? Write for example --players \"Trumpet 1, Clarinet 2\"");
    }
    return new ThinLine.ThinRequest(
        line.request(score, false),
        PlayerWish.parse(players),
        Optional.ofNullable(playersFile),
        techniques.allowances(),
        line.assurance(),
        Conversions.seconds("--ready", ready, 0, 3600),
        search.seconds());
  }
}
