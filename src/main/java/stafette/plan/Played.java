package stafette.plan;

import java.util.List;
import stafette.score.Line;
import stafette.score.Stroke;

/**
 * The strokes that a player really plays in a segment.
 *
 * @param line the relay's line, or its half in a hocket; its clock is that of the brief
 * @param first the first stroke, numbered in that line
 * @param last the last one, included
 */
public record Played(Line line, int first, int last) {
  /** How many strokes. */
  public int strokes() {
    return last - first + 1;
  }

  /** The strokes themselves. */
  public List<Stroke> all() {
    return line.strokes().subList(first, last + 1);
  }
}
