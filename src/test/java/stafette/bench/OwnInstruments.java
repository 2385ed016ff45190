package stafette.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import stafette.check.alone.Ease;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.work.CheckScore;

/**
 * What the judge says of music on the instruments that it is written for: a table, by instrument,
 * of the fast passages of all scores in a folder. Professionals play them every week, so few of
 * them should be beyond. No scores come with this project.
 */
public final class OwnInstruments {
  private final Map<String, Map<Ease, Integer>> byInstrument = new TreeMap<>();
  private int scores;

  private OwnInstruments() {}

  /** Prints the table for the scores of a folder, at the share of players that is usual. */
  public static void main(String[] args) throws Exception {
    OwnInstruments table = new OwnInstruments();
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    try (Stream<Path> files = Files.list(Path.of(args[0]))) {
      for (Path file : files.filter(OwnInstruments::isScore).sorted().toList()) {
        table.take(file, limits);
      }
    }
    table.print();
  }

  private static boolean isScore(Path file) {
    return file.toString().matches(".*\\.(mxl|musicxml|xml)");
  }

  private void take(Path file, LimitsInForce limits) {
    try {
      CheckScore.passages(
              file, Tremolo.AS_WRITTEN, Optional.empty(), Assurance.DEFAULT, List.of(), limits)
          .reports()
          .stream()
          .flatMap(report -> report.answers().stream())
          .forEach(answer -> count(answer.instrument().name(), answer.ease()));
      scores++;
    } catch (Refusal unreadable) {
      System.err.println(unreadable.getMessage());
    }
  }

  private void count(String instrument, Ease ease) {
    for (String row : List.of(instrument, "all")) {
      byInstrument
          .computeIfAbsent(row, name -> new EnumMap<>(Ease.class))
          .merge(ease, 1, Integer::sum);
    }
  }

  private void print() {
    System.out.println(scores + " scores; shares in per cent");
    StringBuilder head = new StringBuilder("| instrument | passages");
    Stream.of(Ease.values()).forEach(ease -> head.append(" | ").append(ease.text()));
    System.out.println(head + " |");
    byInstrument.forEach(
        (instrument, counts) -> {
          int all = counts.values().stream().mapToInt(Integer::intValue).sum();
          StringBuilder row = new StringBuilder("| " + instrument + " | " + all);
          for (Ease ease : Ease.values()) {
            row.append(" | ").append(Math.round(100.0 * counts.getOrDefault(ease, 0) / all));
          }
          System.out.println(row + " |");
        });
  }
}
