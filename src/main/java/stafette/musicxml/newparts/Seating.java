package stafette.musicxml.newparts;

import java.util.List;
import java.util.Optional;
import stafette.chairs.Chair;
import stafette.plan.Player;

/** Where players sit in a score. */
public interface Seating {
  /** Where a player's new part goes; the end of the score if empty. */
  Optional<PartPlace> place(Player player);

  /** The id of a part whose names those of a player's new part follow, but for the number. */
  default Optional<String> namesake(Player player) {
    return Optional.empty();
  }

  /** Who reads from a part, from above; none if nothing is known. */
  default List<Chair> chairs(String part) {
    return List.of();
  }
}
