package stafette.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.Skill;

/** What the line of a brief asks of each of its skills, each worked out once. */
final class Demands {
  private final Brief brief;
  private final Map<List<Integer>, Demand> known = new HashMap<>();

  Demands(Brief brief) {
    this.brief = brief;
  }

  Demand of(Segment segment) {
    return known.computeIfAbsent(
        List.of(segment.player(), segment.skill()),
        key -> {
          Player player = brief.players().get(segment.player());
          Skill skill = player.skills().get(segment.skill());
          return Demand.of(
              player.instrument(), skill.technique(), skill.capability(), brief.line());
        });
  }
}
