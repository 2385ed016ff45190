package stafette.musicxml.read;

import java.util.List;
import stafette.musicxml.text.Container;
import stafette.musicxml.text.Origin;
import stafette.score.Score;
import stafette.score.TremoloRun;

/**
 * A score with the text that it came from.
 *
 * @param container the file
 * @param score what it says
 * @param origin where it says it; parts in the same order as the score's
 * @param tremolos part by part those that are not counted, or that are and perhaps should not be
 */
public record Document(
    Container container, Score score, Origin origin, List<TremoloRun> tremolos) {}
