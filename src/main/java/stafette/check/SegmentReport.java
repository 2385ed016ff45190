package stafette.check;

import stafette.plan.Segment;

/**
 * How hard one segment is, with everything carried over from before.
 *
 * @param segment which
 * @param ratePerSecond the highest rate from note to note, 0 for a single stroke
 * @param use the largest share of a peak or moving limit
 * @param tiredness the highest in the segment
 * @param breath the largest share of the air spent; 0 for instruments without breath
 * @param strain the largest of the three
 */
public record SegmentReport(
    Segment segment,
    double ratePerSecond,
    double use,
    double tiredness,
    double breath,
    double strain) {}
