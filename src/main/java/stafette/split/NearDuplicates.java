package stafette.split;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * Plans between which there is nothing to choose. Either the same players hand over within a beat
 * of one another: the same ones are used, segment by segment on the same instruments, and each
 * landing note lies at most a beat beside the other's. Or they cost the same whatever is favoured.
 */
final class NearDuplicates {
  private NearDuplicates() {}

  /**
   * Whether two plans for the same line and players are near-duplicates.
   *
   * @param base weights that favour nothing
   */
  static boolean are(Plan one, Plan other, Weights base) {
    return handOverTogether(one, other)
        || Arrays.stream(Favour.values())
            .map(base::favouring)
            .allMatch(weights -> cost(one, weights) == cost(other, weights));
  }

  /** What a plan costs under other weights than its own. */
  static int cost(Plan plan, Weights weights) {
    Brief brief = plan.brief().with(plan.brief().rules().with(weights));
    return Costing.of(new Plan(brief, plan.segments())).total();
  }

  private static boolean handOverTogether(Plan one, Plan other) {
    List<Handoff> handoffs = one.handoffs();
    return handoffs.size() == other.handoffs().size()
        && instruments(one).equals(instruments(other))
        && players(one).equals(players(other))
        && IntStream.range(0, handoffs.size())
            .allMatch(i -> withinBeat(one, handoffs.get(i), other.handoffs().get(i)));
  }

  private static boolean withinBeat(Plan plan, Handoff one, Handoff other) {
    Line line = plan.brief().line(one.leaves().relay());
    int landing = one.leaves().last();
    int beside = other.leaves().last();
    long apart = Math.abs(line.onsetMicros(landing) - line.onsetMicros(beside));
    return one.leaves().relay() == other.leaves().relay()
        && apart <= Math.max(line.beatMicros(landing), line.beatMicros(beside));
  }

  /** The instrument of each segment, with its relay and with what it takes of a hocket. */
  private static List<List<String>> instruments(Plan plan) {
    return plan.segments().stream()
        .map(
            segment ->
                List.of(
                    Integer.toString(segment.relay()),
                    segment.pattern().name(),
                    plan.player(segment).instrument().name()))
        .toList();
  }

  private static Set<Integer> players(Plan plan) {
    return plan.segments().stream().map(Segment::player).collect(Collectors.toSet());
  }
}
