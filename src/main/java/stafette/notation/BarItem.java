package stafette.notation;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Position;
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
   * @param tremolo slashes, if it holds further strokes
   */
  public record SoundingItem(
      int stroke,
      Span span,
      Optional<Tuplet> tuplet,
      boolean first,
      boolean last,
      Optional<TremoloSign> tremolo) {
    /** One stroke. */
    public SoundingItem(
        int stroke, Span span, Optional<Tuplet> tuplet, boolean first, boolean last) {
      this(stroke, span, tuplet, first, last, Optional.empty());
    }

    /** Several strokes as one note with slashes. */
    public static SoundingItem slashed(int stroke, Span span, TremoloSign tremolo) {
      return new SoundingItem(stroke, span, Optional.empty(), true, true, Optional.of(tremolo));
    }

    /**
     * A stroke as it is written, cut at bar lines.
     *
     * @param until where it ends at the latest: one player's notes don't overlap, whatever a voice
     *     says
     */
    public static List<SoundingItem> of(int index, Stroke stroke, Position until, Bars bars) {
      List<SoundingItem> items = new ArrayList<>();
      Position at = stroke.onset();
      for (Value value : stroke.values()) {
        Position written = at.plus(value.length());
        Position end = written.isAfter(until) ? until : written;
        while (at.isBefore(end)) {
          Bar bar = bars.at(at);
          boolean lastBar = bar.index() == bars.count() - 1;
          Position stop = end.isAfter(bar.span().end()) && !lastBar ? bar.span().end() : end;
          boolean first = at.equals(stroke.onset());
          items.add(
              new SoundingItem(
                  index, new Span(at, stop), value.tuplet(), first, stop.equals(until)));
          at = stop;
        }
      }
      return items;
    }

    SoundingItem over(Span piece, boolean begins, boolean ends) {
      return new SoundingItem(stroke, piece, tuplet, first && begins, last && ends, tremolo);
    }
  }
}
