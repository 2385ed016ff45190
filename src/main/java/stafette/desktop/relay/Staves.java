package stafette.desktop.relay;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.picture.Box;
import stafette.picture.RelayPieces;
import stafette.plan.Plan;
import stafette.time.Bar;

/** How much room the notes of a plan's players take on paper; worked out when first asked for. */
final class Staves {
  private final Plan plan;
  private final RelayPieces pieces;
  private Optional<List<Box>> reaches = Optional.empty();
  private Optional<Double> header = Optional.empty();

  Staves(Plan plan, RelayPieces pieces) {
    this.plan = plan;
    this.pieces = pieces;
  }

  private List<Box> reaches() {
    List<Box> known = reaches.orElseGet(() -> players().mapToObj(pieces::noteReach).toList());
    reaches = Optional.of(known);
    return known;
  }

  private IntStream players() {
    return IntStream.range(0, plan.brief().players().size());
  }

  /** How high the highest music of a player is. */
  double ink() {
    return reaches().stream().mapToDouble(Box::height).max().orElseThrow();
  }

  /** From the middle of a player's ink up to the top line of the staff; negative if below. */
  double rise(int player) {
    Box reach = reaches().get(player);
    return (reach.top() + reach.bottom()) / 2;
  }

  /** How wide the widest clef with its key signature is. */
  double header() {
    double known = header.orElseGet(this::widest);
    header = Optional.of(known);
    return known;
  }

  private double widest() {
    double widest = 0;
    for (Bar bar : pieces.bars()) {
      widest =
          Math.max(
              widest,
              players().mapToDouble(player -> pieces.clefAndKeyWidth(player, bar)).max().orElse(0));
    }
    return widest;
  }
}
