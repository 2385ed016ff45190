package stafette.check.alone;

import java.util.List;
import java.util.Optional;
import stafette.check.Judge;
import stafette.check.SegmentReport;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;

/**
 * A background part: what one player keeps of a line that others play.
 *
 * @param whole the line
 * @param player who keeps some of it
 * @param stretches of the whole line, one after the other, neighbours with different patterns
 * @param kept what is left, as a plan for this player alone, with a segment from each given passage
 *     of its part to the next; empty if nothing is
 */
public record ThinnedPart(
    Line whole, Player player, List<ThinnedStretch> stretches, Optional<Plan> kept) {
  public ThinnedPart {
    stretches = List.copyOf(stretches);
  }

  /**
   * A stretch with one pattern.
   *
   * @param first number of its first stroke in the whole line
   * @param last number of its last, included
   * @param pattern what is left of it
   * @param kept how many strokes that is
   */
  public record ThinnedStretch(int first, int last, Thinning pattern, int kept) {
    public int strokes() {
      return last - first + 1;
    }
  }

  /** How many strokes are kept in all. */
  public int strokes() {
    return stretches.stream().mapToInt(ThinnedStretch::kept).sum();
  }

  /** What another player who is like this one keeps. */
  public ThinnedPart by(Player other) {
    return new ThinnedPart(
        whole,
        other,
        stretches,
        kept.map(
            plan ->
                new Plan(
                    new Brief(plan.line(), List.of(other), plan.brief().rules()),
                    plan.segments())));
  }

  /** How hard what is kept is; one report for each segment. */
  public List<SegmentReport> effort() {
    return kept.map(Judge::effort).orElse(List.of());
  }
}
