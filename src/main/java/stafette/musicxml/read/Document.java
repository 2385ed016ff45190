package stafette.musicxml.read;

import stafette.musicxml.text.Container;
import stafette.musicxml.text.Origin;
import stafette.score.Score;

/**
 * A score with the text that it came from.
 *
 * @param container the file
 * @param score what it says
 * @param origin where it says it; parts in the same order as the score's
 */
public record Document(Container container, Score score, Origin origin) {}
