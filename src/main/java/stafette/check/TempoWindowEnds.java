package stafette.check;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;

/** Both ends of the tempo window of a plan that holds, as factors of its tempo. */
record TempoWindowEnds(Plan plan, Demands demands) {
  private static final double SLOWEST_TRIED = 1e-3;
  private static final double FASTEST_TRIED = 1e3;

  /** 0 if the plan holds at the slowest tempo tried. */
  double slowestFactor() {
    double slowest = end(SLOWEST_TRIED);
    return slowest <= SLOWEST_TRIED ? 0 : slowest;
  }

  /** Infinite if the plan holds at the fastest tempo tried. */
  double fastestFactor() {
    double fastest = end(Math.min(FASTEST_TRIED, Math.max(1, highest())));
    return fastest >= FASTEST_TRIED ? Double.POSITIVE_INFINITY : fastest;
  }

  private double end(double bound) {
    double reached = bound;
    for (int player : Judge.players(plan).toArray()) {
      WholePart part = WholePart.of(plan, player, demands);
      reached =
          new TempoReach(part, new TirednessAndBreath(plan.brief().lines(), part)).reach(reached);
    }
    return reached;
  }

  private double highest() {
    DoubleStream rates = plan.segments().stream().mapToDouble(segment -> 1 / largestUse(segment));
    DoubleStream rests =
        Judge.players(plan)
            .mapToObj(player -> WholePart.of(plan, player, demands))
            .flatMapToDouble(this::byRest);
    DoubleStream pedals =
        plan.segments().stream()
            .map(segment -> SegmentRules.of(plan, segment, demands))
            .mapToDouble(rules -> rules.pedalledUpToFactor(1, FASTEST_TRIED));
    return Stream.of(rates, rests, pedals, DoubleStream.of(HocketRules.interlockUpToFactor(plan)))
        .flatMapToDouble(bounds -> bounds)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double largestUse(Segment segment) {
    Played played = demands.played(segment);
    return Math.max(
        SegmentRules.of(plan, segment, demands).worst().share(),
        ShortTurn.use(demands.of(segment), played.line(), played.first(), played.last()));
  }

  private DoubleStream byRest(WholePart part) {
    return PartRules.of(plan, part).restsBeforeEntries().stream()
        .filter(rest -> rest.neededMicros() > 0)
        .mapToDouble(rest -> rest.micros() / (double) rest.neededMicros());
  }
}
