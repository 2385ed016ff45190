package stafette.cli;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stafette.check.Strain;
import stafette.check.alone.Ease;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.Thinning;
import stafette.limits.Demand;
import stafette.score.Line;
import stafette.work.CheckScore;

/** What a check found, in words. */
final class CheckText {
  private CheckText() {}

  /**
   * All that was found.
   *
   * @param command what splits a passage, printed after those that can't be played
   */
  static String all(
      CheckScore.CheckedScore checked,
      Function<CheckScore.PassageVerdicts, Optional<String>> command) {
    StringBuilder out = new StringBuilder();
    if (!checked.score().score().tempoStated()) {
      out.append("The score states no tempo; quarter = 120 is assumed (--tempo sets another).\n");
    }
    if (checked.reports().isEmpty()) {
      out.append(checked.score().file()).append(": no fast passages\n");
    }
    for (CheckScore.PassageVerdicts report : checked.reports()) {
      out.append(one(report.line(), report.answers()));
      if (report.hasFindings()) {
        command.apply(report).ifPresent(text -> out.append("  ").append(text).append('\n'));
      }
      out.append('\n');
    }
    if (checked.hasFindings()) {
      out.append("A row that begins with \"split\" is the command that looks for a way out.\n");
    }
    return out.toString();
  }

  /** One line with a table of techniques. */
  static String one(Line line, List<CheckScore.InstrumentVerdicts> answers) {
    StringBuilder out =
        new StringBuilder(PlanText.line(line, Demand.usualRatePerSecond(line))).append('\n');
    if (answers.isEmpty()) {
      return out.append("  the part's instrument is unknown; check it with --as INSTRUMENT\n")
          .toString();
    }
    TextTable table =
        new TextTable()
            .row(
                "instrument",
                "technique",
                "limit",
                "takes",
                "lasts",
                "verdict",
                "up to",
                "otherwise");
    for (CheckScore.InstrumentVerdicts answer : answers) {
      for (LineVerdict row : answer.rows()) {
        table.row(
            answer.instrument().name(),
            row.technique().name(),
            NumberText.oneDecimal(row.capability().peakPerSecond()),
            Strain.percent(row.use()),
            lasts(row),
            row.ease().text(),
            fastest(row),
            otherwise(row));
      }
      if (answer.rows().isEmpty()) {
        table.row(answer.instrument().name(), "none applies", "-", "-", "-", "beyond", "-", "");
      }
    }
    return out.append(table.text(2)).toString();
  }

  /** Rates always leave some tempo; air may not, since slower notes need more of it. */
  private static String fastest(LineVerdict row) {
    return row.fastestTempo()
        .map(mark -> mark.inWords(RoundingMode.FLOOR, 0).toString())
        .orElse(
            row.ease() == Ease.OUT_OF_RANGE ? "-" : row.breath() > 1 ? "no breath for it" : "-");
  }

  private static String lasts(LineVerdict row) {
    return row.lastsSeconds().isPresent()
        ? NumberText.oneDecimal(row.lastsSeconds().getAsDouble()) + " s"
        : "goes on";
  }

  private static String otherwise(LineVerdict row) {
    return row.thinning() == Thinning.ALL ? "" : row.thinning().text();
  }
}
