package stafette.split.rotate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.plan.Brief;
import stafette.split.LockedPlayers;

/**
 * Players by kind, and what those cost who take turns and those who don't. Orders of players are
 * sought by costs of 0 or more, so each player's price is raised by the same amount, and a fixed
 * one for so many players takes it back.
 */
final class RotationPrices {
  private final List<List<Integer>> kinds;
  private final List<Integer> prices;
  private final int raised;
  private final int allIdle;

  private RotationPrices(List<List<Integer>> kinds, List<Integer> saving, int allIdle) {
    this.kinds = List.copyOf(kinds);
    this.raised = saving.stream().mapToInt(points -> points).max().orElse(0);
    this.prices = saving.stream().map(points -> raised - points).toList();
    this.allIdle = allIdle;
  }

  /**
   * @param limited whether only some of the players may be used: then idle ones cost nothing
   */
  static RotationPrices of(Brief brief, boolean limited) {
    List<List<Integer>> kinds = kinds(brief);
    List<Integer> saving = new ArrayList<>();
    int allIdle = 0;
    for (List<Integer> kind : kinds) {
      int idle = limited ? 0 : Costing.idle(brief, kind.get(0));
      saving.add(idle - Costing.price(brief, kind.get(0)));
      allIdle += idle * kind.size();
    }
    return new RotationPrices(kinds, saving, allIdle);
  }

  /** Players who are alike, in the order listed; whom a lock names is like nobody else. */
  private static List<List<Integer>> kinds(Brief brief) {
    Set<Integer> named = LockedPlayers.players(brief.rules().locks());
    List<List<Integer>> kinds = new ArrayList<>();
    for (int i = 0; i < brief.players().size(); i++) {
      int player = i;
      kinds.stream()
          .filter(kind -> !named.contains(player) && !named.contains(kind.get(0)))
          .filter(kind -> brief.players().get(player).isLike(brief.players().get(kind.get(0))))
          .findFirst()
          .ifPresentOrElse(
              kind -> kind.add(player), () -> kinds.add(new ArrayList<>(List.of(player))));
    }
    return kinds;
  }

  List<List<Integer>> kinds() {
    return kinds;
  }

  int kindOf(int player) {
    return IntStream.range(0, kinds.size())
        .filter(kind -> kinds.get(kind).contains(player))
        .findFirst()
        .orElseThrow();
  }

  /** What a player of each kind costs who takes turns, raised; 0 or more. */
  List<Integer> ofKinds() {
    return prices;
  }

  /** What is paid beside {@link #ofKinds} where so many players take turns. */
  int fixed(int places) {
    return allIdle - raised * places;
  }

  /** What all players cost at least where so many take turns. */
  int least(int places) {
    int cheapest = prices.stream().mapToInt(points -> points).min().orElse(0);
    return fixed(places) + cheapest * places;
  }
}
