package stafette.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stafette.ask.SplitRequest;
import stafette.check.JudgedPlan;
import stafette.keep.KeptPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.keep.Outputs;
import stafette.plan.Seat;
import stafette.words.Refusal;
import stafette.work.OpenPlan;
import stafette.work.PlayPlan;
import stafette.work.Reports;
import stafette.work.SplitLine;

@Command(
    name = "preview",
    description = "Shows a plan as a timeline: one kept in a file, or the best one for a line.",
    mixinStandardHelpOptions = true)
final class PreviewCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(paramLabel = "SCORE_OR_PLAN", description = "A plan file, or a MusicXML file.")
  private Path file = Path.of("");

  @Mixin private ScoreOptions line = new ScoreOptions();
  @Mixin private PlanOptions options = new PlanOptions();
  @Mixin private DetailOptions details = new DetailOptions();
  @Mixin private PictureOptions picture = new PictureOptions();
  @Mixin private SheetOptions sheet = new SheetOptions();
  @Mixin private SoundOptions sound = new SoundOptions();

  @Option(names = "--json", description = "Prints JSON, as split does.")
  private boolean json;

  PreviewCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws Refusal {
    boolean isPlan = KeptPlan.isPlan(file);
    Outputs outputs =
        Outputs.besideAll(
            List.of(
                isPlan ? KeptPlan.inputs(file) : List.of(file),
                line.inputs(),
                options.inputs(),
                sound.inputs()));
    picture.refuseWhatCannotBe(sheet.asked(), outputs);
    sheet.refuseWhatCannotBe(picture, outputs);
    sound.refuseWhatCannotBe(picture.replaces(), outputs);
    return isPlan ? ofPlan() : ofScore();
  }

  private int ofScore() throws Refusal {
    LimitsInForce limits = line.limits();
    SplitRequest request =
        WhoText.among(
            options.request(file, line, false).with(details.seats()),
            options,
            limits,
            json ? output.toErrors() : output);
    SplitLine.SplitOutcome outcome = SplitLine.split(request, limits, new Waiting(output));
    output.remark(outcome, request);
    output
        .out()
        .print(
            json
                ? Reports.json(outcome, Options::typed) + "\n"
                : SplitText.preview(outcome, details.with(outcome.seats()), output.ink()));
    if (outcome.plan().isPresent()) {
      show(outcome.plan().get(), outcome.score(), outcome.seats());
    }
    return outcome.plan().isPresent() && !outcome.isNearest() ? Commands.FINE : Commands.FINDINGS;
  }

  private int ofPlan() throws Refusal {
    OpenPlan.Opened opened = OpenPlan.open(file, details.seats(), line.limits());
    if (opened.scoreChanged()) {
      output
          .err()
          .println(
              opened.score().file()
                  + ": has changed since the plan was made; it is judged as it stands now");
    }
    if (opened.earlier()) {
      output
          .err()
          .println(
              file
                  + ": was kept by an earlier release; players, turns and locks are as they were,"
                  + " limits and weights are those in force");
    }
    output
        .out()
        .print(
            json
                ? Reports.json(opened) + "\n"
                : SplitText.kept(opened.judged(), details.with(opened.seats()), output.ink()));
    show(opened.judged(), opened.score(), opened.seats());
    return opened.judged().verdict().holds() ? Commands.FINE : Commands.FINDINGS;
  }

  private void show(JudgedPlan judged, OpenScore score, Map<String, Seat> seats) throws Refusal {
    Output talk = json ? output.toErrors() : output;
    picture.draw(judged, sheet.asked(), talk);
    sheet.print(judged, score, picture, talk);
    sound.play(
        new PlayPlan.PlayedPiece(judged, score, seats), line.limits(), picture.replaces(), talk);
  }
}
