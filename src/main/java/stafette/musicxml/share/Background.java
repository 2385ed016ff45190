package stafette.musicxml.share;

import stafette.plan.Plan;
import stafette.score.Line;

/**
 * A part beside the relay: what one player keeps of the line.
 *
 * @param plan of one player, over a line of what is kept
 * @param replaces the strokes in place of which it is written: where they stand in the player's
 *     part already, they go
 */
public record Background(Plan plan, Line replaces) {}
