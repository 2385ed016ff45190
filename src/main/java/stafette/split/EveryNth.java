package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.check.PartTrial;
import stafette.plan.Brief;
import stafette.plan.Segment;

/**
 * What it costs one player to take every n-th turn, with the technique for which it costs least.
 */
record EveryNth(int skill, int points) {
  /**
   * The cheapest technique, the first of equals; empty if the player can do it with none.
   *
   * @param from the player's first turn
   * @param every how many players take turns
   */
  static Optional<EveryNth> cheapest(
      Brief brief, PartTrial trial, int player, Turns turns, int from, int every) {
    Optional<EveryNth> best = Optional.empty();
    for (int skill = 0; skill < brief.players().get(player).skills().size(); skill++) {
      List<Segment> segments = new ArrayList<>();
      for (int turn = from; turn < turns.count(); turn += every) {
        segments.add(turns.segment(turn, player, skill));
      }
      OptionalInt points = trial.points(segments);
      if (points.isPresent() && best.map(one -> points.getAsInt() < one.points).orElse(true)) {
        best = Optional.of(new EveryNth(skill, points.getAsInt()));
      }
    }
    return best;
  }
}
