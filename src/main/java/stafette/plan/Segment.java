package stafette.plan;

/**
 * An unbroken stretch of a line for one player in one way.
 *
 * @param relay which of the brief's lines
 * @param player index among the brief's players
 * @param way index among that player's ways
 * @param first the first stroke
 * @param last the last stroke, included
 * @param pattern which strokes between them the player takes
 */
public record Segment(int relay, int player, int way, int first, int last, Pattern pattern) {
  /**
   * @throws IllegalArgumentException if it ends before it begins, or an index is negative
   */
  public Segment {
    if (relay < 0 || player < 0 || way < 0 || first < 0 || last < first) {
      throw new IllegalArgumentException(
          "no segment: relay "
              + relay
              + ", player "
              + player
              + ", way "
              + way
              + ", strokes "
              + first
              + " to "
              + last);
    }
  }

  /** A segment of the first relay that takes all strokes. */
  public Segment(int player, int way, int first, int last) {
    this(0, player, way, first, last, Pattern.ALL);
  }

  /** The same stretch for somebody else. */
  public Segment of(int otherPlayer) {
    return new Segment(relay, otherPlayer, way, first, last, pattern);
  }

  /** The same stretch for somebody else with one of that player's ways. */
  Segment of(int otherPlayer, int otherWay) {
    return new Segment(relay, otherPlayer, otherWay, first, last, pattern);
  }

  /** The same stretch with another share of its strokes. */
  Segment taking(Pattern other) {
    return new Segment(relay, player, way, first, last, other);
  }

  /** How many strokes of the line it spans. */
  public int strokes() {
    return last - first + 1;
  }
}
