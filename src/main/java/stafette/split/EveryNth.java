package stafette.split;

import java.util.Optional;
import stafette.score.Line;

/**
 * What it costs one player to take every n-th turn with one technique, if the player can: exact,
 * with all that is carried over from turn to turn and through what the score gives.
 */
record EveryNth(int skill, int points) {
  /**
   * The cheapest technique, the first of equals.
   *
   * @param from the player's first turn
   * @param every how many players take turns
   */
  static Optional<EveryNth> cheapest(PlayerKind kind, Line line, Turns turns, int from, int every) {
    Optional<EveryNth> best = Optional.empty();
    for (int skill = 0; skill < kind.tables().size(); skill++) {
      int most = best.map(EveryNth::points).orElse(Relaxation.NEVER);
      int points = points(kind, kind.tables().get(skill), line, turns, from, every);
      if (points < most) {
        best = Optional.of(new EveryNth(skill, points));
      }
    }
    return best;
  }

  private static int points(
      PlayerKind kind, SegmentTable table, Line line, Turns turns, int from, int every) {
    State state = State.RESTED;
    long since = Long.MIN_VALUE;
    int points = 0;
    for (int turn = from; turn < turns.count(); turn += every) {
      int first = turns.first(turn);
      int last = turns.last(turn);
      long onset = line.onsetMicros(first);
      Optional<State> brings = kind.throughGiven(state, since, onset);
      if (brings.isEmpty() || kind.freeFrom(brings.get()) > onset) {
        return Relaxation.NEVER;
      }
      long tiredness = kind.tirednessEntering(brings.get(), table, first);
      long air = kind.airEntering(brings.get(), onset);
      Row row = table.row(first);
      if (row.last() < last || tiredness > Shares.WHOLE || row.reach(tiredness, air) < last) {
        return Relaxation.NEVER;
      }
      points += row.points(last);
      state = kind.after(table, row, last, tiredness, air);
      since = onset;
    }
    return kind.throughGiven(state, since, Long.MAX_VALUE).isPresent() ? points : Relaxation.NEVER;
  }
}
