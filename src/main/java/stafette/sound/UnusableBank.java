package stafette.sound;

/** A sound bank that can't be used; the message says why, without the file's name. */
public final class UnusableBank extends Exception {
  private static final long serialVersionUID = 1L;

  UnusableBank(String message, Throwable cause) {
    super(message, cause);
  }
}
