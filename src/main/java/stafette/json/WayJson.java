package stafette.json;

import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.limits.Way;
import stafette.plan.Player;

/** In which of a player's ways a stretch is taken. */
enum WayJson {
  PLAIN,
  TWINS;

  static WayJson of(Way way) {
    return way.twinStrings() ? TWINS : PLAIN;
  }

  /** Which of a player's ways it is; empty if the player has none such. */
  OptionalInt of(Player player) {
    return IntStream.range(0, player.ways().size())
        .filter(index -> of(player.ways().get(index)) == this)
        .findFirst();
  }
}
