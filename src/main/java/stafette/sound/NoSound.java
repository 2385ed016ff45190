package stafette.sound;

/** Sound can't be made on this Java, or with this soundbank; the message says why, for people. */
public final class NoSound extends Exception {
  private static final long serialVersionUID = 1;

  NoSound(String message, Throwable cause) {
    super(message, cause);
  }

  NoSound(String message) {
    super(message);
  }
}
