package stafette.cli;

import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.ask.Seats;
import stafette.plan.Seat;
import stafette.words.Refusal;

/** Options that ask for more to be told of a plan. */
final class DetailOptions {
  @Option(
      names = "--explain",
      description =
          "Tells what each part of the cost is for, what the handoffs may do to the ear, and what a master would see to at each (JSON always does).")
  private boolean explain;

  @Option(
      names = "--seats",
      paramLabel = "SEATS",
      description =
          "Seats in metres from the middle of the stage (left: below 0) and back from its front, for what the handoffs may do to the ear: \"Flute 1: -2 3.5; Clarinet 1: 4 6\".")
  private @Nullable String seats;

  Map<String, Seat> seats() throws Refusal {
    return seats == null ? Map.of() : Conversions.read("--seats", seats, Seats::parse);
  }

  /** What to tell, with the seats that are known. */
  Details with(Map<String, Seat> known) {
    return new Details(explain, known, OptionalDouble.empty());
  }
}
