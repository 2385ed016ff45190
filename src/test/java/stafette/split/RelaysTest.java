package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Hocket;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/** Hockets, locks and several relays: the search finds what trying every plan finds. */
class RelaysTest {
  private static final Rules RULES = Invented.rules();

  @Property(tries = 150, maxDiscardRatio = 100)
  void hockets_are_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 6, 3);
    compare(brief.with(brief.rules().with(hocket(new Random(seed)))));
  }

  @Property(tries = 250, maxDiscardRatio = 100)
  void locks_are_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 7, 3);
    compare(brief.with(brief.rules().with(SmallBriefs.locks(brief, new Random(seed)))));
  }

  @Property(tries = 60, maxDiscardRatio = 100)
  void always_two_on_is_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 5, 4);
    compare(doubled(brief));
  }

  @Property(tries = 50, maxDiscardRatio = 100)
  void two_lines_at_once_are_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 6, 4);
    Line line = brief.line();
    Random random = new Random(seed);
    List<Integer> kept =
        IntStream.range(0, line.count()).filter(j -> random.nextInt(3) > 0).boxed().toList();
    Assume.that(!kept.isEmpty());
    List<Line> lines = List.of(line, line.only(kept, false));
    compare(new Brief(lines, brief.players(), brief.rules()));
  }

  @Property(tries = 60, maxDiscardRatio = 100)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void lines_with_silences_of_their_own_are_exact(@ForAll long seed) {
    compareMostWithPlan(RelayBriefs.unlike(seed, 4, 2 + Math.floorMod(seed, 2)));
  }

  @Property(tries = 60, maxDiscardRatio = 100)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void such_lines_with_hockets_are_exact(@ForAll long seed) {
    Brief brief = RelayBriefs.unlike(seed, 4, 2 + Math.floorMod(seed, 2));
    compareMostWithPlan(RelayBriefs.hocketed(brief, seed));
  }

  @Property(tries = 60, maxDiscardRatio = 100)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void always_two_on_with_hockets_is_exact(@ForAll long seed) {
    compareMostWithPlan(RelayBriefs.hocketed(RelayBriefs.alike(seed, 3, 2), seed));
  }

  @Property(tries = 50, maxDiscardRatio = 100)
  void all_of_them_together_are_exact(@ForAll long seed) {
    Random random = new Random(seed);
    Brief brief = doubled(SmallBriefs.of(seed, 5, 4));
    brief = brief.with(brief.rules().with(hocket(random)));
    compare(brief.with(brief.rules().with(SmallBriefs.locks(brief, random))));
  }

  @Property(tries = 150, maxDiscardRatio = 100)
  void locks_never_make_a_plan_cheaper_or_possible(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 9, 4);
    Brief locked = brief.with(brief.rules().with(SmallBriefs.locks(brief, new Random(seed))));
    int free = cost(brief);
    int kept = cost(locked);
    assertTrue(kept < 0 || (free >= 0 && free <= kept), () -> brief + " " + locked.rules().locks());
  }

  @Test
  void two_who_have_notes_of_their_own_in_a_silence_change_places_after_it() {
    Line line = bars(0, 1, 8, 9);
    GivenStretch own = new GivenStretch(4_000_000, 4_500_000, List.of(4_000_000L));
    Brief brief = new Brief(List.of(line, line), List.of(with(own, 1), with(own, 2)), RULES);
    Plan plan = plan(brief);
    assertEquals(2, plan.handoffs().size());
    assertTrue(Judge.judge(plan).holds());
  }

  @Test
  void one_who_is_free_when_another_relay_begins_plays_in_both() {
    Line line = bars(0, 1, 8, 9);
    Brief brief =
        new Brief(
            List.of(only(line, 0, 8), only(line, 8, 16)),
            List.of(flute(1).proposed(), flute(2).proposed()),
            RULES);
    assertEquals(List.of("Flute 1"), plan(brief).playing());
  }

  @Test
  void one_who_relieves_in_one_relay_relieves_in_another_after_its_silence() {
    Line line = bars(0, 1, 2, 3, 8, 9);
    List<Line> lines = List.of(only(line, 0, 8, 16, 24), only(line, 8, 16));
    GivenStretch early = new GivenStretch(2_000_000, 2_500_000, List.of(2_000_000L));
    GivenStretch late = new GivenStretch(6_000_000, 6_500_000, List.of(6_000_000L));
    Brief brief = new Brief(lines, List.of(with(early, 1), with(late, 2)), RULES);
    assertTrue(Judge.judge(plan(brief)).holds());
  }

  @Test
  void nobody_hands_over_on_the_first_note_or_the_last() {
    Line line = Invented.line(2, 4, 90);
    for (int note : new int[] {0, line.count() - 1}) {
      Brief brief = new Brief(line, List.of(flute(1), flute(2)), RULES);
      List<Lock> lock = List.of(new Lock.At(0, note, note));
      assertEquals(-1, cost(brief.with(RULES.with(lock))));
      assertTrue(cost(brief.with(RULES.with(List.of(new Lock.At(0, 16, 16))))) >= 0);
    }
  }

  /** Seven notes a second: too many for one, and in turns by stroke too few to bounce the bow. */
  @Test
  void the_lowest_rate_of_a_technique_is_that_of_the_strokes_that_each_of_a_pair_plays() {
    Line line = Invented.line(1, 4, 105);
    List<Player> players = List.of(bouncing(1, 6.9), bouncing(2, 6.9));
    Brief brief = new Brief(line, players, RULES.with(Hocket.STROKE));
    assertEquals(-1, cost(brief));
    assertTrue(cost(brief.with(List.of(bouncing(1, 7.1), bouncing(2, 7.1)))) >= 0);
    assertTrue(cost(brief.with(List.of(flute(1, 6.9), flute(2, 6.9)))) >= 0);
  }

  private static Player bouncing(int number, double peak) {
    Technique plain = Invented.tonguing("sautille");
    Technique bouncing =
        new Technique(
            plain.name(),
            plain.act(),
            plain.pitches(),
            plain.slurs(),
            plain.groups(),
            false,
            1,
            true,
            plain.limit(),
            6.7,
            plain.factors(),
            plain.source(),
            plain.note());
    Player player = flute(number, peak);
    return new Player(
        player.name(),
        player.instrument(),
        player.part(),
        List.of(new Skill(bouncing, player.skills().get(0).capability())),
        player.busy());
  }

  private static Player flute(int number, double peak) {
    return Invented.player("Flute " + number, Invented.instrument("flute"), peak, 8, 20, 8);
  }

  /** Four sixteenths on each of these quarters, at one quarter a second. */
  private static Line bars(int... quarters) {
    List<Stroke> strokes = new ArrayList<>();
    for (int quarter : quarters) {
      for (int i = 0; i < 4; i++) {
        strokes.add(
            Invented.stroke(
                Position.ofQuarters(4 * quarter + i, 4), Length.ofQuarters(1, 4), Invented.A4));
      }
    }
    return Invented.lineOf(strokes, 60);
  }

  /** The strokes from one number to before another, and so on. */
  private static Line only(Line line, int... bounds) {
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < bounds.length; i += 2) {
      IntStream.range(bounds[i], bounds[i + 1]).forEach(kept::add);
    }
    return line.only(kept, false);
  }

  private static Player flute(int number) {
    return flute(number, 13);
  }

  private static Player with(GivenStretch busy, int number) {
    Player free = flute(number);
    return new Player(free.name(), free.instrument(), free.part(), free.skills(), List.of(busy));
  }

  private static Plan plan(Brief brief) {
    return Splitter.split(brief, () -> false)
        .match(
            best -> best.plan(),
            none -> fail(none.reasons().toString()),
            stopped -> fail("stopped"));
  }

  private static Brief doubled(Brief brief) {
    return new Brief(List.of(brief.line(), brief.line()), brief.players(), brief.rules());
  }

  private static Hocket hocket(Random random) {
    return Hocket.values()[1 + random.nextInt(3)];
  }

  private static int compare(Brief brief) {
    OptionalInt expected = AllRelays.cheapest(brief);
    Assume.that(expected.isPresent());
    assertEquals(expected.getAsInt(), cost(brief), brief::toString);
    return expected.getAsInt();
  }

  private static void compareMostWithPlan(Brief brief) {
    Statistics.label("with a plan")
        .collect(compare(brief) >= 0)
        .coverage(plan -> plan.check(true).count(count -> count >= 20));
  }

  private static int cost(Brief brief) {
    return Splitter.split(brief, () -> false)
        .match(
            best -> {
              Verdict verdict = Judge.judge(best.plan());
              assertTrue(verdict.holds(), () -> verdict.findings().toString());
              assertEquals(best.cost(), verdict.cost().total());
              return best.cost();
            },
            none -> -1,
            stopped -> -2);
  }
}
