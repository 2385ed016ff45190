package stafette.desktop.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.ask.PlayerWish;
import stafette.limits.TypedNames;
import stafette.words.Refusal;

/** Lists of players with one more, one less, or in another order. */
final class PlayerList {
  private PlayerList() {}

  /** With the players for whom a name stands, in place of those of their names. */
  static List<PlayerWish> with(List<PlayerWish> players, String name, Optional<String> instrument)
      throws Refusal {
    List<PlayerWish> more = players;
    for (PlayerWish wish : new PlayerWish(name, instrument).players()) {
      more = new ArrayList<>(without(more, wish.name()));
      more.add(wish);
    }
    return more;
  }

  static List<PlayerWish> without(List<PlayerWish> players, String name) {
    return players.stream().filter(wish -> !TypedNames.same(wish.name(), name)).toList();
  }

  /** With a player so many places further down; further up if negative. */
  static List<PlayerWish> moved(List<PlayerWish> players, String name, int places) {
    List<PlayerWish> moved = new ArrayList<>(players);
    for (int i = 0; i < players.size(); i++) {
      if (TypedNames.same(players.get(i).name(), name)) {
        PlayerWish wish = moved.remove(i);
        moved.add(Math.max(0, Math.min(moved.size(), i + places)), wish);
      }
    }
    return moved;
  }
}
