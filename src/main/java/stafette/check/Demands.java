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
import stafette.plan.Skill;

/** What the lines of a brief ask of each of its skills, each worked out once. */
final class Demands {
  private final Brief brief;
  private final Map<List<Integer>, Demand> known = new HashMap<>();
  private final Map<Integer, Halves> halves = new HashMap<>();

  Demands(Brief brief) {
    this.brief = brief;
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
        List.of(segment.player(), segment.skill(), segment.relay(), half(segment)),
        key -> {
          Player player = brief.players().get(segment.player());
          Skill skill = player.skills().get(segment.skill());
          return Demand.of(
              player.instrument(), skill.technique(), skill.capability(), played.line());
        });
  }

  private int half(Segment segment) {
    return segment.pattern() == Pattern.ALL ? -1 : halves(segment).halfOf(segment);
  }
}
