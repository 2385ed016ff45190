package stafette.picture.ink;

/** The inks of a picture. What they tell, shape and darkness tell too, so none needs its colour. */
public enum Ink {
  /** What matters. */
  FULL(0x15181f),
  /** Words beside it. */
  SOFT(0x565b66),
  /** Hairlines: beats, lanes that rest. */
  FAINT(0xb3b6bd),
  /** Handoffs: dark enough to be seen in black and white. */
  JOIN(0xa8330f),
  PAPER(0xffffff);

  private final int rgb;

  Ink(int rgb) {
    this.rgb = rgb;
  }

  /** Red, green and blue, eight bits each. */
  public int rgb() {
    return rgb;
  }
}
