package stafette.desktop.state;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import stafette.words.Fault;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * Long work beside the window, one piece at a time: a new one ends the one before, whose result is
 * then no longer wanted.
 */
public final class BackgroundWork {
  private final Executor aside;
  private final Executor back;
  private final Executor writer;
  private RunningWork present;

  /** Work beside the window, where what is short to write is written at once. */
  public BackgroundWork(Executor aside, Executor back) {
    this(aside, back, Runnable::run);
  }

  /**
   * @param aside where it goes on, one piece after the other
   * @param back leads back to the window's thread
   * @param writer where what is short is written, one piece after the other
   */
  public BackgroundWork(Executor aside, Executor back, Executor writer) {
    this.aside = aside;
    this.back = back;
    this.writer = writer;
    this.present = new RunningWork();
  }

  /** What is said where the program is at fault. */
  public static Sentence fault(Throwable why) {
    Sentence where = Fault.where(why);
    Throwable what = Fault.what(why);
    if (what instanceof OutOfMemoryError) {
      return Fault.outOfMemory();
    }
    return where.isEmpty()
        ? Sentence.of("this should not happen: {0}", what.toString())
        : Sentence.of("{0}: this should not happen: {1}", where, what.toString());
  }

  /** Other work in the same place, which ends none of this. */
  BackgroundWork another() {
    return new BackgroundWork(aside, back, writer);
  }

  /** Work on files, after what was to be written before; nothing ends it. */
  BackgroundWork onFiles() {
    return new BackgroundWork(writer, back, writer);
  }

  /** Writes something short beside the window, after what was to be written before. */
  void write(Runnable piece) {
    writer.execute(piece);
  }

  /** Goes on on the window's thread. */
  void back(Runnable step) {
    back.execute(step);
  }

  /** Something that takes long. */
  public interface WorkPiece<T> {
    /**
     * Does it.
     *
     * @throws Refusal if it can't be done
     */
    T of(RunningWork going) throws Refusal;
  }

  /** A piece of work as it goes on. */
  public final class RunningWork {
    private final AtomicBoolean unwanted = new AtomicBoolean();
    private final AtomicBoolean enough = new AtomicBoolean();

    /** Whether it shall end; asked often. */
    public boolean isOver() {
      return unwanted.get() || enough.get();
    }

    /** Tells something to the window's thread, while the work is still wanted. */
    void tell(Runnable step) {
      back.execute(
          () -> {
            if (!unwanted.get()) {
              step.run();
            }
          });
    }

    private <T> void run(WorkPiece<T> piece, Consumer<T> done, Consumer<Sentence> refused) {
      try {
        T result = piece.of(this);
        tell(() -> done.accept(result));
      } catch (Refusal e) {
        tell(() -> refused.accept(e.inWords()));
      } catch (RuntimeException | Error e) {
        tell(() -> refused.accept(fault(e)));
        throw e;
      }
    }
  }

  /**
   * Begins a piece of work.
   *
   * @param done gets the result, unless it is no longer wanted
   * @param refused gets the words in which it was refused, likewise
   */
  public <T> void start(WorkPiece<T> piece, Consumer<T> done, Consumer<Sentence> refused) {
    stop();
    RunningWork going = new RunningWork();
    present = going;
    aside.execute(() -> going.run(piece, done, refused));
  }

  /** What goes on shall end with what it has. */
  void hurry() {
    present.enough.set(true);
  }

  /** Ends what goes on; nothing more is heard of it. */
  public void stop() {
    present.unwanted.set(true);
  }
}
