package stafette.check;

import java.util.List;
import java.util.OptionalInt;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;

/**
 * Tries what one player has in plans for a brief of one line, whoever has the rest: by the judge's
 * own rules, but for shape and overlaps, which need the others.
 */
public final class PartTrial {
  private final Brief brief;
  private final Demands demands;

  public PartTrial(Brief brief) {
    this.brief = brief;
    this.demands = new Demands(brief);
  }

  /**
   * What the segments cost.
   *
   * @param segments all that the player has, in order; at least one
   * @return empty if the player can't play them all, or they break a lock on the player
   */
  public OptionalInt points(List<Segment> segments) {
    Plan plan = new Plan(brief, segments);
    return keepsLocks(plan, segments.get(0).player()) && plays(plan)
        ? OptionalInt.of(
            segments.stream().mapToInt(s -> Costing.segment(brief, s, demands).total()).sum())
        : OptionalInt.empty();
  }

  /** What one segment costs whose player has no other; empty if it can't be played, locks aside. */
  public OptionalInt pointsAlone(Segment segment) {
    return plays(new Plan(brief, List.of(segment)))
        ? OptionalInt.of(Costing.segment(brief, segment, demands).total())
        : OptionalInt.empty();
  }

  private boolean plays(Plan plan) {
    int player = plan.segments().get(0).player();
    return plan.segments().stream()
            .allMatch(s -> SegmentRules.of(plan, s, demands).findings(1).isEmpty() && isJoined(s))
        && PartRules.of(plan, WholePart.of(plan, player, demands)).findings(1).isEmpty();
  }

  private boolean isJoined(Segment segment) {
    Player player = brief.players().get(segment.player());
    return ShortTurn.finding(player, demands.of(segment), demands.played(segment), 1).isEmpty();
  }

  private boolean keepsLocks(Plan plan, int player) {
    return brief.rules().locks().stream()
        .filter(lock -> Lock.player(lock).orElse(-1) == player)
        .allMatch(lock -> LockRules.keeps(plan, lock));
  }
}
