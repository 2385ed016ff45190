package stafette.cli;

import java.io.PrintStream;
import java.util.Locale;
import java.util.function.Consumer;
import stafette.split.Splitter;

/** Tells now and then, beside the results, how a search that takes long is getting on. */
final class Waiting implements Consumer<Splitter.Progress> {
  private static final double EVERY_SECONDS = 3;

  private final PrintStream out;
  private final long began = System.nanoTime();
  private double told;

  Waiting(PrintStream out) {
    this.out = out;
  }

  @Override
  public void accept(Splitter.Progress progress) {
    double seconds = (System.nanoTime() - began) / 1e9;
    if (seconds >= told + EVERY_SECONDS) {
      told = seconds;
      String best =
          progress.cost().isPresent()
              ? "the best plan so far costs " + progress.cost().getAsInt() + " points"
              : "no plan yet";
      out.printf(
          Locale.ROOT,
          "searching for %.0f s: %s, none costs less than %d%n",
          seconds,
          best,
          progress.bound());
    }
  }
}
