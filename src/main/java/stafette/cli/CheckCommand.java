package stafette.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stafette.keep.LimitsInForce;
import stafette.words.Refusal;
import stafette.work.CheckScore;
import stafette.work.Reports;

@Command(
    name = "check",
    description = "Checks the fast passages of a score, or one line, against the limits.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(paramLabel = "SCORE", description = "A MusicXML file, plain or compressed.")
  private Path score = Path.of("");

  @Mixin private ScoreOptions line = new ScoreOptions();

  @Option(
      names = "--as",
      paramLabel = "INSTRUMENTS",
      description = "Against which instruments: \"flute, harp, violin\".")
  private @Nullable String instruments;

  @Mixin private TechniqueOptions techniques = new TechniqueOptions();

  @Option(names = "--json", description = "Prints JSON.")
  private boolean json;

  CheckCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    LimitsInForce limits = line.limits();
    CheckScore.CheckedScore checked = checked(limits);
    if (json) {
      output.out().println(Reports.json(checked, report -> command(checked, report, limits)));
    } else {
      output.out().print(CheckText.all(checked, report -> command(checked, report, limits)));
      if (!checked.reports().isEmpty()) {
        output.out().println(NumberText.CAUTION);
      }
    }
    return checked.hasFindings() ? Commands.FINDINGS : Commands.FINE;
  }

  private Optional<String> command(
      CheckScore.CheckedScore checked, CheckScore.PassageVerdicts report, LimitsInForce limits) {
    return checked
        .toSplit(report)
        .map(
            passage ->
                SplitInstead.of(score, checked.score().score(), passage, line.again(), limits));
  }

  private CheckScore.CheckedScore checked(LimitsInForce limits) throws Refusal {
    if (line.namesALine()) {
      return CheckScore.line(
          line.request(score, false), asked(), line.assurance(), techniques.allowances(), limits);
    }
    if (instruments != null || line.narrowsWithoutPart()) {
      throw Refusal.wrongUse(
          "which part? --as, --bars, --staff, --voice, --tone and --slur go with --part");
    }
    return CheckScore.passages(
        score, line.tremolo(), line.tempoWish(), line.assurance(), techniques.allowances(), limits);
  }

  private List<String> asked() {
    return instruments == null
        ? List.of()
        : Arrays.stream(instruments.split(",", -1))
            .map(String::trim)
            .filter(name -> !name.isEmpty())
            .toList();
  }
}
