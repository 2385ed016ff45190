package stafette.words;

import java.util.List;
import java.util.function.Supplier;

/** A fault of the program's own, and where in the music it showed. */
public final class Fault extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Sentence where;
  private final Throwable what;

  private Fault(Sentence where, Throwable what) {
    super(what);
    this.where = where;
    this.what = what;
  }

  /** Something that may turn out to be at fault. */
  @FunctionalInterface
  public interface FaultyWork<T, E extends Exception> {
    T done() throws E;
  }

  /**
   * Does something, and says where it was done if it is at fault.
   *
   * @param where the place, without those round it and in it
   */
  public static <T, E extends Exception> T at(Supplier<Sentence> where, FaultyWork<T, E> work)
      throws E {
    try {
      return work.done();
    } catch (Fault deeper) {
      throw new Fault(Sentence.list(List.of(where.get(), deeper.where)), deeper.what);
    } catch (RuntimeException | Error e) {
      throw new Fault(where.get(), e);
    }
  }

  /** The place, as far as it is known; nothing if it isn't. */
  public static Sentence where(Throwable fault) {
    return fault instanceof Fault placed ? placed.where : Sentence.NONE;
  }

  /** That the memory did not do. */
  public static Sentence outOfMemory() {
    return Sentence.of(
        "the program ran out of memory ({0} MB); take fewer bars or players, or give it more",
        Runtime.getRuntime().maxMemory() >> 20);
  }

  /** What went wrong, without its place. */
  public static Throwable what(Throwable fault) {
    return fault instanceof Fault placed ? placed.what : fault;
  }
}
