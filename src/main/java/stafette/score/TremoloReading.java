package stafette.score;

/** How a tremolo is read, and why. */
public enum TremoloReading {
  /** So many strokes as slashes and beams say. */
  MEASURED("as many strokes as slashes and beams say"),
  /** Measured, though such slashes mostly are not: at this tempo they can be counted with ease. */
  IN_DOUBT("three slashes, but slow enough to be counted"),
  /** The bow does not go that fast. */
  OUTRUNS_THE_BOW("slashes that outrun the bow"),
  /** The sticks do not go that fast. */
  OUTRUNS_THE_STICKS("slashes that outrun the sticks"),
  /** The hands do not alternate that fast. */
  OUTRUNS_THE_HANDS("slashes that outrun the hands"),
  /** On bows, in rolls and between keys that many, beams included, are no count. */
  THREE_SLASHES("three slashes"),
  /** A word asks for it. */
  WORD("the word tremolo"),
  /** On a wind. */
  FLUTTER("flutter-tonguing"),
  /** The file itself says that they are unmeasured. */
  MARKED("marked as unmeasured in the file"),
  /** Too long a note to be spelled out. */
  ENDLESS("more strokes than anybody counts"),
  /** Whoever opened the score wants it so. */
  ASKED_FOR("as asked for");

  private final String text;

  TremoloReading(String text) {
    this.text = text;
  }

  /** Why, in a few words. */
  public String text() {
    return text;
  }

  /** Whether its strokes are counted, and so judged. */
  public boolean counts() {
    return this == MEASURED || this == IN_DOUBT;
  }
}
