package stafette.time;

/**
 * A stretch of musical time, half open.
 *
 * @param start the first position that belongs to it
 * @param end the first position after it
 */
public record Span(Position start, Position end) {
  /**
   * @throws IllegalArgumentException if the end comes before the start
   */
  public Span {
    if (end.isBefore(start)) {
      throw new IllegalArgumentException(
          "a span can't end before it starts: " + start + ", " + end);
    }
  }

  public static Span of(Position start, Length length) {
    return new Span(start, start.plus(length));
  }

  public Length length() {
    return end.since(start);
  }

  public boolean contains(Position position) {
    return !position.isBefore(start) && position.isBefore(end);
  }

  /** Whether the two share more than an edge. */
  public boolean overlaps(Span other) {
    return start.isBefore(other.end) && other.start.isBefore(end);
  }
}
