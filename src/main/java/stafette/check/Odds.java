package stafette.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.limits.Assurance;
import stafette.limits.Demand;
import stafette.limits.Way;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;

/**
 * The odds that everybody manages. Peaks vary between players along the normal distribution of each
 * technique, sustained and moving rates and breath with them. For each player used, the odds are
 * the largest share of the population of whom everybody would manage the player's whole part, found
 * by bisection over {@link Assurance}, for every limit is monotone in it; a player who is good at
 * one technique is taken to be as good at the others, and rest before entries is the same for all.
 * What is not the population's figure is this player's own and does not vary. The odds of a plan
 * are the product, as if players were independent.
 */
final class Odds {
  private static final double BEST = 99.9999;
  private static final double WORST = 0.0001;
  private static final int STEPS = 30;

  private final Plan plan;
  private final Demands demands;
  private final double stretch;

  /**
   * @param stretch by how much all times of the score are stretched; below 1 is faster
   */
  Odds(Plan plan, Demands demands, double stretch) {
    this.plan = plan;
    this.demands = demands;
    this.stretch = stretch;
  }

  /** Of each player used, the share of the population who manage that part. */
  Shares shares() {
    return new Shares(Judge.players(plan).mapToDouble(this::of).boxed().toList());
  }

  /** Shares between 0 and 1. */
  record Shares(List<Double> each) {
    /** That all manage. */
    double ofAll() {
      return each.stream().reduce(1.0, (a, b) -> a * b);
    }

    /** Who manage the hardest part. */
    double ofHardest() {
      return each.stream().reduce(1.0, Math::min);
    }
  }

  private double of(int player) {
    if (manages(player, BEST)) {
      return 1;
    }
    if (!manages(player, WORST)) {
      return 0;
    }
    double planned = plan.brief().rules().assurance().percent();
    boolean asPlanned = manages(player, planned);
    double holds = asPlanned ? planned : WORST;
    double fails = asPlanned ? BEST : planned;
    for (int step = 0; step < STEPS; step++) {
      double middle = (holds + fails) / 2;
      if (manages(player, middle)) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return holds / 100;
  }

  private boolean manages(int player, double percent) {
    Player somebody =
        plan.brief()
            .players()
            .get(player)
            .at(plan.brief().rules().assurance(), new Assurance(percent));
    Map<Demand, Demand> known = new HashMap<>();
    List<Stint> stints = new ArrayList<>();
    for (Segment segment : plan.segmentsOf(player)) {
      Way way = somebody.ways().get(segment.way());
      Demand demand = known.computeIfAbsent(demands.of(segment), own -> own.with(way));
      Played played = demands.played(segment);
      SegmentRules rules = new SegmentRules(played, somebody, way, demand, segment);
      double joined = ShortTurn.use(demand, played.line(), played.first(), played.last());
      if (!Tolerance.within(Math.max(joined, rules.worst().share()) / stretch, 1)) {
        return false;
      }
      stints.add(Stint.of(somebody, demand, played, segment));
    }
    TirednessAndBreath spending =
        new TirednessAndBreath(plan.brief().lines(), WholePart.of(somebody, stints));
    return spending.tired(stretch).isEmpty() && spending.breathless(stretch).isEmpty();
  }
}
