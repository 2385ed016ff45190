package stafette.plan;

import stafette.score.Line;

/**
 * The strokes that a player really plays in a segment.
 *
 * @param line the relay's line, or its half in a hocket; its clock is that of the brief
 * @param first the first stroke, numbered in that line
 * @param last the last one, included
 */
public record Played(Line line, int first, int last) {
  public int strokes() {
    return last - first + 1;
  }
}
