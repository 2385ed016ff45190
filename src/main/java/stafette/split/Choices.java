package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Player;

/**
 * The cheapest plan of at most so many players, by trying every choice of them; of players who are
 * alike the first listed stand for all. Who isn't chosen stays in the brief without a technique, so
 * that plans mean the same players.
 */
final class Choices {
  private final Brief brief;
  private final int most;
  private final BooleanSupplier stop;
  private final Set<Integer> needed;
  private Plan best;
  private boolean complete = true;

  /**
   * @param known a plan of at most that many players
   */
  Choices(Brief brief, int most, Plan known, BooleanSupplier stop) {
    this.brief = brief;
    this.most = most;
    this.best = known;
    this.stop = stop;
    this.needed =
        brief.rules().locks().stream()
            .flatMapToInt(lock -> Lock.playing(lock).stream())
            .boxed()
            .collect(Collectors.toSet());
  }

  TempoCell cheapest() {
    choose(0, List.of());
    return new TempoCell(Optional.of(best), complete);
  }

  private void choose(int from, List<Integer> chosen) {
    if (chosen.size() == most) {
      if (chosen.containsAll(needed)) {
        tryWith(chosen);
      }
      return;
    }
    int players = brief.players().size();
    for (int next = from; next <= players - (most - chosen.size()) && complete; next++) {
      if (!skipsOneAlike(chosen, next)) {
        List<Integer> more = new ArrayList<>(chosen);
        more.add(next);
        choose(next + 1, more);
      }
    }
  }

  /** Locks tell players apart who are alike otherwise. */
  private boolean skipsOneAlike(List<Integer> chosen, int next) {
    return brief.rules().locks().isEmpty()
        && IntStream.range(0, next)
            .anyMatch(
                other ->
                    !chosen.contains(other)
                        && brief.players().get(other).isLike(brief.players().get(next)));
  }

  private void tryWith(List<Integer> chosen) {
    if (stop.getAsBoolean()) {
      complete = false;
      return;
    }
    SplitResult result = Splitter.split(only(chosen), stop);
    complete = result.isBest() || result.isNone();
    result
        .found()
        .map(plan -> new Plan(brief, plan.segments()))
        .filter(plan -> RowSearch.cost(plan) < RowSearch.cost(best))
        .ifPresent(plan -> best = plan);
  }

  private Brief only(List<Integer> chosen) {
    List<Player> players = new ArrayList<>();
    for (int i = 0; i < brief.players().size(); i++) {
      Player player = brief.players().get(i);
      players.add(
          chosen.contains(i)
              ? player
              : new Player(
                  player.name(), player.instrument(), player.part(), List.of(), player.busy()));
    }
    return brief.with(players);
  }
}
