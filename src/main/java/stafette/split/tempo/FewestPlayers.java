package stafette.split.tempo;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Weights;
import stafette.split.Reason;
import stafette.split.rotate.RotationOrCheapest;

/**
 * How few of a brief's players are enough: the cheapest plan where one player more costs more than
 * anything else. One search answers for every number of players.
 *
 * @param atLeast fewer players can't do it, proven; more than there are if nobody can
 * @param plan a plan, with as few players as were found to be enough
 * @param proven whether no plan uses fewer players, and none with as few is cheaper; without a plan
 *     whether none exists
 * @param reasons why there is no plan, if that is proven
 */
record FewestPlayers(int atLeast, Optional<Plan> plan, boolean proven, List<Reason> reasons) {
  /** Beyond all that handoffs and strain add up to; the search bears 2<sup>28</sup> points. */
  private static final int PRICE = 1_000_000;

  private static final int MOST_POINTS = 1 << 27;

  /** Whether so many players are enough. */
  enum Fewest {
    YES,
    NO,
    UNKNOWN
  }

  static FewestPlayers of(Brief brief, BooleanSupplier stop) {
    int players = brief.players().size();
    int price = Math.min(PRICE, MOST_POINTS / players);
    return RotationOrCheapest.among(priced(brief, price), players, stop)
        .match(
            best -> found(new Plan(brief, best.plan().segments())),
            none -> new FewestPlayers(players + 1, Optional.empty(), true, none.reasons()),
            stopped ->
                new FewestPlayers(
                    Math.max(1, Math.min(players, stopped.bound() / price)),
                    stopped.plan().map(plan -> new Plan(brief, plan.segments())),
                    false,
                    List.of()));
  }

  private static FewestPlayers found(Plan plan) {
    return new FewestPlayers(TempoCell.playersUsed(plan), Optional.of(plan), true, List.of());
  }

  private static Brief priced(Brief brief, int points) {
    Weights weights = brief.rules().weights();
    return brief.with(brief.rules().with(weights.withPlayers(weights.player(), points, 0)));
  }

  Fewest answer(int players) {
    if (plan.filter(p -> TempoCell.playersUsed(p) <= players).isPresent()) {
      return Fewest.YES;
    }
    return players < atLeast ? Fewest.NO : Fewest.UNKNOWN;
  }
}
