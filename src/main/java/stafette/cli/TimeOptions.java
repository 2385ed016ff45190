package stafette.cli;

import picocli.CommandLine.Option;
import stafette.words.Refusal;

/** How long a command may search. */
final class TimeOptions {
  @Option(
      names = "--time",
      paramLabel = "SECONDS",
      description = "How long the search may take (default: 20).")
  private double time = 20;

  double seconds() throws Refusal {
    return Conversions.seconds("--time", time, 0.001, 86_400);
  }
}
