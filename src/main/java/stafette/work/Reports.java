package stafette.work;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import stafette.check.TempoWindow;
import stafette.split.TempoCell;
import stafette.split.TempoTable;
import stafette.tables.AlternativesJson;
import stafette.tables.CheckJson;
import stafette.tables.PlanJson;
import stafette.tables.PlanReport;
import stafette.tables.ScoreFile;
import stafette.tables.TempoJson;
import stafette.tables.TempoReport;
import stafette.tables.ThinningJson;

/** Checks, plans and tempo tables as JSON, printed or kept in a file. */
public final class Reports {
  private Reports() {}

  /**
   * A check.
   *
   * @param command what splits a line of it
   */
  public static String json(
      CheckScore.Checked checked, Function<CheckScore.Report, Optional<String>> command) {
    return CheckJson.write(
        checked.reports().stream()
            .map(
                report ->
                    new CheckJson.Passage(
                        report.line(),
                        report.answers().stream()
                            .flatMap(answer -> answer.rows().stream())
                            .toList(),
                        command.apply(report)))
            .toList());
  }

  /**
   * What came of a split.
   *
   * @param typed how a user asks for what would help
   */
  public static String json(SplitLine.Outcome outcome, Function<Change, String> typed) {
    return json(outcome, outcome.score().file(), typed);
  }

  /**
   * A plan that was kept in a file, as the judge sees it now. That it is optimal is said only if
   * that was proven for the score as it stands.
   */
  public static String json(OpenPlan.Opened opened) {
    JudgedPlan judged = opened.judged();
    int bound = opened.scoreChanged() ? 0 : opened.search().bound().orElse(0);
    boolean optimal =
        opened.search().optimal()
            && judged.verdict().holds()
            && judged.verdict().cost().total() == bound;
    return PlanJson.write(
        new PlanReport(
            scoreFile(opened.score(), opened.score().file()),
            judged.plan().brief(),
            opened.seats(),
            opened.freed(),
            optimal ? "optimal" : "stopped",
            Optional.of(new PlanReport.Judged(judged.plan(), judged.verdict())),
            Optional.of(bound),
            opened.search().seconds(),
            judged.window().map(Reports::window),
            List.of(),
            List.of(),
            Release.text()));
  }

  public static String json(ThinLine.Outcome outcome) {
    return ThinningJson.write(
        scoreFile(outcome.score(), outcome.score().file()), outcome.line(), outcome.parts());
  }

  /**
   * A plan with its alternatives.
   *
   * @param taken which alternative is written and kept instead of the plan
   * @param typed how a user asks for what would help
   */
  public static String json(SideBySide plans, OptionalInt taken, Function<Change, String> typed) {
    return AlternativesJson.write(
        report(plans.main(), plans.main().score().file(), typed),
        plans.columns().stream()
            .map(
                column ->
                    new AlternativesJson.Alternative(
                        report(column.outcome(), column.outcome().score().file(), typed),
                        column.traits(),
                        column.differs()))
            .toList(),
        plans.dropped().stream()
            .map(dropped -> new AlternativesJson.Dropped(dropped.favour(), dropped.why()))
            .toList(),
        taken.orElse(0) > plans.columns().size() ? OptionalInt.empty() : taken);
  }

  private static String json(
      SplitLine.Outcome outcome, Path scoreFile, Function<Change, String> typed) {
    return PlanJson.write(report(outcome, scoreFile, typed));
  }

  private static PlanReport report(
      SplitLine.Outcome outcome, Path scoreFile, Function<Change, String> typed) {
    return new PlanReport(
        scoreFile(outcome.score(), scoreFile),
        outcome.brief(),
        outcome.seats(),
        outcome.freed(),
        outcome.result().match(best -> "optimal", none -> "none", stopped -> "stopped"),
        outcome.plan().map(judged -> new PlanReport.Judged(judged.plan(), judged.verdict())),
        outcome
            .result()
            .match(
                best -> Optional.of(best.cost()),
                none -> Optional.<Integer>empty(),
                stopped -> Optional.of(stopped.bound())),
        outcome.searchSeconds(),
        outcome.plan().flatMap(JudgedPlan::window).map(Reports::window),
        remarks(outcome),
        outcome.remedies().stream()
            .map(
                remedy ->
                    new PlanReport.Remedy(
                        typed.apply(remedy.change()), remedy.sentence().toString()))
            .toList(),
        Release.text());
  }

  public static String json(CompareTempi.Outcome outcome) {
    TempoTable table = outcome.table();
    OptionalInt fewest = table.presentRow().fewest();
    return TempoJson.write(
        new TempoReport(
            scoreFile(outcome.score(), outcome.score().file()),
            outcome.brief(),
            outcome.present(),
            table.rows().stream()
                .map(
                    row ->
                        new TempoReport.Row(
                            row.mark(),
                            row.cells().stream().map(cell -> cell(cell, outcome)).toList()))
                .toList(),
            table.fastest().stream()
                .map(edge -> new TempoReport.Edge(edge.mark(), edge.proven(), edge.plan()))
                .toList(),
            new TempoReport.Fewest(
                fewest.isPresent() ? Optional.of(fewest.getAsInt()) : Optional.empty(),
                table.presentRow().fewestIsProven()),
            outcome.presentPlan().map(JudgedPlan::verdict),
            outcome.searchSeconds(),
            table.presentRow().reasons().stream()
                .map(reason -> reason.text().toString())
                .toList()));
  }

  private static TempoReport.Cell cell(TempoCell cell, CompareTempi.Outcome outcome) {
    return new TempoReport.Cell(
        cell.proven() ? (cell.plan().isPresent() ? "optimal" : "none") : "stopped",
        cell.plan().map(plan -> new PlanReport.Judged(plan, outcome.verdict(plan))));
  }

  private static ScoreFile scoreFile(OpenScore score, Path path) {
    return new ScoreFile(
        path.toString().replace('\\', '/'), score.document().container().sha256(), score.tremolo());
  }

  /**
   * Keeps a plan in a file, to be opened again; it names its score by the way from its own folder,
   * if there is one.
   */
  public static void savePlan(SplitLine.Outcome outcome, Path file, boolean force) throws Refusal {
    savePlan(outcome, file, force, Reports::inWords);
  }

  /**
   * Keeps what came of a split as {@link #savePlan(SplitLine.Outcome, Path, boolean)} does.
   *
   * @param typed how a user asks for what would help
   */
  public static void savePlan(
      SplitLine.Outcome outcome, Path file, boolean force, Function<Change, String> typed)
      throws Refusal {
    Path score = outcome.score().file().toAbsolutePath().normalize();
    Path folder = file.toAbsolutePath().normalize().resolveSibling("");
    boolean oneDrive = Objects.equals(folder.getRoot(), score.getRoot());
    save(outcome, oneDrive ? folder.relativize(score) : score, file, force, typed);
  }

  /** The same for a file that is moved about: it names its score by the whole way to it. */
  static void saveMovable(SplitLine.Outcome outcome, Path file) throws Refusal {
    save(
        outcome, outcome.score().file().toAbsolutePath().normalize(), file, true, Reports::inWords);
  }

  private static String inWords(Change change) {
    return change.inWords().toString();
  }

  private static void save(
      SplitLine.Outcome outcome,
      Path score,
      Path file,
      boolean force,
      Function<Change, String> typed)
      throws Refusal {
    byte[] bytes = (json(outcome, score, typed) + "\n").getBytes(StandardCharsets.UTF_8);
    FileDoor.write(file, bytes, force, written -> OpenPlan.readAgain(file, written));
  }

  private static PlanReport.Window window(TempoWindow window) {
    return new PlanReport.Window(
        Optional.of(window.slowestText().toString()),
        window.fastestText().toString(),
        Optional.of(window.slowestLimit().toString()),
        window.fastestLimit().toString());
  }

  private static List<String> remarks(SplitLine.Outcome outcome) {
    return outcome
        .result()
        .match(
            best -> List.of(),
            none -> none.reasons().stream().map(reason -> reason.text().toString()).toList(),
            stopped ->
                stopped.plan().isPresent()
                    ? List.of()
                    : List.of(
                        "no plan was found within the time and memory set, and it is not proven that none exists; allow more time, or add a player"));
  }
}
