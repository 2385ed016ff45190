package stafette.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.Skill;

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
    Optional<Skill> tirelessly = player.leastTiringSkill();
    List<Stint> stints = new ArrayList<>();
    for (Segment segment : plan.segmentsOf(index)) {
      stints.add(
          Stint.of(
              player, plan.skill(segment), demands.of(segment), demands.played(segment), segment));
    }
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
