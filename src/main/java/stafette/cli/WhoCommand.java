package stafette.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.words.Refusal;
import stafette.work.who.SolvedCrew;
import stafette.work.who.WhoCouldPlay;
import stafette.work.who.WhoReport;

@Command(
    name = "who",
    description = {
      "Who could play a line: every player of the score and the usual neighbours,",
      "then the best few crews, each with a plan."
    },
    mixinStandardHelpOptions = true)
final class WhoCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(paramLabel = "SCORE", description = "A MusicXML file, plain or compressed.")
  private Path score = Path.of("");

  @Mixin private ScoreOptions line = new ScoreOptions();
  @Mixin private TechniqueOptions techniques = new TechniqueOptions();

  @Option(names = "--json", description = "Prints JSON.")
  private boolean json;

  WhoCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    LimitsInForce limits = line.limits();
    SplitRequest usual = SplitRequest.usual(line.request(score, false));
    SplitRequest request =
        usual
            .under(line.assurance(), usual.overlap(), usual.readySeconds(), usual.favour())
            .with(List.of(), techniques.allowances());
    WhoCouldPlay who = WhoCouldPlay.of(request, limits);
    if (json) {
      output.out().println(WhoReport.json(who, crew -> command(who, crew, limits)));
    } else {
      output.out().print(WhoText.of(who, crew -> command(who, crew, limits)));
      output.out().println();
      output.out().println(NumberText.CAUTION);
    }
    return who.holds() ? Commands.FINE : Commands.FINDINGS;
  }

  private Optional<String> command(WhoCouldPlay who, SolvedCrew crew, LimitsInForce limits) {
    return SplitInstead.of(score, who.found().score().score(), crew.asked(), line.again(), limits);
  }
}
