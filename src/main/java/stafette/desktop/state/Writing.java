package stafette.desktop.state;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import stafette.keep.LimitsInForce;
import stafette.keep.Outputs;
import stafette.keep.Remembered;
import stafette.plan.Plan;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.ChangedPart;
import stafette.work.OpenLine;
import stafette.work.Reports;
import stafette.work.ScoreChanges;
import stafette.work.WriteScore;

/** Puts the plan on the desk into files, and says before what would change. */
public final class Writing {
  private final Supplier<Desk> desk;
  private final LimitsInForce limits;
  private final Remembered remembered;
  private final Consumer<SavedState> kept;
  private final BackgroundWork glances;
  private final Consumer<Sentence> refused;

  /**
   * @param desk what is on the desk
   * @param kept told where that is kept from now on
   */
  Writing(
      Supplier<Desk> desk,
      LimitsInForce limits,
      Remembered remembered,
      Consumer<SavedState> kept,
      BackgroundWork glances,
      Consumer<Sentence> refused) {
    this.desk = desk;
    this.limits = limits;
    this.remembered = remembered;
    this.kept = kept;
    this.glances = glances;
    this.refused = refused;
  }

  /**
   * What writing a desk's plan would change.
   *
   * @throws Refusal if there is no plan, or it can't be written into this score
   */
  public ScoreChanges changes(Desk now) throws Refusal {
    OpenLine line = line(now);
    return ScoreChanges.of(line.score(), plan(now), now.writing(), limits);
  }

  /** Looks beside the window for the bars that writing would change; for none without a plan. */
  public void lookAtBars(Consumer<List<ChangedPart>> found) {
    Desk now = desk.get();
    glances.start(going -> changedBars(now), found, refused);
  }

  private List<ChangedPart> changedBars(Desk now) throws Refusal {
    if (now.line().isEmpty() || now.plan().isEmpty()) {
      return List.of();
    }
    return changes(now).parts();
  }

  /**
   * Writes a desk's plan into a copy of the score.
   *
   * @throws Refusal if there is no plan, the file is the score itself, or can't be written
   */
  public WriteScore.Saved write(Desk now, Path file) throws Refusal {
    OpenLine line = line(now);
    outputs(now).add(file, true);
    return WriteScore.save(
        line.score(),
        Optional.of(plan(now)),
        List.of(),
        now.writing(),
        limits,
        new WriteScore.Target(file, true));
  }

  /**
   * Takes note that a desk's plan was written. What was changed since is not written.
   *
   * @throws Refusal if the file can't be remembered
   */
  public void written(Desk then, Path file) throws Refusal {
    if (desk.get().equals(then)) {
      kept.accept(then.kept().written());
    }
    remembered.opened(file);
  }

  /**
   * Keeps the plan in a file.
   *
   * @throws Refusal if there is no line yet, the file is the score itself, or can't be written
   */
  public void savePlan(Path file) throws Refusal {
    OpenLine line = line(desk.get());
    Outputs.beside(List.of(line.score().file())).add(file, true);
    Reports.savePlan(line.outcome(desk.get().plan(), desk.get().found()), file, true);
    kept.accept(SavedState.in(file));
    remembered.opened(file);
  }

  /** What is made of a desk may replace neither its score nor the plan file that it belongs to. */
  public static Outputs outputs(Desk now) {
    return Outputs.beside(
        Stream.concat(
                now.line().map(line -> line.score().file()).stream(), now.kept().file().stream())
            .toList());
  }

  private static OpenLine line(Desk now) throws Refusal {
    return now.line().orElseThrow(() -> Refusal.wrongUse(Sentence.of("choose a line first")));
  }

  private static Plan plan(Desk now) throws Refusal {
    return now.bare().orElseThrow(() -> Refusal.wrongUse(Sentence.of("there is no plan yet")));
  }
}
