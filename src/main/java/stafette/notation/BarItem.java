package stafette.notation;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import stafette.score.Tuplet;
import stafette.time.Span;

/**
 * One note, chord or rest as it is to be written.
 *
 * @param span where it stands
 * @param shape its type and dots; empty for a rest of a whole bar, and for what no type can show
 * @param ratio the tuplet that it stands in
 * @param edge whether it begins or ends that tuplet
 * @param sound what it sounds; empty for a rest
 * @param beams its beams, from the first: "begin", "continue", "end", "forward hook", "backward
 *     hook"
 */
public record BarItem(
    Span span,
    Optional<NoteShape> shape,
    Optional<Ratio> ratio,
    Edge edge,
    Optional<SoundingItem> sound,
    List<String> beams) {
  public BarItem {
    beams = List.copyOf(beams);
  }

  public boolean isRest() {
    return sound.isEmpty();
  }

  BarItem withBeams(List<String> newBeams) {
    return new BarItem(span, shape, ratio, edge, sound, newBeams);
  }

  public BarItem withEdge(Edge newEdge) {
    return new BarItem(span, shape, ratio, newEdge, sound, beams);
  }

  /** Where an item stands in its tuplet. */
  public enum Edge {
    NONE,
    STARTS,
    STOPS,
    STARTS_AND_STOPS;

    public boolean starts() {
      return this == STARTS || this == STARTS_AND_STOPS;
    }

    public boolean stops() {
      return this == STOPS || this == STARTS_AND_STOPS;
    }
  }

  /**
   * So many in the time of so many.
   *
   * @param unit the type that is counted, if it is a plain one
   */
  public record Ratio(int actual, int normal, Optional<String> unit) {
    /** Nested groups multiplied, such as fifteen in the time of eight within seven for four. */
    public static final BigInteger MOST = BigInteger.valueOf(999);
  }

  /**
   * One written value of a stroke within one bar.
   *
   * @param stroke its number among the player's strokes
   * @param tuplet the group to which it belongs
   * @param first whether it is where the stroke is struck
   * @param last whether nothing is tied to it
   */
  public record SoundingItem(
      int stroke, Span span, Optional<Tuplet> tuplet, boolean first, boolean last) {
    SoundingItem over(Span piece, boolean begins, boolean ends) {
      return new SoundingItem(stroke, piece, tuplet, first && begins, last && ends);
    }
  }
}
