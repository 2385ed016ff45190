package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.split.rotate.RotationOrCheapest;

/** Forty players, all unlike, on sixteen bars: answers that take little work. */
class ManyPlayersTest {
  private static final int PLAYERS = 40;

  /** What the search allows itself with so many, and what it had begun by then. */
  private static final int MOST_WORK = 550_000;

  @Test
  void the_cheapest_plan_of_forty_players_is_proven_without_looking_at_their_crews_one_by_one() {
    Splitter search = search(able());
    SplitResult.Best best = assertInstanceOf(SplitResult.Best.class, search.run());
    assertTrue(Judge.judge(best.plan()).holds());
    assertTrue(search.work() < 150_000, "work " + search.work());
  }

  @Test
  void where_a_proof_is_out_of_reach_the_search_ends_by_itself_with_a_plan_and_a_bound() {
    Splitter search = search(soonTired());
    SplitResult.Stopped stopped = assertInstanceOf(SplitResult.Stopped.class, search.run());
    Plan plan = stopped.plan().orElseThrow();
    assertTrue(Judge.judge(plan).holds());
    assertTrue(stopped.bound() <= Judge.judge(plan).cost().total());
    assertTrue(search.work() < MOST_WORK, "work " + search.work());
  }

  @Test
  void forty_players_who_were_all_named_get_a_plan_and_a_bound_too() {
    Brief brief = able();
    List<Player> named =
        brief.players().stream()
            .map(p -> new Player(p.name(), p.instrument(), p.part(), p.skills(), p.busy()))
            .toList();
    Splitter search = search(brief.with(named));
    SplitResult.Stopped stopped = assertInstanceOf(SplitResult.Stopped.class, search.run());
    Plan plan = stopped.plan().orElseThrow();
    assertTrue(Judge.judge(plan).holds());
    assertTrue(stopped.bound() <= Judge.judge(plan).cost().total());
    assertTrue(search.work() < MOST_WORK, "work " + search.work());
  }

  @Test
  void that_no_plan_exists_is_proven_for_all_together() {
    Splitter search = search(brief(able(), 480));
    SplitResult.None none = assertInstanceOf(SplitResult.None.class, search.run());
    assertTrue(none.reasons().get(0).text().toString().contains("beyond the peak"));
    assertTrue(search.work() < 50_000, "work " + search.work());
  }

  @Test
  void pairs_of_forty_players_do_not_fill_the_memory() {
    Brief brief = able();
    Splitter search = search(brief.with(brief.rules().with(Hocket.BEAT)));
    SplitResult result = search.run();
    Optional<Plan> plan = result.match(b -> Optional.of(b.plan()), n -> none(), s -> s.plan());
    assertTrue(Judge.judge(plan.orElseThrow()).holds());
    assertTrue(search.work() < MOST_WORK, "work " + search.work());
  }

  @Test
  void the_cheapest_rotation_is_found_among_the_orders_that_promise_most() {
    Brief brief = able();
    Brief regular = brief.with(brief.rules().favouring(Favour.REGULAR, Invented.WEIGHTS));
    List<Boolean> asked = new ArrayList<>();
    SplitResult result =
        RotationOrCheapest.of(regular, () -> asked.add(true) && asked.size() > 20_000);
    assertInstanceOf(SplitResult.Best.class, result);
  }

  @Test
  void so_many_of_them_at_most_is_one_search() {
    Brief brief = able();
    int cost = cost(Splitter.split(brief, () -> false));
    assertEquals(cost, cost(Splitter.among(brief, 2, () -> false)));
    assertInstanceOf(SplitResult.None.class, Splitter.among(brief, 1, () -> false));
  }

  private static Optional<Plan> none() {
    return Optional.empty();
  }

  private static int cost(SplitResult result) {
    return assertInstanceOf(SplitResult.Best.class, result).cost();
  }

  private static Splitter search(Brief brief) {
    return new Splitter(brief, PLAYERS, new Workbench(), () -> false, progress -> {});
  }

  private static Brief able() {
    Random random = new Random(1);
    return brief(() -> 13 + 2 * random.nextDouble(), () -> 8 + random.nextDouble(), 20, 8);
  }

  private static Brief soonTired() {
    Random random = new Random(1);
    return brief(() -> 12.2 + random.nextDouble(), () -> 4 + random.nextDouble(), 12, 12);
  }

  private static Brief brief(Brief brief, long quartersPerMinute) {
    return new Brief(Invented.line(16, 3, quartersPerMinute), brief.players(), brief.rules());
  }

  /** Twelve strokes a second, twelve to a bar. */
  private static Brief brief(
      DoubleSupplier peak, DoubleSupplier sustained, double stamina, double recovery) {
    Instrument flute = Invented.instrument("flute");
    Player[] players = new Player[PLAYERS];
    for (int i = 0; i < PLAYERS; i++) {
      players[i] =
          Invented.player(
                  "Flute " + (i + 1),
                  flute,
                  peak.getAsDouble(),
                  sustained.getAsDouble(),
                  stamina,
                  recovery)
              .proposed();
    }
    return Invented.brief(Invented.line(16, 3, 240), players);
  }
}
