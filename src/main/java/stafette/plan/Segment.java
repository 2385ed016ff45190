package stafette.plan;

/**
 * An unbroken stretch of the line for one player with one technique.
 *
 * @param player index among the brief's players
 * @param skill index among that player's skills
 * @param first the first stroke
 * @param last the last stroke, included
 */
public record Segment(int player, int skill, int first, int last) {
  /**
   * @throws IllegalArgumentException if it ends before it begins, or an index is negative
   */
  public Segment {
    if (player < 0 || skill < 0 || first < 0 || last < first) {
      throw new IllegalArgumentException(
          "no segment: player "
              + player
              + ", skill "
              + skill
              + ", strokes "
              + first
              + " to "
              + last);
    }
  }

  public int strokes() {
    return last - first + 1;
  }
}
