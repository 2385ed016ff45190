package stafette.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Commands on the line of the smallest sample. */
final class LanternRun {
  static final Path FILE = Path.of("samples/lantern-run.musicxml");

  private LanternRun() {}

  /** The whole line and the players of the README. */
  static Ran run(String command, String... more) {
    return Ran.command(args(command, more));
  }

  static String[] args(String command, String... more) {
    return args(command, FILE, "5-16", "Flute 1, Flute 2, Clarinet 1", more);
  }

  /** Some bars of the line, in the sample or a copy of it. */
  static Ran run(String command, Path score, String bars, String players, String... more) {
    return Ran.command(args(command, score, bars, players, more));
  }

  private static String[] args(
      String command, Path score, String bars, String players, String... more) {
    List<String> args = new ArrayList<>(List.of(command, score.toString()));
    args.addAll(List.of("--part", "Piano", "--staff", "1", "--bars", bars, "--players", players));
    args.addAll(Arrays.asList(more));
    return args.toArray(String[]::new);
  }
}
