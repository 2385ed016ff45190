package stafette.split.rotate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Lock;
import stafette.plan.Player;
import stafette.split.AllPlans;
import stafette.split.SmallBriefs;
import stafette.split.SplitResult;
import stafette.split.Splitter;

class NearlyCheapestTest {
  private static final int LEAST = Invented.WEIGHTS.rotation();

  /** Half of the briefs have players who are all alike. */
  private static Brief brief(long seed, int strokes, int players) {
    Brief brief = SmallBriefs.of(seed, strokes, players);
    Brief balanced = brief.with(brief.rules().favouring(Favour.BALANCE, Invented.WEIGHTS));
    if (new Random(seed).nextBoolean()) {
      return balanced;
    }
    Player one = balanced.players().get(0);
    List<Player> alike = new ArrayList<>();
    for (int i = 0; i < balanced.players().size(); i++) {
      alike.add(
          new Player(
              "player " + i,
              one.instrument(),
              one.part(),
              one.skills(),
              one.busy(),
              one.isNamed()));
    }
    return balanced.with(alike);
  }

  @Property(tries = 250)
  void a_rotation_is_the_plan_just_where_one_costs_hardly_more(@ForAll long seed) {
    Brief brief = brief(seed, 14, 4);
    SplitResult cheapest = Splitter.split(brief, () -> false);
    Assume.that(cheapest.found().isPresent());
    compare(brief, cheapest.leastCost().getAsInt());
  }

  @Property(tries = 250)
  void it_is_so_on_lines_that_invite_to_take_turns(@ForAll long seed) {
    Brief brief = RelayBriefsWithBars.of(seed);
    SplitResult cheapest = Splitter.split(brief, () -> false);
    Assume.that(cheapest.found().isPresent());
    compare(brief, cheapest.leastCost().getAsInt());
  }

  @Property(tries = 250)
  void it_is_so_where_all_plans_are_tried(@ForAll long seed) {
    Brief brief = brief(seed, 8, 3);
    AllPlans all = AllPlans.of(brief);
    Assume.that(all.areComplete());
    OptionalInt cheapest = all.cheapest();
    Assume.that(cheapest.isPresent());
    compare(brief, cheapest.getAsInt());
  }

  private static void compare(Brief brief, int cheapest) {
    OptionalInt rotation = AllRotations.nearly(brief, cheapest, LEAST);
    SplitResult result = RotationOrCheapest.of(brief, () -> false);
    Verdict verdict = Judge.judge(result.found().orElseThrow());
    int cost = verdict.cost().total();
    assertTrue(verdict.holds() && verdict.keepsMargin());
    assertEquals(rotation.orElse(cheapest), cost);
    assertEquals(rotation.isPresent(), result.rotation().isPresent());
    assertEquals(OptionalInt.of(cheapest), result.leastCost());
    assertEquals(cost, result.match(SplitResult.Best::cost, none -> -1, stopped -> -1));
    result
        .rotation()
        .ifPresent(
            how -> {
              int handoffs = result.found().orElseThrow().handoffs().size();
              assertEquals(Math.max(LEAST, handoffs), how.limit());
              assertEquals(cheapest, how.cheapestCost());
            });
  }

  @Property(tries = 60)
  void under_a_lock_or_in_favour_of_something_the_cheapest_plan_is_kept(
      @ForAll long seed, @ForAll boolean locked) {
    Brief balanced = brief(seed, 14, 4);
    Lock none = new Lock.Out(0, 0, 0, 0);
    Brief brief =
        balanced.with(
            locked
                ? balanced.rules().with(List.of(none))
                : balanced.rules().favouring(Favour.STRAIN, Invented.WEIGHTS));
    SplitResult result = RotationOrCheapest.of(brief, () -> false);
    assertTrue(result.rotation().isEmpty());
    assertEquals(Splitter.split(brief, () -> false).leastCost(), result.leastCost());
  }
}
