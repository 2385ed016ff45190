package stafette.split.tempo;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.plan.Plan;
import stafette.split.Reason;
import stafette.time.TempoMark;

/**
 * One tempo with every number of players.
 *
 * @param mark the tempo at the line's start
 * @param cells for one player, for two, and so on up to all of the brief; each plan costs no more
 *     than the one before
 * @param reasons why all together have no plan, if that is proven
 */
public record TempoRow(TempoMark mark, List<TempoCell> cells, List<Reason> reasons) {
  public TempoRow {
    cells = List.copyOf(cells);
    reasons = List.copyOf(reasons);
  }

  /** What at most so many players can do. */
  public TempoCell cell(int players) {
    return cells.get(players - 1);
  }

  /** The cheapest plan of all players together. */
  public Optional<Plan> plan() {
    return cell(cells.size()).plan();
  }

  /** The least number of players with a plan. */
  public OptionalInt fewest() {
    return IntStream.rangeClosed(1, cells.size())
        .filter(players -> cell(players).plan().isPresent())
        .findFirst();
  }

  /** Whether fewer players than {@link #fewest} are proven to be too few. */
  public boolean fewestIsProven() {
    return IntStream.range(1, fewest().orElse(cells.size() + 1))
        .allMatch(players -> cell(players).proven());
  }
}
