package stafette.check;

import java.util.Optional;
import java.util.stream.Stream;
import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.words.Sentence;

/**
 * Turns of fewer strokes than a burst takes in are no way round a limit: their gaps together must
 * leave all the time that their strokes need. Else players who are too slow for a line could still
 * share it out in twos and threes, which nobody can join. What stands between rests is joined to
 * nothing. A rule of this planning model.
 */
public final class ShortTurn {
  private static final int STROKES = Burst.MOST_GAPS + 1;

  private ShortTurn() {}

  /**
   * What share of the time from the first stroke of each chain to its last the strokes need; 0 for
   * turns that are no shorter than a burst.
   */
  public static double use(Demand demand, Line line, int first, int last) {
    boolean joins =
        (first > 0 && !line.restsBefore(first))
            || (last < line.count() - 1 && !line.restsBefore(last + 1));
    return last - first + 1 >= STROKES || !joins
        ? 0
        : Stream.of(Burst.values())
            .mapToDouble(burst -> burst.ofWhole(demand, line, first, last))
            .max()
            .orElse(0);
  }

  static Optional<Finding> finding(Player player, Demand demand, Played played, double stretch) {
    Line line = played.line();
    double share = use(demand, line, played.first(), played.last()) / stretch;
    if (Tolerance.within(share, 1)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.at(
            Finding.FindingKind.TURN,
            Whereabouts.of(player, line, played.first()),
            Sentence.of(
                "a turn of {0} at this speed can't be joined in time; give it more notes, or to a"
                    + " faster player",
                Wording.notes(played.strokes()))));
  }
}
