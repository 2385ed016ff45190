package stafette.cli;

import java.util.Locale;
import java.util.function.Consumer;
import stafette.split.Splitter;

/** Tells now and then, beside the results, how a search that takes long is getting on. */
final class Waiting implements Consumer<Splitter.Progress> {
  private static final double EVERY_SECONDS = 3;

  private final Output output;
  private final long began;
  private double told;

  Waiting(Output output) {
    this.output = output;
    this.began = output.nanoClock().getAsLong();
  }

  @Override
  public void accept(Splitter.Progress progress) {
    double seconds = (output.nanoClock().getAsLong() - began) / 1e9;
    if (seconds >= told + EVERY_SECONDS) {
      told = seconds;
      String best =
          progress.cost().isPresent()
              ? "the best plan so far costs " + progress.cost().getAsInt() + " points"
              : "no plan yet";
      output
          .err()
          .printf(
              Locale.ROOT,
              "searching for %.0f s: %s, none costs less than %d%n",
              seconds,
              best,
              progress.bound());
    }
  }
}
