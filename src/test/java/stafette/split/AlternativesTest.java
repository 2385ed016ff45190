package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsCoverage;
import net.jqwik.api.statistics.StatisticsReport;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Costing;
import stafette.check.Judge;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.split.rotate.RotationOrCheapest;

class AlternativesTest {
  private static final Instrument FLUTE = Invented.instrument("flute");
  private static final Instrument CLARINET = Invented.instrument("clarinet");

  /** Of another family, and three decibels louder. */
  private static final Instrument LOUD =
      new Instrument(
          "trumpet",
          List.of(),
          "brass",
          FLUTE.range(),
          FLUTE.comfortable(),
          FLUTE.transposition(),
          FLUTE.clef(),
          FLUTE.levelDecibel() + 3,
          Optional.empty(),
          FLUTE.midiProgram(),
          FLUTE.techniques(),
          FLUTE.source());

  @Property(tries = 120)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void what_an_alternative_favours_no_other_plan_does_better(@ForAll long seed) {
    Random random = new Random(seed);
    Favour favour = Favour.values()[random.nextInt(Favour.values().length)];
    Optional<Plan> main = plan(favouring(unlikePlayers(random), favour));
    Assume.that(main.isPresent());
    Alternatives alternatives = all(main.get(), 5);
    List<Plan> plans = plans(main.get(), alternatives);
    for (Alternatives.Alternative one : alternatives.kept()) {
      Statistics.label("kept").collect(one.favour()).coverage(AlternativesTest::everyKind);
      assertTrue(Judge.judge(one.plan()).holds());
      Weights own = Invented.WEIGHTS.favouring(one.favour());
      assertEquals(own, one.plan().brief().rules().weights());
      for (Plan other : plans) {
        int more = one.result().rotation().map(SplitResult.InRotation::limit).orElse(0);
        assertTrue(
            one.favour() == Favour.REGULAR || cost(one.plan(), own) <= cost(other, own) + more);
      }
    }
  }

  /** Those that so short a line has room for. */
  private static void everyKind(StatisticsCoverage kept) {
    for (Favour favour : List.of(Favour.BALANCE, Favour.STRAIN, Favour.REGULAR)) {
      kept.check(favour).count(count -> count > 0);
    }
  }

  /** Some bars of triplets for players of three instruments, each with limits of its own. */
  private static Brief unlikePlayers(Random random) {
    List<Instrument> instruments = List.of(FLUTE, CLARINET, LOUD);
    Player[] players = new Player[3];
    for (int i = 0; i < players.length; i++) {
      players[i] =
          Invented.player(
              "player " + i,
              instruments.get(random.nextInt(instruments.size())),
              12.1 + 0.3 * random.nextInt(8),
              7 + 0.5 * random.nextInt(6),
              12 + random.nextInt(20),
              2 + random.nextInt(7));
    }
    return Invented.brief(Invented.line(4 + random.nextInt(2), 3, 240), players);
  }

  @Property(tries = 60)
  void no_alternative_is_nearly_the_same_as_another(@ForAll long seed) {
    Optional<Plan> main = plan(unlikePlayers(new Random(seed)));
    Assume.that(main.isPresent());
    List<Plan> plans = plans(main.get(), all(main.get(), 5));
    for (int i = 0; i < plans.size(); i++) {
      for (int k = 0; k < i; k++) {
        assertFalse(samePlayersWithinBeat(plans.get(i), plans.get(k)));
        assertFalse(sameCosts(plans.get(i), plans.get(k)));
      }
    }
  }

  @Property(tries = 60)
  void everything_else_is_favoured_once_and_no_more_are_kept_than_wanted(
      @ForAll long seed, @ForAll Favour favour, @ForAll @IntRange(min = 1, max = 5) int most) {
    Optional<Plan> main = plan(favouring(SmallBriefs.of(seed, 14, 3), favour));
    Assume.that(main.isPresent());
    Alternatives alternatives = all(main.get(), most);
    List<Favour> searched = new ArrayList<>();
    alternatives.kept().forEach(one -> searched.add(one.favour()));
    alternatives.dropped().forEach(one -> searched.add(one.favour()));
    assertTrue(alternatives.kept().size() <= most);
    assertFalse(searched.contains(favour));
    assertEquals(EnumSet.copyOf(searched).size(), searched.size());
    assertTrue(alternatives.kept().size() == most || searched.size() == 5);
  }

  @Test
  void each_search_is_told_how_many_are_left() {
    Plan main = plan(Invented.brief(Invented.line(4, 3, 240), flutes())).orElseThrow();
    List<Integer> left = new ArrayList<>();
    Alternatives.to(
        main,
        Invented.WEIGHTS,
        5,
        (brief, searches) -> {
          left.add(searches);
          return new SplitResult.Stopped(Optional.empty(), OptionalInt.empty(), 0);
        });
    assertEquals(List.of(5, 4, 3, 2, 1), left);
  }

  @Test
  void handing_over_a_beat_later_is_nearly_the_same_and_a_stroke_more_is_not() {
    Brief brief = Invented.brief(Invented.line(4, 4, 120), flutes());
    Plan plan = split(brief, 0, 1, 16);
    assertTrue(NearDuplicates.are(plan, split(brief, 0, 1, 20), Invented.WEIGHTS));
    assertTrue(NearDuplicates.are(plan, split(brief, 1, 0, 20), Invented.WEIGHTS));
    assertFalse(NearDuplicates.are(plan, split(brief, 0, 1, 21), Invented.WEIGHTS));
  }

  @Test
  void other_players_make_another_plan() {
    Brief brief = Invented.brief(Invented.line(4, 4, 120), flutes());
    Plan plan = split(brief, 0, 1, 16);
    assertFalse(NearDuplicates.are(plan, split(brief, 0, 2, 16), Invented.WEIGHTS));
    assertFalse(
        NearDuplicates.are(split(brief, 0, 2, 16), split(brief, 2, 0, 20), Invented.WEIGHTS));
  }

  @Test
  void plans_that_cost_the_same_whatever_is_favoured_are_nearly_the_same() {
    Brief brief = Invented.brief(Invented.line(8, 4, 120), flutes());
    Plan early = split(brief, 0, 1, 48);
    Plan late = split(brief, 0, 1, 80);
    assertEquals(sameCosts(early, late), NearDuplicates.are(early, late, Invented.WEIGHTS));
    assertTrue(NearDuplicates.are(early, late, Invented.WEIGHTS));
  }

  private static Player[] flutes() {
    return new Player[] {
      Invented.player("Flute 1", FLUTE, 13, 8, 20, 8),
      Invented.player("Flute 2", FLUTE, 13, 8, 20, 8),
      Invented.player("Clarinet 1", CLARINET, 13, 7, 20, 8)
    };
  }

  private static Plan split(Brief brief, int leaves, int enters, int landing) {
    return new Plan(
        brief,
        List.of(
            new Segment(leaves, 0, 0, landing),
            new Segment(enters, 0, landing, brief.line().count() - 1)));
  }

  private static Brief favouring(Brief brief, Favour favour) {
    return brief.with(brief.rules().favouring(favour, Invented.WEIGHTS));
  }

  private static Alternatives all(Plan main, int most) {
    return Alternatives.to(
        main, Invented.WEIGHTS, most, (brief, left) -> RotationOrCheapest.of(brief, () -> false));
  }

  private static Optional<Plan> plan(Brief brief) {
    return RotationOrCheapest.of(brief, () -> false)
        .match(b -> Optional.of(b.plan()), n -> Optional.empty(), s -> Optional.empty());
  }

  private static List<Plan> plans(Plan main, Alternatives alternatives) {
    List<Plan> plans = new ArrayList<>(List.of(main));
    alternatives.kept().forEach(one -> plans.add(one.plan()));
    return plans;
  }

  private static int cost(Plan plan, Weights weights) {
    Brief brief = plan.brief().with(plan.brief().rules().with(weights));
    return Costing.of(new Plan(brief, plan.segments())).total();
  }

  private static boolean sameCosts(Plan one, Plan other) {
    for (Favour favour : Favour.values()) {
      Weights weights = Invented.WEIGHTS.favouring(favour);
      if (cost(one, weights) != cost(other, weights)) {
        return false;
      }
    }
    return true;
  }

  private static boolean samePlayersWithinBeat(Plan one, Plan other) {
    Line line = one.line();
    int count = one.segments().size();
    Set<Integer> players = new HashSet<>();
    Set<Integer> others = new HashSet<>();
    one.segments().forEach(segment -> players.add(segment.player()));
    other.segments().forEach(segment -> others.add(segment.player()));
    if (count != other.segments().size() || !players.equals(others)) {
      return false;
    }
    for (int k = 0; k < count; k++) {
      Segment own = one.segments().get(k);
      Segment its = other.segments().get(k);
      boolean alike =
          one.player(own).instrument().name().equals(other.player(its).instrument().name());
      long apart = Math.abs(line.onsetMicros(own.last()) - line.onsetMicros(its.last()));
      if (!alike || apart > Math.max(line.beatMicros(own.last()), line.beatMicros(its.last()))) {
        return false;
      }
    }
    return true;
  }
}
