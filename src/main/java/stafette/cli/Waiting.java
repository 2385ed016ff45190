package stafette.cli;

import java.util.Locale;
import java.util.function.Consumer;
import stafette.split.Splitter;
import stafette.split.thin.Thinner;
import stafette.work.CompareTempi;

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
    String best =
        progress.cost().isPresent()
            ? "the best plan so far costs " + progress.cost().getAsInt() + " points"
            : "no plan yet";
    tell(best + ", none costs less than " + progress.bound());
  }

  /** Of background parts. */
  void thinning(Thinner.ThinProgress progress) {
    tell(
        progress.player().name()
            + ", stretch "
            + progress.stretches()
            + " of the "
            + progress.of()
            + " in the line");
  }

  /** Of several tempi. */
  void comparing(CompareTempi.TempiProgress progress) {
    tell(progress.searched() + " searches at several tempi done");
  }

  private void tell(String how) {
    double seconds = (output.nanoClock().getAsLong() - began) / 1e9;
    if (seconds >= told + EVERY_SECONDS) {
      told = seconds;
      output.err().printf(Locale.ROOT, "searching for %.0f s: %s%n", seconds, how);
    }
  }
}
