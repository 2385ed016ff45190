package stafette.desktop.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import stafette.keep.Unfinished;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.Reports;
import stafette.work.SplitLine;

/**
 * Keeps what is on the desk beside the window, in case the program ends unforeseen. Of states that
 * follow each other faster than they can be written only the newest is.
 */
final class Autosave {
  private final Unfinished unfinished;
  private final BackgroundWork labour;
  private final Consumer<Sentence> refused;
  private final List<Unfinished.Left> replaced = new ArrayList<>();
  private Optional<SaveState> next = Optional.empty();
  private boolean told;

  /**
   * @param refused told in words, on the window's thread and once, that it can't be kept
   */
  Autosave(Unfinished unfinished, BackgroundWork labour, Consumer<Sentence> refused) {
    this.unfinished = unfinished;
    this.labour = labour;
    this.refused = refused;
  }

  /** What is to be kept; nothing if empty. */
  private record SaveState(Optional<SplitLine.SplitOutcome> outcome) {}

  /** From now on this is what is kept; nothing if empty. */
  void keep(Optional<SplitLine.SplitOutcome> outcome) {
    boolean goesOn;
    synchronized (this) {
      goesOn = next.isPresent();
      next = Optional.of(new SaveState(outcome));
    }
    if (!goesOn) {
      labour.write(this::write);
    }
  }

  /** What was left behind is on the desk now: once that is kept it is removed. */
  synchronized void replaces(Unfinished.Left left) {
    replaced.add(left);
  }

  private synchronized Optional<SaveState> taken() {
    Optional<SaveState> taken = next;
    next = Optional.empty();
    return taken;
  }

  private void write() {
    try {
      Optional<SaveState> state = taken();
      if (state.isPresent()) {
        write(state.get());
      }
    } catch (Refusal e) {
      tell(e.inWords());
    } catch (RuntimeException | Error e) {
      tell(BackgroundWork.fault(e));
      throw e;
    }
  }

  private void write(SaveState state) throws Refusal {
    if (state.outcome.isPresent()) {
      SplitLine.SplitOutcome desk = state.outcome.get();
      unfinished.keep(file -> Reports.saveMovable(desk, file));
    } else {
      unfinished.finished();
    }
    for (Unfinished.Left left : noLongerNeeded()) {
      unfinished.dismiss(left);
    }
    told = false;
  }

  private synchronized List<Unfinished.Left> noLongerNeeded() {
    List<Unfinished.Left> all = List.copyOf(replaced);
    replaced.clear();
    return all;
  }

  private void tell(Sentence why) {
    if (!told) {
      told = true;
      labour.back(() -> refused.accept(why));
    }
  }

  /** Waits until everything is written. */
  void settle() {
    FutureTask<Boolean> last = new FutureTask<>(() -> true);
    labour.write(last);
    try {
      last.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException("nothing can fail in it", e);
    }
  }
}
