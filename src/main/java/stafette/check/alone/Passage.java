package stafette.check.alone;

import stafette.score.Line;
import stafette.score.Part;

/**
 * A fast passage: a maximal run of strokes near the limit of whoever plays them.
 *
 * @param part where it stands
 * @param line its strokes, chords whole
 */
public record Passage(Part part, Line line) {
  /** Whether all strokes of another are among those of this one. */
  boolean holds(Passage other) {
    return line.source().strands().all().containsAll(other.line.source().strands().all())
        && !other.line.span().start().isBefore(line.span().start())
        && !line.stroke(line.count() - 1)
            .onset()
            .isBefore(other.line.stroke(other.line.count() - 1).onset());
  }
}
