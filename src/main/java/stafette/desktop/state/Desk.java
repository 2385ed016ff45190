package stafette.desktop.state;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import stafette.check.JudgedPlan;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.split.Reason;
import stafette.split.SplitResult;
import stafette.time.BarBeat;
import stafette.work.CheckScore;
import stafette.work.OpenLine;
import stafette.work.Remedy;
import stafette.work.SplitLine;

/**
 * What is on the desk at one moment.
 *
 * @param score the score with its fast passages, worst first; empty before one is opened
 * @param line the line chosen, with all that is asked for it
 * @param plan the plan, found or made by hand
 * @param found what the last search said, as long as it holds for what is asked and for the plan; a
 *     proof of another plan is dropped, so that no word and no bound outlives its plan
 * @param writing how the plan is written into the score
 * @param kept where it is kept
 */
public record Desk(
    Optional<CheckScore.CheckedScore> score,
    Optional<OpenLine> line,
    Optional<JudgedPlan> plan,
    Optional<SplitLine.SplitOutcome> found,
    WrittenAs writing,
    SavedState kept) {
  /** Nothing yet. */
  public static final Desk EMPTY =
      new Desk(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          WrittenAs.plain(SourceTreatment.KEEP),
          SavedState.EASILY_HAD_AGAIN);

  public Desk {
    Optional<Plan> present = plan.map(JudgedPlan::plan);
    found = found.filter(said -> said.result().speaksOf(present));
  }

  /** A score just opened. */
  static Desk of(CheckScore.CheckedScore score) {
    return new Desk(
        Optional.of(score),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        EMPTY.writing,
        SavedState.EASILY_HAD_AGAIN);
  }

  public List<CheckScore.PassageVerdicts> passages() {
    return score.map(CheckScore.CheckedScore::reports).orElse(List.of());
  }

  /** Whether a segment of the plan on the desk has a stroke at a place. */
  public boolean covers(int segment, BarBeat place) {
    return bare()
        .map(
            plan -> {
              Segment one = plan.segments().get(segment);
              return IntStream.rangeClosed(one.first(), one.last())
                  .anyMatch(stroke -> plan.line(one).placeOf(stroke).at().equals(place));
            })
        .orElse(false);
  }

  /** What must be kept. */
  public List<Lock> locks() {
    return line.map(OpenLine::brief).map(Brief::rules).map(r -> r.locks()).orElse(List.of());
  }

  /** The plan that the last search found is on the desk unchanged and proven the best. */
  public boolean isOptimal() {
    return result().map(SplitResult::isBest).orElse(false);
  }

  /** It is proven that there is no plan for what is asked. */
  public boolean isImpossible() {
    return result().map(SplitResult::isNone).orElse(false);
  }

  /** What prevents the plan that was asked for; nothing if there is one, or nobody has asked. */
  public List<Reason> preventing() {
    return found.map(Desk::preventing).orElse(List.of());
  }

  private static List<Reason> preventing(SplitLine.SplitOutcome outcome) {
    return outcome.reasons().isEmpty()
        ? outcome
            .result()
            .match(best -> List.<Reason>of(), none -> none.reasons(), stopped -> List.<Reason>of())
        : outcome.reasons();
  }

  /** What would make a plan possible; nothing if there is one, or nobody has asked. */
  public List<Remedy> remedies() {
    return found.map(SplitLine.SplitOutcome::remedies).orElse(List.of());
  }

  /** What the last search came to. */
  public Optional<SplitResult> result() {
    return found.map(SplitLine.SplitOutcome::result);
  }

  /** Another line, for which nothing was done yet. */
  Desk choosing(OpenLine other) {
    return new Desk(
        score,
        Optional.of(other),
        Optional.empty(),
        Optional.empty(),
        writing,
        SavedState.EASILY_HAD_AGAIN);
  }

  Desk with(OpenLine other, Optional<JudgedPlan> judged) {
    return new Desk(score, Optional.of(other), judged, Optional.empty(), writing, kept.changed());
  }

  Desk with(JudgedPlan judged) {
    return new Desk(score, line, Optional.of(judged), Optional.empty(), writing, kept.changed());
  }

  /** After a search. */
  Desk with(SplitLine.SplitOutcome outcome) {
    return new Desk(
        score, line, outcome.plan().or(() -> plan), Optional.of(outcome), writing, kept.searched());
  }

  Desk with(WrittenAs other) {
    return new Desk(score, line, plan, found, other, kept);
  }

  Desk with(SavedState now) {
    return new Desk(score, line, plan, found, writing, now);
  }

  /** With something else asked; the plan is taken over, as far as it can be, and judged. */
  Desk under(OpenLine other, Function<Plan, JudgedPlan> judge) {
    return with(other, bare().flatMap(other::adopted).map(judge));
  }

  Optional<Plan> bare() {
    return plan.map(JudgedPlan::plan);
  }

  /** All of it, ready to be written down; empty if there is no line yet. */
  Optional<SplitLine.SplitOutcome> outcome() {
    return line.map(open -> open.outcome(plan, found));
  }
}
