package stafette.notation;

/**
 * Slashes that say that a note is struck again and again, or two notes in turn.
 *
 * @param slashes how many, beside the note's own beams
 * @param place whether they go through its stem, or to the next note or from the one before
 */
public record TremoloSign(int slashes, SlashPlace place) {
  /** Where the slashes stand. */
  public enum SlashPlace {
    ON_STEM,
    TO_NEXT,
    FROM_LAST
  }

  public static TremoloSign single(int slashes) {
    return new TremoloSign(slashes, SlashPlace.ON_STEM);
  }

  public static TremoloSign firstOfTwo(int slashes) {
    return new TremoloSign(slashes, SlashPlace.TO_NEXT);
  }

  public static TremoloSign secondOfTwo(int slashes) {
    return new TremoloSign(slashes, SlashPlace.FROM_LAST);
  }

  /** Each of two notes shows the value of both. */
  public boolean isOfTwo() {
    return place != SlashPlace.ON_STEM;
  }
}
