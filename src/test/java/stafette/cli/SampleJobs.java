package stafette.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The job that each sample is for: its name, and the options of a split. */
public final class SampleJobs {
  static final List<List<String>> ALL =
      List.of(
          List.of(
              "lantern-run",
              "--part",
              "Piano",
              "--staff",
              "1",
              "--bars",
              "5-16",
              "--players",
              "Flute 1, Flute 2, Clarinet 1"),
          List.of(
              "signal-hill",
              "--part",
              "Trumpet 1",
              "--bars",
              "9-20",
              "--players",
              "Flute 1, Flute 2, Oboe 1, Clarinet 1, Flute 3"),
          List.of(
              "mill-stairs",
              "--part",
              "P1",
              "--staff",
              "1",
              "--bars",
              "1-19",
              "--players",
              "Bassoon 1, Bassoon 2, Clarinet 1, Clarinet 2, Flute 1, Flute 2",
              "--allow",
              "double tonguing"),
          List.of("weir-gate", "--part", "P5", "--bars", "3-14", "--players", "Flute 1, Flute 2"));

  private SampleJobs() {}

  public static List<String> samples() {
    return ALL.stream().map(job -> job.get(0)).toList();
  }

  /**
   * Splits a sample and writes it.
   *
   * @param source what becomes of the line
   * @param to the file that is written
   * @return what the command ended with
   */
  public static int write(String sample, String source, Path to) {
    List<String> job =
        ALL.stream().filter(each -> each.get(0).equals(sample)).findFirst().orElseThrow();
    List<String> args = new ArrayList<>(List.of("split", "samples/" + sample + ".musicxml"));
    args.addAll(job.subList(1, job.size()));
    args.addAll(List.of("--source", source, "-o", to.toString()));
    return Ran.command(args.toArray(String[]::new)).exitCode();
  }
}
