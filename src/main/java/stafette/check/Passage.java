package stafette.check;

import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Voice;

/**
 * A fast passage of a score.
 *
 * @param part whose
 * @param voice in which staff and voice it is written
 * @param line its strokes, chords whole
 */
public record Passage(Part part, Voice voice, Line line) {}
