package stafette.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import stafette.limits.Breath;
import stafette.limits.Demand;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.TempoMark;

/**
 * The tempi round the present one at which a plan holds: the connected interval, both ends
 * included. All times of the line and of what the score gives scale with the tempo; getting ready,
 * breathing and recovery don't, so both ends can come from them.
 *
 * <p>Rates and rests give their bounds in closed form. Tiredness only falls with slower times, so
 * its bound is one point, found to the machine's precision. Spent air is proportional to the times
 * as long as no silence crosses the least one in which air can be taken; those crossings are walked
 * through one by one.
 *
 * @param slowestFactor the slowest tempo as a share of the present one; 0 if none is too slow
 * @param fastestFactor the fastest as a multiple of the present one
 * @param slowestText the slowest as a mark in the unit in force at the line's start, rounded inward
 * @param fastestText the fastest likewise
 * @param slowestLimit what stands in the way of a slower one
 * @param fastestLimit what stands in the way of a faster one
 */
public record TempoWindow(
    double slowestFactor,
    double fastestFactor,
    String slowestText,
    String fastestText,
    String slowestLimit,
    String fastestLimit) {
  /** The window of a plan; empty if the plan doesn't hold at the present tempo. */
  public static Optional<TempoWindow> of(Plan plan) {
    Demands demands = new Demands(plan.brief());
    if (!Judge.findings(plan, demands, 1).isEmpty()) {
      return Optional.empty();
    }
    Bounds bounds = new Bounds(plan, demands);
    Bound least = bounds.least();
    Optional<Bound> most = bounds.most();
    double slowest = most.map(bound -> 1 / bound.stretch).orElse(0.0);
    double fastest = 1 / least.stretch;
    TempoMark now = plan.line().tempo().at(plan.line().stroke(0).onset());
    int decimals = decimals(now, slowest, fastest);
    return Optional.of(
        new TempoWindow(
            slowest,
            fastest,
            slowest > 0 ? text(now, slowest, RoundingMode.CEILING, decimals) : "any slower tempo",
            text(now, fastest, RoundingMode.FLOOR, decimals),
            most.map(Bound::what).orElse("nothing"),
            least.what));
  }

  private static String text(TempoMark now, double factor, RoundingMode rounding, int decimals) {
    return now.times(Wording.exactly(factor)).toString(rounding, decimals);
  }

  /** Whole beats where the window holds one, else two decimals. */
  private static int decimals(TempoMark now, double slowest, double fastest) {
    double beats = now.perMinute().toDouble();
    return Math.ceil(beats * slowest) <= Math.floor(beats * fastest) ? 0 : 2;
  }

  /**
   * One end.
   *
   * @param stretch of the times; the last that holds
   * @param what stands in the way beyond
   */
  private record Bound(double stretch, String what) {}

  /** What bounds the stretch of times on either side. */
  private static final class Bounds {
    private final Plan plan;
    private final Line line;
    private final List<Bound> least = new ArrayList<>();
    private final List<Bound> most = new ArrayList<>();

    Bounds(Plan plan, Demands demands) {
      this.plan = plan;
      this.line = plan.line();
      for (Segment segment : plan.segments()) {
        rates(segment, SegmentRules.of(plan, segment, demands).worst());
        lowest(segment);
      }
      Judge.players(plan)
          .mapToObj(player -> WholePart.of(plan, player, demands))
          .forEach(this::part);
    }

    Bound least() {
      return least.stream().max(Comparator.comparingDouble(Bound::stretch)).orElseThrow();
    }

    Optional<Bound> most() {
      return most.stream().min(Comparator.comparingDouble(Bound::stretch));
    }

    private void rates(Segment segment, SegmentRules.Use worst) {
      String name = plan.player(segment).name();
      String technique = plan.skill(segment).technique().name();
      String where = line.placeOf(worst.stroke()).at().toString();
      least.add(
          new Bound(
              Math.max(Stretches.LEAST, worst.share()), technique + " of " + name + ", " + where));
    }

    private void lowest(Segment segment) {
      double lowest = plan.skill(segment).technique().lowestPerSecond();
      if (lowest > 0) {
        most.add(
            new Bound(
                Demand.usualRatePerSecond(line) / lowest,
                plan.skill(segment).technique().name()
                    + " of "
                    + plan.player(segment).name()
                    + " doesn't go slower"));
      }
    }

    private void part(WholePart part) {
      PartRules rules = PartRules.of(plan, part);
      String name = part.player().name();
      double tired = Stretches.leastFor(stretch -> rules.tired(stretch).isEmpty());
      least.add(
          new Bound(
              tired,
              "tiredness of " + name + where(part.player(), rules.tired(tired * (1 - 1e-6)))));
      double ready = plan.brief().rules().readyMicros(part.player());
      for (PartRules.Rest rest : rules.restsBeforeEntries()) {
        if (ready > 0) {
          String entry =
              line.placeOf(rest.entering().segment().orElseThrow().first()).at().toString();
          least.add(new Bound(ready / rest.micros(), "rest of " + name + " before " + entry));
        }
      }
      part.player()
          .instrument()
          .breath()
          .ifPresent(
              breath -> {
                DoublePredicate breathes = stretch -> rules.breathless(stretch).isEmpty();
                slower(part, breath, breathes)
                    .ifPresent(
                        stretch ->
                            most.add(
                                new Bound(
                                    stretch,
                                    "breath of "
                                        + name
                                        + where(
                                            part.player(),
                                            rules.breathless(stretch * (1 + 1e-6))))));
                faster(part, breath, breathes)
                    .ifPresent(
                        stretch ->
                            least.add(
                                new Bound(
                                    stretch,
                                    "no time for "
                                        + name
                                        + " to breathe"
                                        + where(
                                            part.player(),
                                            rules.breathless(stretch * (1 - 1e-6))))));
              });
    }

    private String where(Player player, Optional<PartRules.Excess> excess) {
      return excess.map(e -> ", " + Whereabouts.of(player, line, e.micros()).at()).orElse("");
    }

    /** Walks to slower times until the air no longer lasts. */
    private static Optional<Double> slower(
        WholePart part, Breath breath, DoublePredicate breathes) {
      double from = 1;
      double[] crossings = Stretches.breaths(part, breath).filter(s -> s > 1).toArray();
      for (int i = 0; i <= crossings.length; i++) {
        double to = i < crossings.length ? crossings[i] * (1 - 1e-8) : Stretches.MOST;
        if (to > from && !breathes.test(to)) {
          return Optional.of(Stretches.between(from, to, breathes));
        }
        from = i < crossings.length ? crossings[i] : to;
      }
      return Optional.empty();
    }

    /**
     * Walks to faster times until a silence becomes too short to breathe in, and that one was
     * needed.
     */
    private static Optional<Double> faster(
        WholePart part, Breath breath, DoublePredicate breathes) {
      double[] crossings = Stretches.breaths(part, breath).filter(s -> s <= 1).toArray();
      for (int i = crossings.length - 1; i >= 0; i--) {
        if (!breathes.test(crossings[i] * (1 - 1e-8))) {
          return Optional.of(crossings[i]);
        }
      }
      return Optional.empty();
    }
  }
}
