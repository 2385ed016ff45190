package stafette.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.limits.Breath;
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
import stafette.time.Rank;

/**
 * What a plan costs under its weights, whether it holds or not. All but what players cost, used or
 * idle, depends on one segment alone or on one handoff alone.
 */
public final class Costing {
  /** The longest turn that is called short: two seconds. */
  public static final long USUAL_TURN_MICROS = 2_000_000;

  private static final int OF_FOUR = 0;
  private static final int OF_TWO = 1;
  private static final int ELSEWHERE = 2;
  private static final int WITHIN_SLUR = 3;

  private Costing() {}

  public static Cost of(Plan plan) {
    Brief brief = plan.brief();
    Demands demands = new Demands(brief);
    List<SegmentCost> segments =
        plan.segments().stream().map(segment -> segment(brief, segment, demands)).toList();
    List<HandoffCost> handoffs =
        plan.handoffs().stream().map(handoff -> handoff(brief, handoff)).toList();
    Set<Integer> used = plan.segments().stream().map(Segment::player).collect(Collectors.toSet());
    int players = used.stream().mapToInt(player -> price(brief, player)).sum();
    int idle =
        IntStream.range(0, brief.players().size())
            .filter(player -> !used.contains(player))
            .map(player -> idle(brief, player))
            .sum();
    long pairs = plan.turns().stream().filter(Turn::isHocket).count();
    int hockets = Math.toIntExact(pairs * brief.rules().weights().hocket());
    int total =
        players
            + idle
            + hockets
            + segments.stream().mapToInt(SegmentCost::total).sum()
            + handoffs.stream().mapToInt(HandoffCost::total).sum();
    return new Cost(total, players, idle, hockets, segments, handoffs);
  }

  /** What a player of a brief costs who is used. */
  public static int price(Brief brief, int player) {
    return brief.rules().weights().price(brief.players().get(player));
  }

  /** What a player of a brief costs who is not used. */
  public static int idle(Brief brief, int player) {
    boolean wanted = brief.players().get(player).isNamed() && PartTrial.isAble(brief, player);
    return wanted ? brief.rules().weights().idle() : 0;
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
    Weights weights = brief.rules().weights();
    return new SegmentCost(
        effort(brief, segment, demands).points(),
        shortPoints(brief.line(segment.relay()), segment.first(), segment.last(), weights),
        outside * weights.register());
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
    Player player = brief.players().get(segment.player());
    double breath =
        player.instrument().breath().map(lungs -> freshBreath(player, lungs, played)).orElse(0.0);
    return new Effort(fast, Strain.endMicropoints(tiredness, breath, weights));
  }

  /** The share of air spent at the end of what a player plays who came fresh. */
  private static double freshBreath(Player player, Breath lungs, Played played) {
    Line line = played.line();
    double spent = 0;
    for (int j = played.first(); j < played.last(); j++) {
      double use = Stint.useOfAir(player, line, j);
      long next = line.onsetMicros(j + 1);
      long end = Math.min(line.endMicros(j), next);
      spent = Breathing.blown(spent, (end - line.onsetMicros(j)) / 1e6, use, lungs);
      spent = Breathing.silent(spent, (next - end) / 1e6, use, lungs);
    }
    int last = played.last();
    double seconds = (line.endMicros(last) - line.onsetMicros(last)) / 1e6;
    return Breathing.blown(spent, seconds, Stint.useOfAir(player, line, last), lungs);
  }

  /**
   * What a turn costs that is shorter than a bar, or than two seconds where a bar lasts longer; up
   * to its landing note, or to the end of the sound where nobody enters on it.
   */
  public static int shortPoints(Line line, int first, int last, Weights weights) {
    long usual = Math.min(line.barMicros(first), USUAL_TURN_MICROS);
    return shortPoints(usual, length(line, first, last), weights);
  }

  /**
   * What a turn costs that is shorter than usual.
   *
   * @param usualMicros the smaller of a bar and two seconds
   */
  public static int shortPoints(long usualMicros, long micros, Weights weights) {
    long missing = usualMicros - micros;
    return missing <= 0
        ? 0
        : Math.toIntExact((2L * weights.shortTurn() * missing + usualMicros) / (2 * usualMicros));
  }

  /** How long a turn lasts that takes these strokes. */
  public static long length(Line line, int first, int last) {
    boolean ends = last == line.count() - 1 || line.restsBefore(last + 1);
    return (ends ? line.endMicros(last) : line.onsetMicros(last)) - line.onsetMicros(first);
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
        phrase(line, entry, landing, weights),
        beside * weights.overlap(),
        Pairing.worst(brief, handoff).blend(weights));
  }

  /** What it costs to hand over there, as phrases go. */
  public static int phrase(Line line, int entry, int landing, Weights weights) {
    int number = line.phrase(landing);
    int place =
        cutsSlur(line, entry) || cutsSlur(line, landing)
            ? WITHIN_SLUR
            : line.rank(landing) != Rank.BAR || number % 2 != 0
                ? ELSEWHERE
                : number % 4 == 0 ? OF_FOUR : OF_TWO;
    return weights.phrase().get(place);
  }

  /** Whether a slur comes from the stroke before and goes on to the next one. */
  public static boolean cutsSlur(Line line, int j) {
    return line.stroke(j).slurred() && line.stroke(j).slurContinues();
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
