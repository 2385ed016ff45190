package stafette.check;

import java.util.stream.DoubleStream;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;

/** Both ends of the tempo window of a plan that holds, as factors of its tempo. */
record TempoWindowEnds(Plan plan, Demands demands) {
  private static final double SLOWEST_TRIED = 1e-3;
  private static final double FASTEST_TRIED = 1e3;
  private static final int PEDAL_STEPS = 40;

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
    DoubleStream pedals = plan.segments().stream().mapToDouble(this::pedalledUpTo);
    return DoubleStream.concat(DoubleStream.concat(rates, rests), pedals)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Up to which factor the pedals of a harp are in time, by bisection; infinite for others. */
  private double pedalledUpTo(Segment segment) {
    SegmentRules rules = SegmentRules.of(plan, segment, demands);
    int last = demands.played(segment).last();
    double holds = 1;
    double fails = FASTEST_TRIED;
    if (rules.pedalledUpTo(1 / fails) >= last) {
      return Double.POSITIVE_INFINITY;
    }
    for (int step = 0; step < PEDAL_STEPS; step++) {
      double middle = Math.sqrt(holds * fails);
      boolean inTime = rules.pedalledUpTo(1 / middle) >= last;
      holds = inTime ? middle : holds;
      fails = inTime ? fails : middle;
    }
    return holds;
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
