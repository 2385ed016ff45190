package stafette.score;

/**
 * The score has no line like the one that was asked for; the message says why, and what to ask for
 * instead.
 */
public final class NoSuchLine extends Exception {
  private static final long serialVersionUID = 1;

  public NoSuchLine(String message) {
    super(message);
  }
}
