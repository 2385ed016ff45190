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
import stafette.ask.SplitRequest;
import stafette.check.alone.ThinnedPart;
import stafette.keep.LimitsInForce;
import stafette.keep.Outputs;
import stafette.plan.Plan;
import stafette.plan.SourceTreatment;
import stafette.words.Refusal;
import stafette.work.Reports;
import stafette.work.SideBySide;
import stafette.work.SplitLine;
import stafette.work.ThinLine;
import stafette.work.WriteScore;

@Command(
    name = "split",
    description = "Splits a line among players and writes the plan into a copy of the score.",
    mixinStandardHelpOptions = true)
final class SplitCommand implements Callable<Integer> {
  private enum YesOrNo {
    YES,
    NO
  }

  private final Output output;

  @Parameters(paramLabel = "SCORE", description = "A MusicXML file, plain or compressed.")
  private Path score = Path.of("");

  @Mixin private ScoreOptions line = new ScoreOptions();
  @Mixin private PlanOptions options = new PlanOptions();
  @Mixin private AlternativesOptions others = new AlternativesOptions();
  @Mixin private DetailOptions details = new DetailOptions();

  @Mixin private OutOptions writing = new OutOptions();

  @Option(
      names = "--source",
      paramLabel = "WHAT",
      description = "What becomes of the line split: keep (default), cue or remove.")
  private SourceTreatment source = SourceTreatment.KEEP;

  @Mixin private SheetOptions.MarkingOptions marking = new SheetOptions.MarkingOptions();

  @Option(
      names = "--pedals",
      paramLabel = "YES_OR_NO",
      description =
          "Whether harps are told in the score how to set their pedals: yes (default) or no.")
  private YesOrNo pedals = YesOrNo.YES;

  @Option(
      names = "--plan",
      paramLabel = "FILE",
      description = "Saves the plan, to be opened again.")
  private @Nullable Path planFile;

  @Option(
      names = "--colour",
      paramLabel = "NAMES",
      description =
          "Who colours the line in the background, thinned (with --tone each its top tone):"
              + " \"Trumpet 1, Clarinet 2\".")
  private @Nullable String colour;

  @Option(names = "--json", description = "Prints JSON.")
  private boolean json;

  SplitCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    Outputs outputs = Outputs.besideAll(List.of(List.of(score), line.inputs(), options.inputs()));
    Optional<WriteScore.Target> target = writing.target(score, outputs);
    if (planFile != null) {
      outputs.add(planFile, writing.force());
    }
    LimitsInForce limits = line.limits();
    SplitRequest request =
        WhoText.among(
            options.request(score, line, source == SourceTreatment.CUE).with(details.seats()),
            options,
            limits,
            json ? output.toErrors() : output);
    int wanted = others.wanted();
    SideBySide plans = SideBySide.split(request, limits, wanted, new Waiting(output));
    output.remark(plans.main(), request);
    print(plans, request, wanted > 0);
    SplitLine.SplitOutcome outcome = others.taken(plans);
    if (!json && others.taken().isPresent() && plans.main().plan().isPresent()) {
      output
          .out()
          .print(
              SplitText.taken(
                  others.taken().getAsInt(), outcome, details.with(outcome.seats()), output.ink()));
    }
    if (planFile != null) {
      Reports.savePlan(outcome, planFile, writing.force(), Options::typed);
      talk("Plan kept  " + planFile + "\n");
    }
    if (outcome.plan().isEmpty()) {
      return Commands.FINDINGS;
    }
    List<ThinnedPart> background = background(outcome, request, limits);
    if (target.isPresent()) {
      Plan plan = outcome.plan().get().plan();
      talk(
          SplitText.saved(
              WriteScore.save(
                  outcome.score(),
                  Optional.of(plan),
                  background,
                  marking.how(source, pedals == YesOrNo.YES),
                  limits,
                  target.get())));
    }
    return outcome.isNearest() ? Commands.FINDINGS : Commands.FINE;
  }

  private List<ThinnedPart> background(
      SplitLine.SplitOutcome outcome, SplitRequest request, LimitsInForce limits) throws Refusal {
    if (colour == null) {
      return List.of();
    }
    ThinLine.ThinOutcome thinned =
        ThinLine.beside(
            outcome, request, PlayerWish.parse(colour), limits, new Waiting(output)::thinning);
    talk(ThinText.beside(thinned, outcome));
    return thinned.parts();
  }

  private void print(SideBySide plans, SplitRequest request, boolean sideBySide) {
    if (json) {
      output
          .out()
          .println(
              sideBySide
                  ? Reports.json(plans, others.taken(), Options::typed)
                  : Reports.json(plans.main(), Options::typed));
      return;
    }
    SplitLine.SplitOutcome main = plans.main();
    output
        .out()
        .print(
            SplitText.of(
                main, SplitLine.answers(main, request), details.with(main.seats()), output.ink()));
    if (sideBySide) {
      output.out().print(AlternativesText.of(plans, details.with(main.seats())));
    }
  }

  /** Beside JSON, talk goes to the error stream, so that standard output stays data. */
  private void talk(String text) {
    (json ? output.err() : output.out()).print(text);
  }
}
