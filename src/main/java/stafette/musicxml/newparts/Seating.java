package stafette.musicxml.newparts;

import java.util.List;
import java.util.Optional;
import stafette.chairs.Chair;
import stafette.plan.Player;

/** Where players sit in a score. */
public interface Seating {
  /** The id of the part of its family after which a player's new part goes, in its bracket. */
  public Optional<String> neighbour(Player player);

  /**
   * Where a new part goes that has no neighbour above; the end of the score if empty.
   *
   * @param part the id of the part before which it goes
   * @param isOfFamily whether it goes into the bracket of that part
   */
  public record PartBelow(String part, boolean isOfFamily) {}

  /** The part above which a player's new part goes, where no neighbour stands above it. */
  public default Optional<PartBelow> below(Player player) {
    return Optional.empty();
  }

  /** The place of a player's instrument from the top of a score; new parts stand in this order. */
  public default int rank(Player player) {
    return 0;
  }

  /** Who reads from a part, from above; none if nothing is known. */
  public default List<Chair> chairs(String part) {
    return List.of();
  }
}
