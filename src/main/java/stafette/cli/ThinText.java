package stafette.cli;

import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import stafette.check.SegmentReport;
import stafette.check.ShownTechnique;
import stafette.check.Strain;
import stafette.check.alone.ThinnedPart;
import stafette.limits.Demand;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.work.SplitLine;
import stafette.work.ThinLine;

/** What players keep of a line in the background, in words. */
final class ThinText {
  private ThinText() {}

  /** The line, then each player's part. */
  static String of(ThinLine.ThinOutcome outcome) {
    return (outcome.score().score().tempoStated() ? "" : NumberText.ASSUMED_TEMPO)
        + PlanText.line(outcome.line(), Demand.usualRatePerSecond(outcome.line()))
        + "\n"
        + parts(outcome)
        + "\n"
        + NumberText.CAUTION
        + "\n";
  }

  /** The parts beside a relay; of chords each tone of which has its own, they have the top tone. */
  static String beside(ThinLine.ThinOutcome outcome, SplitLine.SplitOutcome relay) {
    boolean eachTone = relay.brief().lines().stream().distinct().count() > 1;
    return (eachTone ? "\nOf the top tone:\n" : "") + parts(outcome);
  }

  /** Each player's part. */
  private static String parts(ThinLine.ThinOutcome outcome) {
    StringBuilder out = new StringBuilder();
    for (ThinnedPart part : outcome.parts()) {
      boolean finished = !outcome.unfinished().contains(part.player().name());
      out.append('\n').append(part.kept().isPresent() || finished ? part(part) : "");
    }
    return out.append(unfinished(outcome)).toString();
  }

  /** Whose search was stopped, a line for each. */
  static String unfinished(ThinLine.ThinOutcome outcome) {
    return outcome.parts().stream()
        .map(part -> part.player().name())
        .filter(outcome.unfinished()::contains)
        .map(
            name ->
                name
                    + ": the search was stopped before its end (--time); more of it may be possible\n")
        .collect(Collectors.joining());
  }

  private static String part(ThinnedPart part) {
    if (part.kept().isEmpty()) {
      return part.player().name()
          + " can keep nothing of it: all of it is beyond the player's limits, out of range, or where"
          + " the score gives something else to play\n";
    }
    Line line = part.whole();
    TextTable table = new TextTable().row("from", "to", "notes", "kept", "pattern");
    for (ThinnedPart.ThinnedStretch stretch : part.stretches()) {
      table.row(
          PlanText.at(line, stretch.first()),
          PlanText.at(line, stretch.last()),
          Integer.toString(stretch.strokes()),
          Integer.toString(stretch.kept()),
          stretch.pattern().text());
    }
    return headline(part, part.kept().get()) + "\n" + table.text(2);
  }

  private static String headline(ThinnedPart part, Plan plan) {
    return part.player().name()
        + ", "
        + ShownTechnique.names(plan, plan.segments().get(0))
        + ": keeps "
        + part.strokes()
        + " of "
        + part.whole().count()
        + " notes; rate "
        + highest(part, SegmentReport::use)
        + ", tired "
        + highest(part, SegmentReport::tiredness)
        + (part.player().instrument().isWind()
            ? ", breath " + highest(part, SegmentReport::breath)
            : "");
  }

  private static String highest(ThinnedPart part, ToDoubleFunction<SegmentReport> figure) {
    return Strain.percent(part.effort().stream().mapToDouble(figure).max().orElse(0));
  }
}
