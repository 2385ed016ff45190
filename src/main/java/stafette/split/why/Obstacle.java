package stafette.split.why;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.score.Line;

/** What kind of limit leaves a brief without a plan, so far as it says what would help. */
public enum Obstacle {
  /** Somewhere nobody who reaches the notes makes them fast enough, even fresh: no relay helps. */
  RATE,
  /** Each note can be made, but nobody is fresh, or has breath, for all of them. */
  SPENT,
  /** Rest, range, other notes to play, pedals, locks or overlaps. */
  OTHER;

  /**
   * The obstacle in a brief that has no plan.
   *
   * @param stop asked often; ends the search if it says yes, and then it is {@link #OTHER}
   */
  public static Obstacle of(Brief brief, BooleanSupplier stop) {
    if (brief.lines().stream().distinct().anyMatch(line -> isTooFast(brief.players(), line))) {
      return RATE;
    }
    Brief tireless = Constraint.TIREDNESS.thoughtAwayIn(Constraint.BREATH.thoughtAwayIn(brief));
    return AnyPlan.of(tireless, stop).plan().isPresent() ? SPENT : OTHER;
  }

  private static boolean isTooFast(List<Player> players, Line line) {
    boolean[] reached = new boolean[line.count()];
    boolean[] made = new boolean[line.count()];
    for (Player player : players) {
      boolean[] own = makes(player, line);
      for (int j = 0; j < line.count(); j++) {
        reached[j] |= reaches(player, line, j);
        made[j] |= own[j];
      }
    }
    return IntStream.range(0, line.count()).anyMatch(j -> reached[j] && !made[j]);
  }

  /** Whether a player makes each note of a line that is in range fast enough while fresh. */
  public static boolean isFastEnough(Player player, Line line) {
    boolean[] made = makes(player, line);
    return IntStream.range(0, line.count()).allMatch(j -> made[j] || !reaches(player, line, j));
  }

  private static boolean reaches(Player player, Line line, int j) {
    return line.stroke(j).tones().stream().allMatch(player.instrument()::reaches);
  }

  /** For each stroke whether the player reaches it and, already playing, makes it in time. */
  private static boolean[] makes(Player player, Line line) {
    boolean[] made = new boolean[line.count()];
    player.ways().stream()
        .map(way -> Demand.of(player.instrument(), way, line))
        .forEach(
            demand -> {
              for (int j = 0; j < made.length; j++) {
                made[j] |=
                    reaches(player, line, j)
                        && demand.covered(j)
                        && Burst.STROKES.holds(demand, line, 0, j)
                        && Burst.NOTES.holds(demand, line, 0, j);
              }
            });
    return made;
  }
}
