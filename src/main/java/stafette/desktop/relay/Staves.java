package stafette.desktop.relay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.picture.ink.Box;
import stafette.picture.ribbon.RelayPieces;
import stafette.plan.Plan;
import stafette.time.Bar;

/**
 * How much room the notes of a plan's players take on paper; worked out when first asked for, bar
 * by bar. What was worked out for a plan serves the next one too, where bars stay as they were.
 */
final class Staves {
  /** Of somebody who plays nothing. */
  private static final Box EMPTY = new Box(0, 0, 0, 0);

  private final Plan plan;
  private final RelayPieces pieces;
  private final Map<RelayPieces.BarOfNotes, Box> before;
  private final Map<RelayPieces.BarOfNotes, Box> known = new HashMap<>();
  private Optional<List<Box>> reaches = Optional.empty();
  private Optional<Double> header = Optional.empty();

  private Staves(Plan plan, RelayPieces pieces, Map<RelayPieces.BarOfNotes, Box> before) {
    this.plan = plan;
    this.pieces = pieces;
    this.before = before;
  }

  Staves(Plan plan, RelayPieces pieces) {
    this(plan, pieces, Map.of());
  }

  /** Staves that remember what another plan needed. */
  Staves after(Staves other) {
    return new Staves(plan, pieces, other.known.isEmpty() ? other.before : other.known);
  }

  private List<Box> reaches() {
    List<Box> found = reaches.orElseGet(() -> players().mapToObj(this::reach).toList());
    reaches = Optional.of(found);
    return found;
  }

  private Box reach(int player) {
    return pieces.barsOfNotes(player).stream().map(this::reach).reduce(Box::with).orElse(EMPTY);
  }

  private Box reach(RelayPieces.BarOfNotes bar) {
    return known.computeIfAbsent(
        bar, music -> Optional.ofNullable(before.get(music)).orElseGet(() -> pieces.reach(music)));
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
