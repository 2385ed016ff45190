package stafette.plan;

import java.util.List;
import stafette.score.Line;

/**
 * What is asked: this line, split among these players, under these rules.
 *
 * @param players the first ones preferred where costs are equal; at least one, names unlike
 */
public record Brief(Line line, List<Player> players, Rules rules) {
  /**
   * @throws IllegalArgumentException if there is no player, or two have the same name
   */
  public Brief {
    players = List.copyOf(players);
    if (players.isEmpty()
        || players.stream().map(Player::name).distinct().count() < players.size()) {
      throw new IllegalArgumentException(
          "a brief needs players with different names: "
              + players.stream().map(Player::name).toList());
    }
  }
}
