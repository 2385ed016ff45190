package stafette.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stafette.check.JudgedPlan;
import stafette.check.SegmentReport;
import stafette.check.ShownTechnique;
import stafette.check.Strain;
import stafette.check.TempoWindow;
import stafette.check.alone.VerdictWords;
import stafette.plan.Handoff;
import stafette.plan.Margin;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.BarBeat;
import stafette.words.Sentence;
import stafette.work.PlanInWords;

/** A plan in words. */
final class PlanText {
  private PlanText() {}

  /** The line's own row: where it is, how long, how fast. */
  static String line(Line line, double usualRatePerSecond) {
    return line.where("-")
        + ": "
        + line.count()
        + " notes in "
        + NumberText.oneDecimal(NumberText.seconds(line))
        + " s at "
        + line.tempo().at(line.stroke(0).onset())
        + ", "
        + NumberText.rate(usualRatePerSecond);
  }

  /** Who plays what, and where they meet. */
  static String segments(JudgedPlan judged) {
    Plan plan = judged.plan();
    TextTable table =
        new TextTable()
            .row(
                "player",
                "technique",
                "from",
                "to",
                "notes",
                "rate",
                "tired",
                "breath",
                "hands over to");
    List<SegmentReport> reports = judged.verdict().segments();
    for (int i = 0; i < reports.size(); i++) {
      SegmentReport report = reports.get(i);
      table.row(
          plan.player(report.segment()).name(),
          technique(plan, report.segment()),
          at(plan.line(report.segment()), report.segment().first()),
          at(plan.line(report.segment()), report.segment().last()),
          Integer.toString(plan.played(report.segment()).strokes()),
          Strain.percent(report.use()),
          Strain.percent(report.tiredness()),
          plan.player(report.segment()).instrument().isWind()
              ? Strain.percent(report.breath())
              : "-",
          after(plan, report.segment()));
    }
    return table.text(2);
  }

  private static String technique(Plan plan, Segment segment) {
    String name = ShownTechnique.names(plan, segment);
    return switch (segment.pattern()) {
      case ALL -> name;
      case ODD -> name + ", begins the turns";
      case EVEN -> name + ", follows in turn";
    };
  }

  private static String after(Plan plan, Segment segment) {
    return plan.handoffs().stream()
        .filter(handoff -> handoff.leaves().segments().contains(segment))
        .map(handoff -> handoff(plan, handoff))
        .findFirst()
        .orElse("");
  }

  private static String handoff(Plan plan, Handoff handoff) {
    String to = plan.names(handoff.enters());
    int shared = handoff.shared();
    return shared <= 0
        ? to + ", after the rest"
        : to + ", sharing " + shared + (shared == 1 ? " note" : " notes");
  }

  /** "Flute 1 to Flute 2". */
  static String names(Plan plan, Handoff handoff) {
    return plan.names(handoff.leaves()) + " to " + plan.names(handoff.enters());
  }

  /** From the entry to the landing note, as bar and beat. */
  static String at(Plan plan, Handoff handoff) {
    Line line = plan.brief().line(handoff.enters().relay());
    String entry = at(line, handoff.enters().first());
    String landing = at(line, handoff.leaves().last());
    return handoff.shared() > 1 ? entry + " to " + landing : landing;
  }

  static String at(Line line, int stroke) {
    BarBeat place = line.bars().nameOf(line.stroke(stroke).onset());
    return place.inShort().toString();
  }

  /** What is said of a plan before its table. */
  static String head(JudgedPlan judged, Optional<Sentence> why) {
    StringBuilder out = new StringBuilder(row("Turns", PlanInWords.turns(judged)));
    why.map(reason -> row("Why", reason)).ifPresent(out::append);
    PlanInWords.notUsed(judged).forEach(who -> out.append(row("Not used", who)));
    return out.toString();
  }

  static String row(String what, Sentence words) {
    return String.format(Locale.ROOT, "%-11s%s%n", what, words);
  }

  /** What the plan as a whole amounts to. */
  static String summary(JudgedPlan judged, Margin asked) {
    StringBuilder out = new StringBuilder(row("Reserve", PlanInWords.reserve(judged)));
    PlanInWords.cautions(judged, asked).forEach(what -> out.append(row("", what)));
    judged.window().map(PlanText::window).ifPresent(out::append);
    out.append(row("Share", VerdictWords.ofPlan(judged.plan(), judged.verdict())));
    return out.toString();
  }

  /** How likely it is that all manage, told with the cost. */
  static String odds(JudgedPlan judged) {
    return String.format(
        Locale.ROOT,
        "Odds       about %.0f in 100 such groups of professionals would all manage; at 5 %% faster %.0f%n",
        Math.floor(judged.verdict().odds() * 100),
        Math.floor(judged.verdict().oddsAtHeadroom() * 100));
  }

  private static String window(TempoWindow window) {
    return "Tempo      holds from "
        + window.slowestText()
        + " ("
        + window.slowestLimit()
        + ")\n"
        + "           to "
        + window.fastestText()
        + " ("
        + window.fastestLimit()
        + ")\n";
  }
}
