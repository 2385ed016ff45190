package stafette.split.thin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.Thinning;
import stafette.limits.Breath;
import stafette.limits.Range;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Stroke;
import stafette.split.thin.ThinCases.ThinCase;
import stafette.time.Position;
import stafette.time.Rank;

/** Background parts on small lines, held against all combinations of patterns and the judge. */
class ThinnerTest {
  private static final double MOST_COMBINATIONS = 400;

  @Provide
  Arbitrary<ThinCase> cases() {
    return Arbitraries.longs().map(seed -> ThinCases.random(new Random(seed)));
  }

  @Provide
  Arbitrary<ThinCase> tiring() {
    return Arbitraries.longs().map(seed -> ThinCases.tiring(new Random(seed), 5));
  }

  @Provide
  Arbitrary<ThinCase> breathless() {
    return Arbitraries.longs().map(seed -> ThinCases.breathless(new Random(seed)));
  }

  @Property(tries = 120, shrinking = ShrinkingMode.OFF)
  void no_combination_of_patterns_that_the_judge_accepts_costs_less(
      @ForAll("cases") ThinCase given) {
    Assume.that(AllThinnings.count(given) <= MOST_COMBINATIONS);
    assertCostsLeast(given);
  }

  @Property(tries = 120, shrinking = ShrinkingMode.OFF)
  void what_is_kept_can_be_played_and_the_beats_are_in_it(@ForAll("cases") ThinCase given) {
    ThinnedPart part = Thinner.thin(given.line(), given.player(), Invented.rules());
    assertEquals(List.of(), part.kept().map(Judge::playing).orElse(List.of()));
    assertEquals(part.strokes(), part.kept().map(plan -> plan.line().count()).orElse(0));
    List<Position> onsets =
        part.kept().stream()
            .flatMap(plan -> plan.line().strokes().stream())
            .map(Stroke::onset)
            .toList();
    int next = 0;
    for (ThinnedPart.ThinnedStretch stretch : part.stretches()) {
      assertEquals(next, stretch.first());
      next = stretch.last() + 1;
      for (int j = stretch.first(); j <= stretch.last(); j++) {
        boolean beat = given.line().rank(j).compareTo(Rank.BEAT) <= 0;
        if (beat && stretch.pattern() != Thinning.NOTHING) {
          assertTrue(onsets.contains(given.line().stroke(j).onset()), () -> part.toString());
        }
      }
    }
    assertEquals(given.line().count(), next);
  }

  @Property(tries = 30, shrinking = ShrinkingMode.OFF)
  void where_tiredness_and_breath_decide_nothing_costs_less_either(
      @ForAll("tiring") ThinCase given) {
    assertCostsLeast(given);
  }

  /** Who would best leave out one bar, and may not. */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void where_a_hole_of_one_bar_would_do_nothing_without_one_costs_less(
      @ForAll("breathless") ThinCase given) {
    assertCostsLeast(given);
  }

  private static void assertCostsLeast(ThinCase given) {
    ThinnedPart part = Thinner.thin(given.line(), given.player(), Invented.rules());
    assertEquals(
        AllThinnings.least(given),
        AllThinnings.cost(given, part),
        () -> given + " " + part.stretches());
  }

  @Example
  void a_fresh_player_who_can_play_it_all_keeps_it_all() {
    Player player = Invented.player("Reed 1", Invented.instrument("reed"), 12, 10, 20, 8);
    ThinnedPart part = Thinner.thin(Invented.line(4, 4, 120), player, Invented.rules());
    assertEquals(
        List.of(new ThinnedPart.ThinnedStretch(0, 63, Thinning.ALL, 64)), part.stretches());
  }

  @Example
  void where_the_score_gives_something_else_only_the_beats_concerned_are_left_out() {
    Player free = Invented.player("Reed 1", Invented.instrument("reed"), 12, 10, 20, 8);
    Player busy =
        new Player(
            free.name(),
            free.instrument(),
            free.part(),
            free.skills(),
            List.of(new GivenStretch(2_500_000, 2_900_000, List.of(2_500_000L))));
    ThinnedPart part = Thinner.thin(Invented.line(2, 4, 120), busy, Invented.rules());
    assertEquals(
        List.of(
            new ThinnedPart.ThinnedStretch(0, 19, Thinning.ALL, 20),
            new ThinnedPart.ThinnedStretch(20, 27, Thinning.NOTHING, 0),
            new ThinnedPart.ThinnedStretch(28, 31, Thinning.ALL, 4)),
        part.stretches());
    assertEquals(2, part.kept().orElseThrow().segments().size());
  }

  /** A quarter of its own in the middle of the second bar, and nothing of the line in that beat. */
  @Example
  void what_the_score_gives_may_touch_what_is_kept_on_both_sides() {
    Player free = Invented.player("Reed 1", Invented.instrument("reed"), 12, 10, 20, 8);
    Player busy =
        new Player(
            free.name(),
            free.instrument(),
            free.part(),
            free.skills(),
            List.of(new GivenStretch(2_500_000, 3_000_000, List.of(2_500_000L))));
    ThinnedPart part = Thinner.thin(Invented.line(2, 4, 120), busy, Invented.rules().withReady(0));
    assertEquals(
        List.of(
            new ThinnedPart.ThinnedStretch(0, 19, Thinning.ALL, 20),
            new ThinnedPart.ThinnedStretch(20, 23, Thinning.NOTHING, 0),
            new ThinnedPart.ThinnedStretch(24, 31, Thinning.ALL, 8)),
        part.stretches());
  }

  /** Somebody who must breathe every other bar, so that bars are left out now and then. */
  private static Player shortOfBreath() {
    Optional<Breath> lungs = Optional.of(new Breath(6, 0.3, 1, Map.of()));
    return Invented.player(
        "Reed 1", Invented.instrument("reed", new Range(60, 96), lungs), 12, 10, 20, 8);
  }

  private static int reckoned(int bars) {
    List<Integer> counts = new ArrayList<>();
    Thinner.thin(
        Invented.line(bars, 4, 120),
        shortOfBreath(),
        Invented.rules(),
        () -> false,
        progress -> counts.add(progress.reckoned()));
    return counts.get(counts.size() - 1);
  }

  /** Whenever the player last played, what follows a long silence asks the same. */
  @Example
  void a_line_twice_as_long_is_no_more_than_twice_the_reckoning() {
    int once = reckoned(16);
    int twice = reckoned(32);
    assertTrue(twice <= 2.5 * once, once + " and " + twice);
  }

  @Example
  void a_search_that_is_stopped_has_what_it_found_and_keeps_nothing_from_there() {
    AtomicInteger tried = new AtomicInteger();
    Thinner.Found found =
        Thinner.thin(
            Invented.line(16, 4, 120),
            shortOfBreath(),
            Invented.rules(),
            () -> tried.get() == 3,
            progress -> tried.set(progress.stretches()));
    assertFalse(found.proven());
    assertTrue(found.part().strokes() > 0, found.toString());
    assertEquals(List.of(), found.part().kept().map(Judge::playing).orElseThrow());
    ThinnedPart.ThinnedStretch last =
        found.part().stretches().get(found.part().stretches().size() - 1);
    assertEquals(Thinning.NOTHING, last.pattern());
    assertTrue(last.first() <= 3 * 16, last.toString());
    assertEquals(16 * 16 - 1, last.last());
  }

  @Example
  void a_search_that_may_not_begin_keeps_nothing_and_proves_nothing() {
    Thinner.Found found =
        Thinner.thin(
            Invented.line(2, 4, 120), shortOfBreath(), Invented.rules(), () -> true, p -> {});
    assertEquals(0, found.part().strokes());
    assertFalse(found.proven());
  }

  @Example
  void out_of_range_nothing_is_kept() {
    Player player =
        Invented.player(
            "Low reed",
            Invented.instrument("reed", new Range(30, 60), Optional.empty()),
            12,
            10,
            20,
            8);
    ThinnedPart part = Thinner.thin(Invented.line(2, 4, 120), player, Invented.rules());
    assertEquals(Optional.empty(), part.kept());
    assertEquals(0, part.strokes());
  }
}
