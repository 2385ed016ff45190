package stafette.limits;

/** What makes a stroke. */
public enum Act {
  TONGUE(true, false),
  BOW(true, false),
  /** The wood of the bow, thrown on the string: col legno battuto. */
  WOOD(false, false),
  /**
   * A plucked string of a bowed or fretted instrument: finger or plectrum is what is slow,
   * whichever string it plucks.
   */
  PLUCK(false, false),
  /** A string of the harp. */
  STRING(false, true),
  KEY(false, true),
  MALLET(false, true);

  private final boolean slurs;
  private final boolean repeatsByKey;

  Act(boolean slurs, boolean repeatsByKey) {
    this.slurs = slurs;
    this.repeatsByKey = repeatsByKey;
  }

  /** Whether notes under a slur, its first one apart, are finger changes and no strokes. */
  public boolean slurs() {
    return slurs;
  }

  /**
   * Whether the limit for repeated notes counts from the last stroke on that same string, key or
   * bar.
   */
  public boolean repeatsByKey() {
    return repeatsByKey;
  }
}
