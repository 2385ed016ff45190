package stafette.split;

import java.util.List;
import java.util.stream.Stream;
import stafette.check.Costing;
import stafette.limits.Instrument;
import stafette.plan.OverlapRule;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * Where a segment may begin when another one ends with a given stroke, and what the handoff costs.
 */
final class Handoffs {
  private final Line line;
  private final Weights weights;
  private final LockedLeeway keeping;
  private final int[][] blend;
  private final int[][] kindsOf;
  private final int[] target;
  private final int min;
  private final int[] earliest;
  private final int[] latestEnd;

  Handoffs(
      Line line,
      OverlapRule rule,
      Weights weights,
      List<PlayerKind> kinds,
      List<Actor> actors,
      LockedLeeway keeping) {
    this.line = line;
    this.weights = weights;
    this.keeping = keeping;
    blend = blends(kinds);
    kindsOf = new int[actors.size()][];
    target = new int[actors.size()];
    for (Actor actor : actors) {
      kindsOf[actor.index()] = actor.members().stream().mapToInt(Actor.ActorMember::kind).toArray();
      target[actor.index()] =
          instruments(actor, kinds).mapToInt(weights::overlapTarget).max().orElse(1);
    }
    this.min = rule.min();
    int count = line.count();
    earliest = new int[count];
    latestEnd = new int[count];
    int from = 0;
    for (int end = 0; end < count; end++) {
      from =
          rule.max().isPresent() ? Math.max(0, end - rule.max().getAsInt() + 1) : withinBeat(end);
      earliest[end] = Math.max(1, from);
    }
    for (int start = 0; start < count; start++) {
      latestEnd[start] = start - 1;
    }
    for (int end = 0; end < count; end++) {
      for (int start = earliest[end]; start <= latest(end); start++) {
        latestEnd[start] = Math.max(latestEnd[start], end);
      }
    }
  }

  /** By the kinds of two players. */
  private int[][] blends(List<PlayerKind> kinds) {
    int[][] blends = new int[kinds.size()][kinds.size()];
    for (int one = 0; one < blends.length; one++) {
      for (int other = 0; other < blends.length; other++) {
        blends[one][other] =
            weights.blend(
                kinds.get(one).player().instrument(), kinds.get(other).player().instrument());
      }
    }
    return blends;
  }

  private static Stream<Instrument> instruments(Actor actor, List<PlayerKind> kinds) {
    return actor.members().stream().map(m -> kinds.get(m.kind()).player().instrument());
  }

  private int withinBeat(int end) {
    int start = end;
    while (start > 0
        && line.onsetMicros(end) - line.onsetMicros(start - 1) <= line.beatMicros(end)) {
      start--;
    }
    return start;
  }

  /** The first stroke with which the next segment may begin when one ends with {@code end}. */
  int earliest(int end) {
    return earliest[end];
  }

  /**
   * The last stroke with which it may begin while the two overlap; may be before {@link #earliest}.
   */
  int latest(int end) {
    return end - min + 1;
  }

  /**
   * Whether the next segment may begin after a silence instead, with the stroke after {@code end}.
   */
  boolean overSilence(int end) {
    return end + 1 < line.count() && line.restsBefore(end + 1) && keeping.allows(end + 1, end);
  }

  /**
   * The last stroke with which a segment may end when the next one begins with {@code start};
   * before it if none overlaps.
   */
  int latestEnd(int start) {
    return latestEnd[start];
  }

  /** Whether the locks allow such a handoff. */
  boolean allows(int start, int end) {
    return keeping.allows(start, end);
  }

  /** The cost of a handoff from one actor to another; nothing over a silence. */
  int cost(int leaving, int entering, int start, int end) {
    if (start > end) {
      return 0;
    }
    int cover = Math.min(line.cover(end), weights.coverMost());
    int beside = Math.abs(end - start + 1 - target[leaving]);
    return Math.max(0, weights.handoff() - cover)
        + weights.entry().get(line.rank(start).ordinal())
        + weights.landing().get(line.rank(end).ordinal())
        + Costing.phrase(line, start, end, weights)
        + beside * weights.overlap()
        + blend(leaving, entering);
  }

  /** How ill two actors blend at the landing note: the worst of their players. */
  private int blend(int leaving, int entering) {
    int worst = 0;
    for (int one : kindsOf[leaving]) {
      for (int other : kindsOf[entering]) {
        worst = Math.max(worst, blend[one][other]);
      }
    }
    return worst;
  }
}
