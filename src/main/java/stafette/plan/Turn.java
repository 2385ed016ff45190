package stafette.plan;

import java.util.List;

/**
 * One link of a relay: a segment, or the two segments of a hocket pair.
 *
 * @param segments one; or two with the same ends, of two players, {@link Pattern#ODD} first
 */
public record Turn(List<Segment> segments) {
  /**
   * @throws IllegalArgumentException if they are not one, nor a pair
   */
  public Turn {
    segments = List.copyOf(segments);
    if (segments.size() == 1
        ? segments.get(0).pattern() != Pattern.ALL
        : segments.size() != 2 || !arePair(segments.get(0), segments.get(1))) {
      throw new IllegalArgumentException("neither a segment nor a hocket pair: " + segments);
    }
  }

  private static boolean arePair(Segment odd, Segment even) {
    return odd.pattern() == Pattern.ODD
        && even.pattern() == Pattern.EVEN
        && odd.relay() == even.relay()
        && odd.first() == even.first()
        && odd.last() == even.last()
        && odd.player() != even.player();
  }

  public int relay() {
    return segments.get(0).relay();
  }

  public int first() {
    return segments.get(0).first();
  }

  public int last() {
    return segments.get(0).last();
  }

  public boolean isHocket() {
    return segments.size() == 2;
  }

  /** The same players from another stroke to another one. */
  Turn between(int first, int last) {
    return new Turn(
        segments.stream()
            .map(s -> new Segment(s.relay(), s.player(), s.way(), first, last, s.pattern()))
            .toList());
  }

  /** A turn with one of its segments replaced. */
  Turn with(Segment old, Segment other) {
    return new Turn(segments.stream().map(s -> s.equals(old) ? other : s).toList());
  }

  /** Whether a player takes part. */
  public boolean has(int player) {
    return segments.stream().anyMatch(segment -> segment.player() == player);
  }

  /** Whether somebody plays in both. */
  public boolean shares(Turn other) {
    return segments.stream().anyMatch(segment -> other.has(segment.player()));
  }
}
