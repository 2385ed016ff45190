package stafette.cli;

import picocli.CommandLine.Option;
import stafette.ask.SplitRequest;
import stafette.words.Refusal;

/** How long a command may search. */
final class TimeOptions {
  @Option(
      names = "--time",
      paramLabel = "SECONDS",
      description = "Ends the search after so long, with what it has by then (default: 120).")
  private double time = SplitRequest.USUAL_SECONDS;

  double seconds() throws Refusal {
    return Conversions.seconds("--time", time, 0.001, 86_400);
  }
}
