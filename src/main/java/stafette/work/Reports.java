package stafette.work;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import stafette.check.JudgedPlan;
import stafette.check.Verdict;
import stafette.json.AlternativesJson;
import stafette.json.CheckJson;
import stafette.json.PlanJson;
import stafette.json.ScoreFile;
import stafette.json.TempoJson;
import stafette.json.ThinningJson;
import stafette.keep.FileDoor;
import stafette.keep.KeptPlan;
import stafette.keep.OpenScore;
import stafette.keep.Release;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.score.Tremolo;
import stafette.score.source.SourceAccount;
import stafette.split.SplitResult;
import stafette.words.Refusal;

/** Checks, plans and tempo tables as JSON, printed or kept in a file. */
public final class Reports {
  private Reports() {}

  /**
   * A check.
   *
   * @param command what splits a line of it
   */
  public static String json(
      CheckScore.CheckedScore checked,
      Function<CheckScore.PassageVerdicts, Optional<String>> command) {
    return CheckJson.of(
            checked.reports().stream()
                .map(
                    report ->
                        CheckJson.PassageJson.of(
                            report.line(),
                            report.answers(),
                            checked.score().score().tempoStated(),
                            command.apply(report)))
                .toList(),
            checked.tremolos(),
            checked.notJudged(),
            checked.score().score().bars(),
            checked.suspicions())
        .text();
  }

  /**
   * What came of a split.
   *
   * @param typed how a user asks for what would help
   */
  public static String json(SplitLine.SplitOutcome outcome, Function<Change, String> typed) {
    return json(outcome, outcome.score().file(), typed);
  }

  /**
   * A plan that was kept in a file, as the judge sees it now. That it is optimal is said only if
   * that was proven for the score as it stands.
   */
  public static String json(OpenPlan.Opened opened) {
    JudgedPlan judged = opened.judged();
    return PlanJson.of(
            Release.text(),
            scoreFile(opened.score(), opened.score().file()),
            Optional.of(account(opened.score(), judged.plan().brief())),
            judged.plan().brief(),
            judged.plan().brief(),
            result(opened),
            Optional.of(judged),
            opened.search().seconds(),
            opened.seats(),
            opened.freed(),
            List.of(),
            List.of(),
            Optional.empty())
        .text();
  }

  private static SplitResult result(OpenPlan.Opened opened) {
    Verdict verdict = opened.judged().verdict();
    int cost = verdict.cost().total();
    int bound = opened.scoreChanged() ? 0 : opened.search().bound().orElse(0);
    Plan plan = opened.judged().plan();
    Optional<SplitResult.InRotation> rotation = opened.search().rotation();
    return !opened.scoreChanged() && verdict.holds() && opened.search().proves(cost)
        ? new SplitResult.Best(plan, cost, rotation)
        : new SplitResult.Stopped(
            Optional.of(plan),
            OptionalInt.of(cost),
            bound,
            bound > 0 ? rotation : Optional.empty());
  }

  public static String json(ThinLine.ThinOutcome outcome) {
    return ThinningJson.of(withoutTremolo(outcome.score()), outcome.line(), outcome.parts()).text();
  }

  /**
   * A plan with its alternatives.
   *
   * @param taken which alternative is written and kept instead of the plan
   * @param typed how a user asks for what would help
   */
  public static String json(SideBySide plans, OptionalInt taken, Function<Change, String> typed) {
    return plan(
            plans.main(),
            plans.main().score().file(),
            typed,
            Optional.of(
                AlternativesJson.of(
                    IntStream.range(0, plans.columns().size())
                        .mapToObj(i -> alternative(i + 1, plans.columns().get(i)))
                        .toList(),
                    plans.dropped(),
                    taken.stream().boxed().filter(n -> n <= plans.columns().size()).findFirst())))
        .text();
  }

  private static AlternativesJson.AlternativeJson alternative(
      int number, SideBySide.Column column) {
    SplitLine.SplitOutcome outcome = column.outcome();
    return AlternativesJson.AlternativeJson.of(
        number,
        outcome.result(),
        column.plan(),
        outcome.searchSeconds(),
        outcome.seats(),
        column.traits(),
        column.differs());
  }

  private static String json(
      SplitLine.SplitOutcome outcome, Path scoreFile, Function<Change, String> typed) {
    return plan(outcome, scoreFile, typed, Optional.empty()).text();
  }

  private static PlanJson plan(
      SplitLine.SplitOutcome outcome,
      Path scoreFile,
      Function<Change, String> typed,
      Optional<AlternativesJson> others) {
    return PlanJson.of(
        Release.text(),
        scoreFile(outcome.score(), scoreFile),
        Optional.of(account(outcome.score(), outcome.brief())),
        outcome.asked(),
        outcome.brief(),
        outcome.result(),
        outcome.plan(),
        outcome.searchSeconds(),
        outcome.seats(),
        outcome.freed(),
        outcome.reasons(),
        outcome.remedies().stream()
            .map(
                remedy ->
                    new PlanJson.RemedyJson(
                        typed.apply(remedy.change()), remedy.sentence().toString(), true))
            .toList(),
        others);
  }

  private static SourceAccount account(OpenScore score, Brief brief) {
    return SourceAccount.of(score.score(), brief.lines().stream().distinct().toList());
  }

  public static String json(CompareTempi.TempoOutcome outcome) {
    return TempoJson.of(
            withoutTremolo(outcome.score()),
            outcome.brief(),
            outcome.table(),
            outcome.verdicts(),
            outcome.searchSeconds())
        .text();
  }

  /** What a document says of the score from which it was made. */
  public static ScoreFile scoreFile(OpenScore score) {
    return scoreFile(score, score.file());
  }

  private static ScoreFile withoutTremolo(OpenScore score) {
    return scoreFile(score, score.file(), Tremolo.AS_WRITTEN);
  }

  private static ScoreFile scoreFile(OpenScore score, Path path) {
    return scoreFile(score, path, score.tremolo());
  }

  private static ScoreFile scoreFile(OpenScore score, Path path, Tremolo tremolo) {
    return ScoreFile.of(
        path(path), score.document().container().sha256(), tremolo, !score.score().tempoStated());
  }

  private static String path(Path path) {
    return path.toString().replace('\\', '/');
  }

  /**
   * Keeps a plan in a file, to be opened again; it names its score by the way from its own folder,
   * if there is one.
   */
  public static void savePlan(SplitLine.SplitOutcome outcome, Path file, boolean force)
      throws Refusal {
    savePlan(outcome, file, force, Reports::inWords);
  }

  /**
   * Keeps what came of a split as {@link #savePlan(SplitLine.SplitOutcome, Path, boolean)} does.
   *
   * @param typed how a user asks for what would help
   */
  public static void savePlan(
      SplitLine.SplitOutcome outcome, Path file, boolean force, Function<Change, String> typed)
      throws Refusal {
    Path score = outcome.score().file().toAbsolutePath().normalize();
    Path folder = file.toAbsolutePath().normalize().resolveSibling("");
    boolean oneDrive = Objects.equals(folder.getRoot(), score.getRoot());
    save(outcome, oneDrive ? folder.relativize(score) : score, file, force, typed);
  }

  /** Keeps a plan in a file that is moved about: it names its score by the whole way to it. */
  public static void saveMovable(SplitLine.SplitOutcome outcome, Path file) throws Refusal {
    save(
        outcome, outcome.score().file().toAbsolutePath().normalize(), file, true, Reports::inWords);
  }

  private static String inWords(Change change) {
    return change.inWords().toString();
  }

  private static void save(
      SplitLine.SplitOutcome outcome,
      Path score,
      Path file,
      boolean force,
      Function<Change, String> typed)
      throws Refusal {
    byte[] bytes = (json(outcome, score, typed) + "\n").getBytes(StandardCharsets.UTF_8);
    FileDoor.write(file, bytes, force, written -> KeptPlan.readAgain(file, written));
  }
}
