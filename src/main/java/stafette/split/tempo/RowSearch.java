package stafette.split.tempo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import stafette.check.Costing;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.split.SplitResult;
import stafette.split.rotate.RotationOrCheapest;
import stafette.time.TempoMark;

/**
 * The cheapest plans of one brief for every number of players. Two searches settle most: the one
 * for the fewest players ({@link FewestPlayers}) is right for that number and proves that fewer are
 * too few; the one without a bound on players is right for all numbers from what its plan uses.
 * Numbers in between are searched one by one.
 */
final class RowSearch {
  private final Brief brief;
  private final FewestPlayers fewest;
  private final TempoCell all;
  private final Supplier<BooleanSupplier> stops;

  private RowSearch(
      Brief brief, FewestPlayers fewest, TempoCell all, Supplier<BooleanSupplier> stops) {
    this.brief = brief;
    this.fewest = fewest;
    this.all = all;
    this.stops = stops;
  }

  /**
   * @param stops when to stop, for each search
   */
  static TempoRow row(
      TempoMark mark, Brief brief, FewestPlayers fewest, Supplier<BooleanSupplier> stops) {
    TempoCell all = withoutBound(brief, fewest, stops);
    return new TempoRow(mark, new RowSearch(brief, fewest, all, stops).cells(), fewest.reasons());
  }

  /** Where all are needed, the plan of the fewest is the cheapest of all. */
  private static TempoCell withoutBound(
      Brief brief, FewestPlayers fewest, Supplier<BooleanSupplier> stops) {
    if (fewest.proven() && fewest.atLeast() >= brief.players().size()) {
      return new TempoCell(fewest.plan(), true);
    }
    return RotationOrCheapest.among(brief, brief.players().size(), stops.get())
        .match(
            best -> new TempoCell(Optional.of(best.plan()), true),
            none -> TempoCell.NONE,
            stopped -> new TempoCell(stopped.plan(), false));
  }

  private List<TempoCell> cells() {
    List<TempoCell> cells = new ArrayList<>();
    Optional<Plan> cheapest = Optional.empty();
    for (int players = 1; players <= brief.players().size(); players++) {
      TempoCell cell = cell(players, cheapest);
      cells.add(cell);
      cheapest = cell.plan();
    }
    return cells;
  }

  private TempoCell cell(int players, Optional<Plan> ofFewer) {
    if (players < fewest.atLeast() || (all.proven() && all.plan().isEmpty())) {
      return TempoCell.NONE;
    }
    Optional<Plan> few = fewest.plan().filter(plan -> fits(plan, players));
    Optional<Plan> many = all.plan().filter(plan -> fits(plan, players));
    if (all.proven() && many.isPresent()) {
      return new TempoCell(many, true);
    }
    if (fewest.proven() && few.isPresent() && players == fewest.atLeast()) {
      return new TempoCell(few, true);
    }
    Optional<Plan> known = cheaper(cheaper(ofFewer, few), many);
    return known.isEmpty() || players == brief.players().size()
        ? new TempoCell(known, false)
        : among(players, known);
  }

  private TempoCell among(int players, Optional<Plan> known) {
    SplitResult result = RotationOrCheapest.among(brief, players, stops.get());
    Optional<Plan> found =
        result.match(best -> Optional.of(best.plan()), none -> Optional.empty(), s -> s.plan());
    return new TempoCell(cheaper(known, found), !(result instanceof SplitResult.Stopped));
  }

  private static boolean fits(Plan plan, int players) {
    return TempoCell.playersUsed(plan) <= players;
  }

  /** The cheaper of two plans, the first of equals. */
  private static Optional<Plan> cheaper(Optional<Plan> one, Optional<Plan> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    return cost(other.get()) < cost(one.get()) ? other : one;
  }

  static int cost(Plan plan) {
    return Costing.of(plan).total();
  }
}
