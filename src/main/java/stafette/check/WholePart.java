package stafette.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.limits.Skill;
import stafette.plan.Plan;
import stafette.plan.Player;

/**
 * All that one player plays, in order: the segments of a plan and what the score gives.
 *
 * @param stints by their start
 */
public record WholePart(Player player, List<Stint> stints) {
  public WholePart {
    stints = List.copyOf(stints);
  }

  static WholePart of(Plan plan, int index, Demands demands) {
    Player player = plan.brief().players().get(index);
    return of(
        player,
        plan.segmentsOf(index).stream()
            .map(segment -> Stint.of(player, demands.of(segment), demands.played(segment), segment))
            .toList());
  }

  /** What a player plays of the plan, with what the score gives. */
  public static WholePart of(Player player, List<Stint> ofPlan) {
    Optional<Skill> tirelessly = player.leastTiringSkill();
    List<Stint> stints = new ArrayList<>(ofPlan);
    player.busy().forEach(busy -> stints.add(Stint.given(busy, tirelessly)));
    stints.sort(Comparator.comparingLong(Stint::startMicros));
    return new WholePart(player, stints);
  }

  /** What the score gives, without the plan. */
  WholePart givenOnly() {
    return new WholePart(player, stints.stream().filter(Stint::isGiven).toList());
  }

  Stream<Stint> ofPlan() {
    return stints.stream().filter(stint -> !stint.isGiven());
  }
}
