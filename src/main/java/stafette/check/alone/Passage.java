package stafette.check.alone;

import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Voice;

/**
 * A fast passage: a maximal run of strokes near the limit of whoever plays them.
 *
 * @param part where it stands
 * @param voice in which voice
 * @param line its strokes, chords whole
 */
public record Passage(Part part, Voice voice, Line line) {}
