package stafette.musicxml;

/**
 * Something in an element that can't be read; whoever knows part and bar turns it into an {@link
 * UnreadableScore}.
 */
final class Malformed extends Exception {
  private static final long serialVersionUID = 1;

  Malformed(String message) {
    super(message);
  }
}
