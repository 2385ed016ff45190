package stafette.split.nearest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Margin;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Line;
import stafette.split.Splitter;
import stafette.split.Workbench;

class NearestPlanTest {
  /** What figures in thousandths may make of a share. */
  private static final double ROUNDED = 1e-3;

  /**
   * Lines from what nearly everybody manages to what nobody does: peaks are 12 strokes a second,
   * with a deviation of 1.5.
   */
  private static Brief brief(long seed) {
    Random random = new Random(seed);
    Line line = Invented.line(1 + random.nextInt(4), 4, 140 + random.nextInt(95));
    Optional<Breath> breath =
        random.nextBoolean()
            ? Optional.of(new Breath(1 + 4 * random.nextDouble(), 0.3, 1, Map.of()))
            : Optional.empty();
    Instrument pipe = Invented.instrument("pipe", new Range(60, 96), breath);
    Assurance asked =
        new Assurance(
            List.of(84.0, 84.0, 90.0, 62.5, 50.0, 20.0, 16.0, 10.0).get(random.nextInt(8)));
    Skill skill = new Skill(pipe.techniques().get(0), pipe.techniques().get(0).limit().at(asked));
    List<Player> players = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      players.add(new Player("Pipe " + i, pipe, Optional.empty(), List.of(skill), List.of()));
    }
    Rules rules = Invented.rules().with(asked).with(new Margin(random.nextInt(8)));
    return new Brief(line, players, rules);
  }

  @Property(tries = 150)
  void it_is_the_first_rung_of_all_for_which_there_is_a_plan(@ForAll long seed) {
    Brief brief = brief(seed);
    NearestPlan nearest = nearest(brief, () -> false);
    for (Brief rung : rungs(brief)) {
      boolean goes = Splitter.split(rung, () -> false).found().isPresent();
      boolean isIt = nearest.brief().rules().equals(rung.rules());
      if (goes) {
        assertTrue(isIt, () -> rung.rules().assurance() + " goes, not " + said(nearest));
        assertHolds(nearest);
        return;
      }
    }
    assertTrue(nearest.result().found().isEmpty());
    assertTrue(nearest.result().isNone());
  }

  private static void assertHolds(NearestPlan nearest) {
    Verdict verdict = Judge.judge(nearest.result().found().orElseThrow());
    assertTrue(verdict.holds() && verdict.keepsMargin());
    double share = nearest.brief().rules().assurance().percent();
    assertTrue(verdict.hardest() * 100 >= share - ROUNDED, () -> verdict.hardest() + " " + share);
  }

  /** All that is tried, in order: with the margin, without, then fewer and fewer without. */
  private static List<Brief> rungs(Brief brief) {
    Brief without = brief.with(brief.rules().with(Margin.NONE));
    List<Brief> rungs = new ArrayList<>(List.of(brief, without));
    double asked = brief.rules().assurance().percent();
    for (int share :
        new int[] {95, 90, 85, 80, 75, 70, 65, 60, 55, 50, 45, 40, 35, 30, 25, 20, 16}) {
      if (share < asked) {
        rungs.add(without.at(new Assurance(share)));
      }
    }
    return rungs;
  }

  private static String said(NearestPlan nearest) {
    return nearest.brief().rules().assurance() + " " + nearest.brief().rules().margin();
  }

  private static NearestPlan nearest(Brief brief, BooleanSupplier stop) {
    return NearestPlan.of(brief, new Workbench(), stop, progress -> {});
  }

  @Property(tries = 25)
  void it_is_the_same_on_a_busy_machine(@ForAll long seed) {
    AtomicInteger asked = new AtomicInteger();
    NearestPlan once = nearest(brief(seed), () -> false);
    NearestPlan again =
        nearest(
            brief(seed),
            () -> {
              if (asked.incrementAndGet() % 50 == 1) {
                sleep();
              }
              return false;
            });
    assertEquals(said(once), said(again));
    assertEquals(
        once.result().found().map(plan -> plan.segments()),
        again.result().found().map(plan -> plan.segments()));
    assertEquals(once.result().leastCost(), again.result().leastCost());
  }

  private static void sleep() {
    try {
      Thread.sleep(1);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Sixteen strokes a second are 2.7 deviations above the mean. */
  @Test
  void what_not_even_16_of_100_manage_has_no_plan() {
    Instrument pipe = Invented.instrument("pipe");
    Skill skill =
        new Skill(pipe.techniques().get(0), pipe.techniques().get(0).limit().at(Assurance.DEFAULT));
    List<Player> players =
        List.of(
            new Player("One", pipe, Optional.empty(), List.of(skill), List.of()),
            new Player("Two", pipe, Optional.empty(), List.of(skill), List.of()));
    Brief brief =
        new Brief(Invented.line(2, 4, 240), players, Invented.rules().with(Margin.DEFAULT));
    NearestPlan nearest = nearest(brief, () -> false);
    assertTrue(nearest.result().isNone());
    assertEquals(brief.rules().assurance(), nearest.brief().rules().assurance());
  }
}
