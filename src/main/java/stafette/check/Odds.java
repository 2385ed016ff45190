package stafette.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.Skill;

/**
 * The odds that everybody manages. Peaks vary between players along the normal distribution of each
 * technique, and sustained and moving rates with them. For each player used, the odds are the
 * largest share of the population of whom everybody would manage the player's whole part (peak,
 * moving and tiredness; rest and breath are the same for all), found by bisection over {@link
 * Assurance}; a player who is good at one technique is taken to be as good at the others. A skill
 * whose figure is not that of the population is this player's own and does not vary. The odds of a
 * plan are the product, as if players were independent.
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

  double ofAll() {
    return plan.segments().stream()
        .map(Segment::player)
        .distinct()
        .mapToDouble(player -> of(WholePart.of(plan, player, demands)))
        .reduce(1, (a, b) -> a * b);
  }

  private double of(WholePart part) {
    Map<Skill, Double> uses = uses(part);
    if (manages(part, uses, BEST)) {
      return 1;
    }
    double holds = WORST;
    double fails = BEST;
    if (!manages(part, uses, holds)) {
      return 0;
    }
    for (int step = 0; step < STEPS; step++) {
      double middle = (holds + fails) / 2;
      if (manages(part, uses, middle)) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return holds / 100;
  }

  private Map<Skill, Double> uses(WholePart part) {
    Map<Skill, Double> uses = new HashMap<>();
    part.ofPlan()
        .map(stint -> stint.segment().orElseThrow())
        .forEach(
            segment ->
                uses.merge(
                    plan.skill(segment),
                    SegmentRules.of(plan, segment, demands).worst().share() / stretch,
                    Math::max));
    return uses;
  }

  private boolean manages(WholePart part, Map<Skill, Double> uses, double percent) {
    Assurance assurance = new Assurance(percent);
    boolean fast =
        uses.entrySet().stream()
            .allMatch(
                use -> {
                  Skill skill = use.getKey();
                  double peak = skill.capability().peakMilli();
                  return Tolerance.within(
                      use.getValue() * peak / at(skill, assurance).peakMilli(), 1);
                });
    return fast
        && new TirednessAndBreath(plan.brief().lines(), at(part, assurance))
            .tired(stretch)
            .isEmpty();
  }

  private WholePart at(WholePart part, Assurance assurance) {
    List<Stint> stints = new ArrayList<>();
    for (Stint stint : part.stints()) {
      stints.add(stint.skill().map(skill -> stint.with(at(skill, assurance))).orElse(stint));
    }
    return new WholePart(part.player(), stints);
  }

  private Capability at(Skill skill, Assurance assurance) {
    boolean ofPopulation =
        skill.technique().limit().at(plan.brief().rules().assurance()).equals(skill.capability());
    return ofPopulation ? skill.technique().limit().at(assurance) : skill.capability();
  }
}
