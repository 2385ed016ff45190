package stafette.check;

import java.util.List;

/**
 * What a plan costs, in points, broken into its parts.
 *
 * @param total everything together
 * @param players for the players used
 * @param idle for players who were named, are able, and are not used
 * @param hockets for the stretches of hocket pairs
 * @param segments one for each segment, in order
 * @param handoffs one for each handoff, in order
 */
public record Cost(
    int total,
    int players,
    int idle,
    int hockets,
    List<SegmentCost> segments,
    List<HandoffCost> handoffs) {
  public Cost {
    segments = List.copyOf(segments);
    handoffs = List.copyOf(handoffs);
  }
}
