package stafette.cli;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.ShownTechnique;
import stafette.check.alone.Ease;
import stafette.check.alone.Limiting;
import stafette.check.alone.LineVerdict;
import stafette.check.alone.Thinning;
import stafette.check.alone.VerdictWords;
import stafette.limits.Demand;
import stafette.score.Line;
import stafette.words.Sentence;
import stafette.work.CheckScore;

/** What a check found, in words. */
final class CheckText {
  private CheckText() {}

  /**
   * All that was found.
   *
   * @param command what splits a passage, printed after those that few or nobody can play
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
    if (checked.reports().size() > 1) {
      out.append(summary(checked.reports())).append("\n\n");
    }
    checked.suspicions().forEach(one -> out.append("Caution: ").append(one).append(".\n\n"));
    for (CheckScore.PassageVerdicts report : judged(checked.reports())) {
      out.append(one(report.line(), report.answers()));
      if (report.needsHelp()) {
        command.apply(report).ifPresent(text -> out.append("  ").append(text).append('\n'));
      }
      out.append('\n');
    }
    NotJudgedText.lines(checked).forEach(line -> out.append(line).append('\n'));
    if (checked.reports().stream().anyMatch(CheckScore.PassageVerdicts::needsHelp)) {
      out.append("A row that begins with \"split\" is the command that looks for a way out.\n");
    }
    return out.toString();
  }

  /** How many passages there are of each ease, the hardest first. */
  private static String summary(List<CheckScore.PassageVerdicts> reports) {
    Map<Ease, Long> counts = new EnumMap<>(Ease.class);
    judged(reports)
        .forEach(
            report ->
                report.answers().stream()
                    .map(LineVerdict::ease)
                    .max(Comparator.naturalOrder())
                    .ifPresent(ease -> counts.merge(ease, 1L, Long::sum)));
    String told =
        Stream.of(Ease.values())
            .sorted(Comparator.reverseOrder())
            .filter(counts::containsKey)
            .map(ease -> counts.get(ease) + " " + ease.text())
            .collect(Collectors.joining(", "));
    return reports.size() + " fast passages" + (told.isEmpty() ? "" : ": " + told);
  }

  private static List<CheckScore.PassageVerdicts> judged(List<CheckScore.PassageVerdicts> reports) {
    return reports.stream().filter(report -> !report.answers().isEmpty()).toList();
  }

  /** One line with a row for each instrument. */
  static String one(Line line, List<LineVerdict> answers) {
    StringBuilder out =
        new StringBuilder(PlanText.line(line, Demand.usualRatePerSecond(line))).append('\n');
    for (LineVerdict verdict : answers) {
      out.append("  ")
          .append(verdict.instrument().name())
          .append(": ")
          .append(verdict.ease().text())
          .append("; ")
          .append(VerdictWords.share(verdict))
          .append('\n');
      details(line, verdict).forEach(detail -> out.append("    ").append(detail).append('\n'));
    }
    return out.toString();
  }

  private static List<String> details(Line line, LineVerdict verdict) {
    List<String> details = new ArrayList<>();
    details.add("decides: " + VerdictWords.deciding(verdict, line) + with(verdict));
    if (verdict.ease() != Ease.OUT_OF_RANGE && verdict.thinning() != Thinning.ALL) {
      lasts(verdict, line).ifPresent(details::add);
      details.add(tempo(verdict) + "; " + thinned(verdict));
    }
    VerdictWords.helping(verdict).map(Sentence::toString).ifPresent(details::add);
    VerdictWords.asked(verdict, line).map(Sentence::toString).ifPresent(details::add);
    return details;
  }

  private static String with(LineVerdict verdict) {
    return switch (verdict.limiting()) {
      case RANGE, TECHNIQUE -> "";
      default -> "; with " + ShownTechnique.inWords(verdict.techniques());
    };
  }

  /** Up to where strength, air or speed lasts. */
  private static Optional<String> lasts(LineVerdict verdict, Line line) {
    return switch (verdict.limiting()) {
      case RANGE, TECHNIQUE, PEDALS -> Optional.empty();
      default ->
          verdict.lastsSeconds().stream()
              .mapToObj(seconds -> lasts(verdict, line, seconds))
              .findFirst();
    };
  }

  private static String lasts(LineVerdict verdict, Line line, double seconds) {
    if (seconds * 1e6 < line.beatMicros(0)) {
      return tooFast(verdict);
    }
    int last =
        IntStream.range(0, line.count())
            .filter(j -> line.onsetMicros(j) / 1e6 < seconds)
            .max()
            .orElse(0);
    return verdict.planned().inWords()
        + " last for "
        + NumberText.oneDecimal(seconds)
        + " s, to "
        + line.placeOf(last).at();
  }

  private static String tooFast(LineVerdict verdict) {
    boolean said = verdict.limiting() == Limiting.BURST || verdict.limiting() == Limiting.MOVING;
    return "too fast from the first beat"
        + (verdict.ease().plays() ? " for " + verdict.planned().inWords() + " to manage" : "")
        + (said ? "" : ": " + VerdictWords.pace(verdict));
  }

  private static String tempo(LineVerdict verdict) {
    return verdict
        .fastestTempo()
        .map(
            mark ->
                verdict.planned().inWords()
                    + " manage it up to "
                    + mark.inWords(RoundingMode.FLOOR, 0))
        .orElseGet(() -> "at no tempo: " + never(verdict));
  }

  /** At a slower tempo rates and strength are enough, but not techniques, pedals and breath. */
  private static String never(LineVerdict verdict) {
    return switch (verdict.limiting()) {
      case TECHNIQUE -> "no technique goes on all its notes";
      case PEDALS -> "the pedals can't give all its strings";
      default -> (verdict.breath() > 1 ? "" : "if slower, ") + "it is too long for the breath";
    };
  }

  private static String thinned(LineVerdict verdict) {
    return verdict.thinning() == Thinning.NOTHING
        ? "no thinning of it can be played"
        : "thinned at this tempo: " + verdict.thinning().text();
  }
}
