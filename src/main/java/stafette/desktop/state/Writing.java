package stafette.desktop.state;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import stafette.plan.SourceTreatment;
import stafette.words.Sentence;
import stafette.work.ChangedPart;
import stafette.work.JudgedPlan;
import stafette.work.LimitsInForce;
import stafette.work.OpenLine;
import stafette.work.Refusal;
import stafette.work.Remembered;
import stafette.work.Reports;
import stafette.work.WriteScore;

/** Puts the plan on the desk into files, and says before what would change. */
public final class Writing {
  private final Supplier<Desk> desk;
  private final LimitsInForce limits;
  private final Remembered remembered;
  private final Labour glances;
  private final Consumer<Sentence> refused;

  Writing(
      Supplier<Desk> desk,
      LimitsInForce limits,
      Remembered remembered,
      Labour glances,
      Consumer<Sentence> refused) {
    this.desk = desk;
    this.limits = limits;
    this.remembered = remembered;
    this.glances = glances;
    this.refused = refused;
  }

  /**
   * What writing would change: a sentence for each part.
   *
   * @throws Refusal if there is no plan, or it can't be written into this score
   */
  public List<Sentence> changes(SourceTreatment treatment) throws Refusal {
    return WriteScore.changes(line().score(), plan().plan(), treatment, limits);
  }

  /** Looks beside the window for the bars that writing would change; for none without a plan. */
  public void lookAtBars(SourceTreatment treatment, Consumer<List<ChangedPart>> found) {
    Desk now = desk.get();
    glances.start(going -> changedBars(now, treatment), found, refused);
  }

  private List<ChangedPart> changedBars(Desk now, SourceTreatment treatment) throws Refusal {
    if (now.line().isEmpty() || now.plan().isEmpty()) {
      return List.of();
    }
    OpenLine line = now.line().get();
    return ChangedPart.all(
        line.score(), now.plan().get().plan(), treatment, line.asked().line().tremolo(), limits);
  }

  /**
   * Writes the plan into a copy of the score.
   *
   * @throws Refusal if there is no plan, the file is the score itself, or can't be written
   */
  public WriteScore.Saved write(Path file, SourceTreatment treatment) throws Refusal {
    OpenLine line = line();
    WriteScore.Target target =
        WriteScore.target(line.score().file(), file, false, true).orElseThrow();
    WriteScore.Saved saved =
        WriteScore.save(line.score(), plan().plan(), treatment, limits, target);
    remembered.finished();
    return saved;
  }

  /**
   * Keeps the plan in a file.
   *
   * @throws Refusal if there is no line yet, or the file can't be written
   */
  public void savePlan(Path file) throws Refusal {
    Reports.savePlan(line().outcome(desk.get().plan()), file, true);
    remembered.opened(file);
    remembered.finished();
  }

  private OpenLine line() throws Refusal {
    return desk.get()
        .line()
        .orElseThrow(() -> Refusal.wrongUse(Sentence.of("choose a line first")));
  }

  private JudgedPlan plan() throws Refusal {
    return desk.get()
        .plan()
        .orElseThrow(() -> Refusal.wrongUse(Sentence.of("there is no plan yet")));
  }
}
