package stafette.work;

/** Something can't be done as asked; the message says what is wrong, where, and what to do. */
public final class Refusal extends Exception {
  private static final long serialVersionUID = 1;

  private final Cause cause;

  /** Whose move it is. */
  public enum Cause {
    /** An option, part, bar, tone, instrument or tempo that does not exist. */
    WRONG_USE,
    /** A file that can't be read, or can't be written. */
    FILE
  }

  private Refusal(Cause cause, String message) {
    super(message);
    this.cause = cause;
  }

  public static Refusal wrongUse(String message) {
    return new Refusal(Cause.WRONG_USE, message);
  }

  public static Refusal ofFile(String message) {
    return new Refusal(Cause.FILE, message);
  }

  public Cause cause() {
    return cause;
  }
}
