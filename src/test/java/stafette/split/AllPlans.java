package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.ManyPlans;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.Turn;

/**
 * Tries every plan of a small brief: whatever the judge lets pass, at the price that the judge's
 * room gives. Shares nothing with the search.
 */
public final class AllPlans {
  private static final int MOST = 150_000;

  private final Brief brief;
  private final List<Segment> possible = new ArrayList<>();
  private final List<Priced> plans = new ArrayList<>();

  private record Priced(List<Segment> segments, int cost) {}

  private AllPlans(Brief brief) {
    this.brief = brief;
  }

  /** All plans of a brief, unless they are too many. */
  public static AllPlans of(Brief brief) {
    AllPlans all = new AllPlans(brief);
    all.collect();
    return all;
  }

  /** Whether they were few enough to try them all. */
  public boolean areComplete() {
    return plans.size() <= MOST;
  }

  /** The cost of the cheapest plan that the judge lets pass; empty if there is none. */
  public OptionalInt cheapest() {
    plans.sort(Comparator.comparingInt(Priced::cost));
    ManyPlans all = new ManyPlans(brief);
    for (Priced plan : plans) {
      if (all.hold(new Plan(brief, plan.segments()))) {
        return OptionalInt.of(plan.cost());
      }
    }
    return OptionalInt.empty();
  }

  private void collect() {
    int count = brief.line().count();
    for (int player = 0; player < brief.players().size(); player++) {
      for (int way = 0; way < brief.players().get(player).ways().size(); way++) {
        for (int first = 0; first < count; first++) {
          for (int last = first; last < count; last++) {
            Segment segment = new Segment(player, way, first, last);
            if (isPossible(segment)) {
              possible.add(segment);
            }
          }
        }
      }
    }
    for (Segment segment : possible) {
      if (segment.first() == 0) {
        extend(new ArrayList<>(List.of(segment)), Costing.segment(brief, segment).total());
      }
    }
  }

  /**
   * Whether a player could play it. Where it tires somebody too much when it stands alone, it may
   * still hold after another turn, since that parts it from what the score gives the player.
   */
  private boolean isPossible(Segment segment) {
    return Judge.judge(new Plan(brief, List.of(segment))).findings().stream()
        .allMatch(
            finding ->
                finding.kind() == Finding.FindingKind.SHAPE
                    || finding.kind() == Finding.FindingKind.REST
                    || finding.kind() == Finding.FindingKind.TIREDNESS);
  }

  private void extend(List<Segment> segments, int cost) {
    if (plans.size() > MOST) {
      return;
    }
    Segment last = segments.get(segments.size() - 1);
    if (last.last() == brief.line().count() - 1) {
      List<Integer> used = segments.stream().map(Segment::player).distinct().toList();
      int players =
          IntStream.range(0, brief.players().size())
              .map(
                  player ->
                      used.contains(player)
                          ? Costing.price(brief, player)
                          : Costing.idle(brief, player))
              .sum();
      plans.add(new Priced(List.copyOf(segments), cost + players));
      return;
    }
    for (Segment next : possible) {
      Optional<Segment> before =
          segments.size() > 1 ? Optional.of(segments.get(segments.size() - 2)) : Optional.empty();
      if (follows(before, last, next)) {
        segments.add(next);
        extend(
            segments,
            cost
                + Costing.segment(brief, next).total()
                + Costing.handoff(brief, handoff(last, next)).total());
        segments.remove(segments.size() - 1);
      }
    }
  }

  /** The rules of shape and overlap, as the planning model states them. */
  private static Handoff handoff(Segment leaves, Segment enters) {
    return new Handoff(new Turn(List.of(leaves)), new Turn(List.of(enters)));
  }

  private boolean follows(Optional<Segment> before, Segment last, Segment next) {
    if (next.first() <= last.first()
        || next.last() <= last.last()
        || next.player() == last.player()
        || before.map(b -> next.first() <= b.last()).orElse(false)) {
      return false;
    }
    int shared = last.last() - next.first() + 1;
    if (shared == 0 && brief.line().restsBefore(next.first())) {
      return true;
    }
    if (shared < brief.rules().overlap().min()) {
      return false;
    }
    OptionalInt max = brief.rules().overlap().max();
    long time = brief.line().onsetMicros(last.last()) - brief.line().onsetMicros(next.first());
    return max.isPresent()
        ? shared <= max.getAsInt()
        : time <= brief.line().beatMicros(last.last());
  }
}
