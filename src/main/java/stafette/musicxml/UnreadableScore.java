package stafette.musicxml;

/**
 * A file that can't be read as a score; the message names the place and what to do, but not the
 * file.
 */
public final class UnreadableScore extends Exception {
  private static final long serialVersionUID = 1;

  public UnreadableScore(String message) {
    super(message);
  }
}
