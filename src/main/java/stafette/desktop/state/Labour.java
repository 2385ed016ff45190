package stafette.desktop.state;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stafette.work.Refusal;

/**
 * Long work beside the window, one piece at a time: a new one ends the one before, whose result is
 * then no longer wanted.
 */
public final class Labour {
  private final Executor aside;
  private final Executor back;
  private AtomicBoolean present = new AtomicBoolean(true);
  private AtomicBoolean enough = new AtomicBoolean();

  /**
   * @param aside where it goes on, one piece after the other
   * @param back leads back to the window's thread
   */
  public Labour(Executor aside, Executor back) {
    this.aside = aside;
    this.back = back;
  }

  /** Something that takes long. */
  interface Piece<T> {
    /**
     * @param stop asked often; says yes once it shall end
     */
    T of(BooleanSupplier stop) throws Refusal;
  }

  <T> void start(Piece<T> piece, Consumer<T> done, Consumer<String> refused) {
    stop();
    AtomicBoolean stopped = new AtomicBoolean();
    AtomicBoolean hurried = new AtomicBoolean();
    present = stopped;
    enough = hurried;
    aside.execute(
        () -> {
          try {
            T result = piece.of(() -> stopped.get() || hurried.get());
            wanted(stopped, () -> done.accept(result));
          } catch (Refusal e) {
            wanted(stopped, () -> refused.accept(String.valueOf(e.getMessage())));
          }
        });
  }

  private void wanted(AtomicBoolean stopped, Runnable step) {
    back.execute(
        () -> {
          if (!stopped.get()) {
            step.run();
          }
        });
  }

  /** Tells something on the way, while the work is still wanted. */
  void tell(Runnable step) {
    wanted(present, step);
  }

  /** What goes on shall end with what it has. */
  void hurry() {
    enough.set(true);
  }

  /** Ends what goes on; nothing more is heard of it. */
  void stop() {
    present.set(true);
  }
}
