package stafette.split.rotate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.check.PartTrial;
import stafette.plan.Brief;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.split.LockedPlayers;
import stafette.split.SplitResult;

/**
 * Lets whoever has rested longest enter next, of players with the same instrument and limits who
 * are not locked: from a turn on, two of them exchange all that they have, if both can still play
 * all of it and the plan costs the same. Whoever has not played yet has rested longest, those
 * listed first before others. Of plans for one line without hockets.
 */
final class LongestRested {
  private final Brief brief;
  private final PartTrial trial;
  private final Set<Integer> locked;
  private final Map<Integer, Integer> idle = new HashMap<>();

  private LongestRested(Brief brief) {
    this.brief = brief;
    this.trial = new PartTrial(brief);
    this.locked = LockedPlayers.players(brief.rules().locks());
  }

  /** The same result with its plan so changed. */
  static SplitResult first(SplitResult found) {
    return found.match(
        best -> new SplitResult.Best(first(best.plan()), best.cost()),
        none -> none,
        stopped ->
            new SplitResult.Stopped(
                stopped.plan().map(LongestRested::first), stopped.cost(), stopped.bound()));
  }

  private static Plan first(Plan plan) {
    boolean simple =
        plan.brief().lines().size() == 1
            && plan.segments().stream().allMatch(s -> s.pattern() == Pattern.ALL);
    return simple
        ? new Plan(plan.brief(), new LongestRested(plan.brief()).ordered(plan.segments()))
        : plan;
  }

  private List<Segment> ordered(List<Segment> segments) {
    List<Segment> now = new ArrayList<>(segments);
    for (int turn = 1; turn < now.size(); turn++) {
      int from = turn;
      List<Segment> before = List.copyOf(now.subList(0, from));
      int plays = now.get(from).player();
      List<Integer> rested =
          IntStream.range(0, brief.players().size())
              .filter(other -> isAlike(other, plays))
              .filter(other -> other == plays || other != before.get(from - 1).player())
              .boxed()
              .sorted(Comparator.comparingLong(player -> lastEnd(before, player)))
              .toList();
      for (int other : rested.subList(0, rested.indexOf(plays))) {
        Optional<List<Segment>> exchanged = exchanged(now, from, plays, other);
        if (exchanged.isPresent()) {
          now = new ArrayList<>(exchanged.get());
          break;
        }
      }
    }
    return now;
  }

  private boolean isAlike(int one, int other) {
    Player first = brief.players().get(one);
    Player second = brief.players().get(other);
    return one == other
        || (!locked.contains(one)
            && !locked.contains(other)
            && first.instrument().equals(second.instrument())
            && first.skills().equals(second.skills())
            && first.isNamed() == second.isNamed());
  }

  private long lastEnd(List<Segment> before, int player) {
    return before.stream()
        .filter(segment -> segment.player() == player)
        .mapToLong(segment -> brief.line().endMicros(segment.last()))
        .max()
        .orElse(Long.MIN_VALUE);
  }

  private Optional<List<Segment>> exchanged(List<Segment> segments, int from, int one, int other) {
    List<Segment> after = new ArrayList<>(segments);
    for (int i = from; i < after.size(); i++) {
      Segment segment = after.get(i);
      if (segment.player() == one || segment.player() == other) {
        after.set(i, segment.of(segment.player() == one ? other : one));
      }
    }
    boolean followsItself =
        IntStream.range(1, after.size())
            .anyMatch(i -> after.get(i).player() == after.get(i - 1).player());
    return !followsItself && costs(after, one, other) == costs(segments, one, other)
        ? Optional.of(after)
        : Optional.empty();
  }

  /** What two players and their turns cost; a great deal if one of them can't play theirs. */
  private long costs(List<Segment> segments, int one, int other) {
    return points(segments, one) + points(segments, other);
  }

  private long points(List<Segment> segments, int player) {
    List<Segment> own = segments.stream().filter(s -> s.player() == player).toList();
    return own.isEmpty()
        ? idle.computeIfAbsent(player, each -> Costing.idle(brief, each))
        : Costing.price(brief, player) + trial.points(own).orElse(Rotation.NEVER);
  }
}
