package stafette.split.rotate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.split.SmallBriefs;
import stafette.split.SplitResult;
import stafette.split.Splitter;

/** Who has rested longest enters next; the judge says who could. */
class LongestRestedTest {
  private static Brief alike(long seed, int count) {
    Brief brief = seed % 4 == 0 ? SmallBriefs.of(seed, 14, 2) : RelayBriefsWithBars.of(seed);
    Player one = brief.players().get(0);
    return brief.with(
        IntStream.range(0, count)
            .mapToObj(
                i ->
                    new Player(
                        "player " + i,
                        one.instrument(),
                        one.part(),
                        one.skills(),
                        List.of(),
                        one.isNamed()))
            .toList());
  }

  @Property(tries = 200)
  void nobody_like_who_enters_has_rested_longer_and_could_have_entered_at_no_more_cost(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 5) int count) {
    Brief brief = alike(seed, count);
    SplitResult found = Splitter.split(brief, () -> false);
    Assume.that(found.found().isPresent());
    Plan before = found.found().orElseThrow();
    Plan after = LongestRested.first(found).found().orElseThrow();
    Verdict verdict = Judge.judge(after);
    assertTrue(verdict.holds() && verdict.keepsMargin());
    assertEquals(Judge.judge(before).cost().total(), verdict.cost().total());
    assertEquals(ends(before), ends(after));
    assertEquals(0, after.segments().get(0).player());
    assertEquals(expected(before), after.segments());
    for (int turn = 1; turn < after.segments().size(); turn++) {
      assertEquals(List.of(), better(after, turn), "turn " + turn + " of " + after.segments());
    }
  }

  @Property(tries = 200)
  void with_passages_of_their_own_and_other_instruments_it_costs_nothing_either(@ForAll long seed) {
    SplitResult found = Splitter.split(RelayBriefsWithBars.of(seed), () -> false);
    Assume.that(found.found().isPresent());
    Plan after = LongestRested.first(found).found().orElseThrow();
    Verdict verdict = Judge.judge(after);
    assertTrue(verdict.holds() && verdict.keepsMargin());
    assertEquals(found.leastCost().getAsInt(), verdict.cost().total());
    assertEquals(ends(found.found().orElseThrow()), ends(after));
  }

  private static List<List<Integer>> ends(Plan plan) {
    return plan.segments().stream().map(s -> List.of(s.way(), s.first(), s.last())).toList();
  }

  /** Turn by turn: who has rested longest of those who could change places from there on. */
  private static List<Segment> expected(Plan plan) {
    Plan now = plan;
    for (int turn = 1; turn < plan.segments().size(); turn++) {
      List<Plan> better = better(now, turn);
      now = better.isEmpty() ? now : better.get(0);
    }
    return now.segments();
  }

  /** The plans in which somebody enters who has rested longer, the longest rested first. */
  private static List<Plan> better(Plan plan, int turn) {
    List<Segment> segments = plan.segments();
    int plays = segments.get(turn).player();
    List<Integer> rested = new ArrayList<>();
    for (int player = 0; player < plan.brief().players().size(); player++) {
      boolean longer =
          ended(plan, player, turn) < ended(plan, plays, turn)
              || (ended(plan, player, turn) == ended(plan, plays, turn) && player < plays);
      if (longer && player != segments.get(turn - 1).player()) {
        rested.add(player);
      }
    }
    rested.sort((one, other) -> Long.compare(ended(plan, one, turn), ended(plan, other, turn)));
    int cost = Judge.judge(plan).cost().total();
    return rested.stream()
        .map(player -> exchanged(plan, turn, plays, player))
        .filter(
            other -> {
              Verdict verdict = Judge.judge(other);
              return verdict.holds() && verdict.keepsMargin() && verdict.cost().total() <= cost;
            })
        .toList();
  }

  private static long ended(Plan plan, int player, int turn) {
    return plan.segments().subList(0, turn).stream()
        .filter(segment -> segment.player() == player)
        .mapToLong(segment -> plan.line().endMicros(segment.last()))
        .max()
        .orElse(Long.MIN_VALUE);
  }

  private static Plan exchanged(Plan plan, int turn, int one, int other) {
    List<Segment> segments = new ArrayList<>(plan.segments());
    for (int i = turn; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      int player = segment.player();
      segments.set(i, segment.of(player == one ? other : player == other ? one : player));
    }
    return new Plan(plan.brief(), segments);
  }
}
