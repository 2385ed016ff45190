package stafette.split.rotate;

import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.split.Workbench;

/**
 * The plan that is wanted: a regular rotation where these are favoured; else the cheapest of all,
 * or a regular rotation that costs hardly more ({@link NearlyCheapest}). Of plans that differ only
 * in who of several like players takes a turn, that in which whoever has rested longest does
 * ({@link LongestRested}).
 */
public final class RotationOrCheapest {
  private RotationOrCheapest() {}

  /**
   * Searches.
   *
   * @param stop asked often; once it says yes, the best found so far is given back with a bound
   */
  public static SplitResult of(Brief brief, BooleanSupplier stop) {
    return of(brief, new Workbench(), stop, progress -> {});
  }

  /**
   * Searches with what earlier searches for the line have worked out.
   *
   * @param stop asked often; once it says yes, the best found so far is given back with a bound
   * @param progress told whenever a better plan or a higher bound is known
   */
  public static SplitResult of(
      Brief brief,
      Workbench workbench,
      BooleanSupplier stop,
      Consumer<Splitter.Progress> progress) {
    if (isRegular(brief)) {
      return RegularSearch.best(brief, brief.players().size(), stop, progress);
    }
    SplitResult cheapest = Splitter.split(brief, workbench, stop, progress);
    if (stop.getAsBoolean()) {
      return cheapest;
    }
    SplitResult rested = LongestRested.first(cheapest);
    if (!rested.found().equals(cheapest.found())) {
      OptionalInt cost =
          rested.match(
              best -> OptionalInt.of(best.cost()),
              none -> OptionalInt.empty(),
              SplitResult.Stopped::cost);
      progress.accept(new Splitter.Progress(cost, rested.leastCost().orElse(0), rested.found()));
    }
    return NearlyCheapest.orCheapest(brief, rested, stop);
  }

  /** The cheapest plan among those that use at most so many of the players. */
  public static SplitResult among(Brief brief, int mostPlayers, BooleanSupplier stop) {
    return isRegular(brief)
        ? RegularSearch.best(brief, mostPlayers, stop, progress -> {})
        : Splitter.among(brief, mostPlayers, stop);
  }

  private static boolean isRegular(Brief brief) {
    return brief.rules().favour() == Favour.REGULAR;
  }
}
