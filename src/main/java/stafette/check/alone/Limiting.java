package stafette.check.alone;

/** What decides how many players manage a line. */
public enum Limiting {
  /** The rate of strokes over a few of them. */
  BURST("burst"),
  /** The rate of changing notes over a few of them. */
  MOVING("changing notes"),
  /** Strength over many strokes. */
  TIREDNESS("tiredness"),
  BREATH("breath"),
  /** Notes that the instrument doesn't have. */
  RANGE("range"),
  /** Notes for which the player has no technique. */
  TECHNIQUE("technique"),
  /** No setting of the harp's pedals gives the strings. */
  PEDALS("pedals");

  private final String text;

  Limiting(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }
}
