package stafette.musicxml;

/**
 * A plan that has no place in a part of the score as it is notated; the message names the place and
 * what to do.
 */
public final class UnwritablePlan extends Exception {
  private static final long serialVersionUID = 1;

  public UnwritablePlan(String message) {
    super(message);
  }
}
