package stafette.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import stafette.limits.Breath;

/** Between which tempi one player has strength and air enough for the whole part. */
final class TempoReach {
  /** How far beside such a bound it is surely passed, and surely not. */
  private static final double BESIDE = 1e-12;

  private final WholePart part;
  private final TirednessAndBreath rules;

  TempoReach(WholePart part, TirednessAndBreath rules) {
    this.part = part;
    this.rules = rules;
  }

  /** The last factor of the present tempo before the first failure on the way from 1. */
  double reach(double to) {
    TempoBoundSearch tiredness =
        new TempoBoundSearch(
            factor -> both().map(each -> PlayingSimulation.tiredness(each, 1 / factor)),
            factor -> rules.tired(1 / factor).isEmpty());
    double reached = tiredness.reach(1, to);
    Optional<Breath> lungs = part.player().instrument().breath();
    return lungs.isPresent() ? breathing(lungs.get(), reached) : reached;
  }

  private double breathing(Breath lungs, double to) {
    TempoBoundSearch air =
        new TempoBoundSearch(
            factor -> both().map(each -> PlayingSimulation.breath(each, lungs, 1 / factor)),
            factor -> rules.breathless(1 / factor).isEmpty());
    double from = 1;
    for (double stop : stops(lungs, to)) {
      double reached = air.reach(from, stop);
      if (reached != stop) {
        return reached;
      }
      from = stop;
    }
    return from;
  }

  /**
   * Both sides of every factor at which a silence becomes too short to breathe in, then the end.
   */
  private List<Double> stops(Breath lungs, double to) {
    boolean faster = to > 1;
    double[] sorted =
        both()
            .flatMap(each -> PlayingSimulation.Air.of(each, lungs).stream())
            .mapToDouble(air -> air.silence() / (lungs.catchSeconds() * (1 - Tolerance.SHARE)))
            .filter(factor -> faster ? factor >= 1 && factor < to : factor <= 1 && factor > to)
            .flatMap(factor -> DoubleStream.of(factor * (1 - BESIDE), factor * (1 + BESIDE)))
            .filter(factor -> faster ? factor > 1 && factor < to : factor < 1 && factor > to)
            .distinct()
            .map(factor -> faster ? factor : -factor)
            .sorted()
            .map(Math::abs)
            .toArray();
    return DoubleStream.concat(DoubleStream.of(sorted), DoubleStream.of(to)).boxed().toList();
  }

  private Stream<WholePart> both() {
    return Stream.of(part, part.givenOnly());
  }
}
