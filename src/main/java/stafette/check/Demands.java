package stafette.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Halves;
import stafette.plan.Pattern;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;

/**
 * What the lines of a brief ask of its players in each of their ways, each worked out once. The
 * techniques may have been settled at another tempo.
 */
final class Demands {
  private final Brief brief;
  private final Brief settled;
  private final Map<List<Integer>, Demand> known = new HashMap<>();
  private final Map<Integer, Halves> halves = new HashMap<>();
  private final Map<Integer, Halves> settledHalves = new HashMap<>();

  Demands(Brief brief) {
    this(brief, brief);
  }

  /**
   * @param settled the same brief at the tempo at which techniques are chosen
   */
  Demands(Brief brief, Brief settled) {
    this.brief = brief;
    this.settled = settled;
  }

  /** The strokes that the player of a segment really plays. */
  Played played(Segment segment) {
    return segment.pattern() == Pattern.ALL
        ? new Played(brief.line(segment.relay()), segment.first(), segment.last())
        : halves(segment).of(segment);
  }

  private Halves halves(Segment segment) {
    return halves.computeIfAbsent(segment.relay(), brief::halves);
  }

  Demand of(Segment segment) {
    Played played = played(segment);
    return known.computeIfAbsent(
        List.of(segment.player(), segment.way(), segment.relay(), half(segment)),
        key -> {
          Player player = brief.players().get(segment.player());
          return Demand.of(
              player.instrument(),
              player.ways().get(segment.way()),
              played.line(),
              settledLine(segment));
        });
  }

  private Line settledLine(Segment segment) {
    return segment.pattern() == Pattern.ALL
        ? settled.line(segment.relay())
        : settledHalves.computeIfAbsent(segment.relay(), settled::halves).of(segment).line();
  }

  private int half(Segment segment) {
    return segment.pattern() == Pattern.ALL ? -1 : halves(segment).halfOf(segment);
  }
}
