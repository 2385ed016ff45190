package stafette.cli;

import java.util.List;
import java.util.Optional;
import stafette.check.Finding;
import stafette.check.JudgedPlan;
import stafette.check.alone.LineVerdict;
import stafette.limits.Demand;
import stafette.plan.Margin;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.score.source.SourceAccount;
import stafette.score.source.SourceInWords;
import stafette.split.Reason;
import stafette.time.Bars;
import stafette.words.Sentence;
import stafette.work.PlanInWords;
import stafette.work.Remedy;
import stafette.work.SplitLine;
import stafette.work.WriteScore;

/** What came of a split, in words. */
final class SplitText {
  private static final int WIDTH = 100;

  /** Below this share of players remedies come before the nearest plan. */
  private static final double FEW = 0.5;

  /** So many bars of the source are told of, unless all are asked for. */
  private static final int MOST_BARS = 6;

  private SplitText() {}

  /**
   * The check of the line against the players' instruments, then the plan, or why there is none.
   */
  static String of(
      SplitLine.SplitOutcome outcome,
      List<LineVerdict> answers,
      Details details,
      TimelineText.Shade ink) {
    return assumedTempo(outcome)
        + CheckText.one(outcome.brief().line(), answers)
        + "\n"
        + result(outcome, details, ink);
  }

  /** The line and its plan, or why there is none. */
  static String preview(SplitLine.SplitOutcome outcome, Details details, TimelineText.Shade ink) {
    return assumedTempo(outcome)
        + PlanText.line(outcome.brief().line(), Demand.usualRatePerSecond(outcome.brief().line()))
        + "\n\n"
        + result(outcome, details, ink);
  }

  /** A plan that was kept in a file, with whatever the judge has against it now. */
  static String kept(JudgedPlan judged, Details details, TimelineText.Shade ink) {
    Plan plan = judged.plan();
    StringBuilder out =
        new StringBuilder(PlanText.line(plan.line(), Demand.usualRatePerSecond(plan.line())))
            .append("\n\n");
    for (Finding finding : judged.verdict().findings()) {
      out.append(finding.message()).append('\n');
    }
    return out.append(
            plan(
                PlanText.head(judged, Optional.empty()),
                judged,
                plan.brief().rules().margin(),
                "",
                details,
                ink))
        .toString();
  }

  /** An alternative that is taken instead of the plan. */
  static String taken(
      int number, SplitLine.SplitOutcome outcome, Details details, TimelineText.Shade ink) {
    return "\nTaken      alternative "
        + number
        + ", "
        + outcome.brief().rules().favour().text()
        + "\n"
        + result(outcome, details, ink);
  }

  static String saved(WriteScore.Saved saved) {
    if (saved.changes().isEmpty()) {
      return "Written    " + saved.file() + ": the score had all of it already; nothing changed\n";
    }
    StringBuilder out = new StringBuilder("Written    " + saved.file() + "\n");
    saved.changes().forEach(change -> out.append("           ").append(change).append('\n'));
    return out.toString();
  }

  private static String assumedTempo(SplitLine.SplitOutcome outcome) {
    return outcome.score().score().tempoStated() ? "" : NumberText.ASSUMED_TEMPO;
  }

  private static String result(
      SplitLine.SplitOutcome outcome, Details details, TimelineText.Shade ink) {
    return outcome
        .plan()
        .map(plan -> withPlan(outcome, plan, details, ink))
        .orElseGet(() -> withoutPlan(outcome));
  }

  /** The plan; where it is only the nearest, with what would help, first where few manage it. */
  private static String withPlan(
      SplitLine.SplitOutcome outcome, JudgedPlan plan, Details details, TimelineText.Shade ink) {
    Optional<Sentence> why =
        Optional.of(PlanInWords.why(outcome.result(), plan)).filter(any -> !outcome.isNearest());
    String head =
        PlanInWords.nearest(outcome).map(words -> PlanText.row("Nearest", words)).orElse("")
            + PlanText.head(plan, why);
    Margin asked = outcome.asked().rules().margin();
    Details told = details.searched(outcome.searchSeconds());
    String text = plan(head, plan, asked, source(outcome, details), told, ink);
    if (!outcome.isNearest()) {
      return text;
    }
    String helps = reasons(outcome.reasons()) + remedies(outcome.remedies());
    String share =
        "No plan was found that " + outcome.asked().rules().assurance().inWords() + " manage:\n";
    return plan.verdict().hardest() < FEW
        ? share + helps + "\n" + text
        : text + "\n" + share + helps;
  }

  private static String plan(
      String head,
      JudgedPlan plan,
      Margin asked,
      String source,
      Details details,
      TimelineText.Shade ink) {
    return head
        + "\n"
        + PlanText.segments(plan)
        + "\n"
        + new TimelineText(plan.plan(), plan.verdict(), WIDTH, ink).text()
        + "\n"
        + details.joinsToMend(plan.plan())
        + PlanText.summary(plan, asked)
        + source
        + "\n"
        + details.of(plan)
        + NumberText.CAUTION
        + "\n";
  }

  /**
   * What became of the notes of the page, where that is not told by the line alone: of lines that
   * hands share, where notes are not taken as they stand, and under the pedal.
   */
  private static String source(SplitLine.SplitOutcome outcome, Details details) {
    List<Line> lines = outcome.brief().lines().stream().distinct().toList();
    SourceAccount account = SourceAccount.of(outcome.score().score(), lines);
    Bars bars = outcome.brief().line().bars();
    List<Sentence> changed = SourceInWords.list(account, bars);
    boolean shared = outcome.brief().line().source().strands().isShared();
    if (changed.isEmpty() && account.notHeld().isEmpty() && !shared && !details.explain()) {
      return "";
    }
    StringBuilder out = new StringBuilder(PlanText.row("Source", SourceInWords.summary(account)));
    int told = details.explain() ? changed.size() : Math.min(MOST_BARS, changed.size());
    changed.subList(0, told).forEach(words -> out.append(PlanText.row("", words)));
    if (told < changed.size()) {
      out.append(" ".repeat(11) + "and in " + (changed.size() - told) + " more bars (--explain)\n");
    }
    SourceInWords.notHeld(account, bars).forEach(words -> out.append(PlanText.row("", words)));
    return out.toString();
  }

  private static String withoutPlan(SplitLine.SplitOutcome outcome) {
    return outcome
        .result()
        .match(
            best -> "",
            none ->
                "No plan exists for these players under these rules:\n"
                    + reasons(none.reasons())
                    + remedies(outcome.remedies()),
            stopped ->
                "No plan was found within the time and memory set, and it is not proven that none exists; allow more with --time, or add a player\n");
  }

  private static String remedies(List<Remedy> remedies) {
    if (remedies.isEmpty()) {
      return "No single change that was tried makes a plan possible.\n";
    }
    StringBuilder out =
        new StringBuilder("Each of these makes a plan possible, in the order to try them:\n");
    for (Remedy remedy : remedies) {
      out.append("  ").append(Options.typed(remedy.change())).append("\n      ");
      out.append(remedy.sentence()).append('\n');
    }
    return out.toString();
  }

  private static String reasons(List<Reason> reasons) {
    StringBuilder out = new StringBuilder();
    reasons.forEach(reason -> out.append("  ").append(Options.say(reason.text())).append('\n'));
    return out.toString();
  }
}
