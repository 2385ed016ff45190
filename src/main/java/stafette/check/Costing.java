package stafette.check;

import java.util.List;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * What a plan costs under its weights, whether it holds or not. All but the price of the players
 * depends on one segment alone or on one handoff alone.
 */
public final class Costing {
  private Costing() {}

  public static Cost of(Plan plan) {
    Brief brief = plan.brief();
    Demands demands = new Demands(brief);
    List<SegmentCost> segments =
        plan.segments().stream().map(segment -> segment(brief, segment, demands)).toList();
    List<HandoffCost> handoffs =
        plan.handoffs().stream().map(handoff -> handoff(brief, handoff)).toList();
    long used = plan.segments().stream().mapToInt(Segment::player).distinct().count();
    int players = Math.toIntExact(used * brief.rules().weights().player());
    long pairs = plan.turns().stream().filter(Turn::isHocket).count();
    int hockets = Math.toIntExact(pairs * brief.rules().weights().hocket());
    int total =
        players
            + hockets
            + segments.stream().mapToInt(SegmentCost::total).sum()
            + handoffs.stream().mapToInt(HandoffCost::total).sum();
    return new Cost(total, players, hockets, segments, handoffs);
  }

  /** The cost of one segment; {@link Strain} says how its strain is summed. */
  public static SegmentCost segment(Brief brief, Segment segment) {
    return segment(brief, segment, new Demands(brief));
  }

  static SegmentCost segment(Brief brief, Segment segment, Demands demands) {
    Played played = demands.played(segment);
    Player player = brief.players().get(segment.player());
    int outside = 0;
    for (int j = played.first(); j <= played.last(); j++) {
      outside += comfortable(player.instrument(), played.line(), j) ? 0 : 1;
    }
    return new SegmentCost(
        effort(brief, segment, demands).points(), outside * brief.rules().weights().register());
  }

  /** What the strain of one segment is made of. */
  public static Effort effort(Brief brief, Segment segment) {
    return effort(brief, segment, new Demands(brief));
  }

  private static Effort effort(Brief brief, Segment segment, Demands demands) {
    Demand demand = demands.of(segment);
    Played played = demands.played(segment);
    Line line = played.line();
    Weights weights = brief.rules().weights();
    long fast = 0;
    for (int j = played.first() + 1; j <= played.last(); j++) {
      fast += Strain.strokeMicropoints(Strain.use(demand, line, played.first(), j), weights);
    }
    double tiredness = Tiredness.fresh(demand, line, played.first(), played.last());
    return new Effort(fast, Strain.endMicropoints(tiredness, weights));
  }

  /** The cost of one handoff. */
  public static HandoffCost handoff(Brief brief, Handoff handoff) {
    Line line = brief.line(handoff.enters().relay());
    Weights weights = brief.rules().weights();
    if (overSilence(line, handoff)) {
      return HandoffCost.FREE;
    }
    int entry = handoff.enters().first();
    int landing = handoff.leaves().last();
    int cover = Math.min(line.cover(landing), weights.coverMost());
    int beside = Math.abs(handoff.shared() - target(brief, handoff.leaves()));
    return new HandoffCost(
        Math.max(0, weights.handoff() - cover),
        weights.entry().get(line.rank(entry).ordinal()),
        weights.landing().get(line.rank(landing).ordinal()),
        beside * weights.overlap(),
        Pairing.worst(brief, handoff).blend(weights));
  }

  /** The target of an overlap; of a pair, the longer one of the two. */
  static int target(Brief brief, Turn leaves) {
    return Pairing.instruments(brief, leaves).stream()
        .mapToInt(brief.rules().weights()::overlapTarget)
        .max()
        .orElse(1);
  }

  /** Whether the next segment begins after a silence of the line, with nothing shared. */
  public static boolean overSilence(Line line, Handoff handoff) {
    return handoff.shared() == 0 && line.restsBefore(handoff.enters().first());
  }

  private static boolean comfortable(Instrument instrument, Line line, int j) {
    return line.stroke(j).tones().stream().allMatch(instrument::comfortableAt);
  }
}
