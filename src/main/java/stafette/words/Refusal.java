package stafette.words;

/** Something can't be done as asked; the message says what is wrong, where, and what to do. */
public final class Refusal extends Objection {
  private static final long serialVersionUID = 1;

  private final Cause cause;

  /** Whose move it is. */
  public enum Cause {
    /** An option, part, bar, tone, instrument or tempo that does not exist. */
    WRONG_USE,
    /** A file that can't be read, or can't be written. */
    FILE
  }

  private Refusal(Cause cause, Sentence sentence) {
    super(sentence);
    this.cause = cause;
  }

  public static Refusal wrongUse(Sentence sentence) {
    return new Refusal(Cause.WRONG_USE, sentence);
  }

  /** In words that only the command line says, of its options. */
  public static Refusal wrongUse(String message) {
    return wrongUse(Sentence.name(message));
  }

  public static Refusal ofFile(Sentence sentence) {
    return new Refusal(Cause.FILE, sentence);
  }

  /** In words that only the command line says. */
  public static Refusal ofFile(String message) {
    return ofFile(Sentence.name(message));
  }

  public Cause cause() {
    return cause;
  }
}
