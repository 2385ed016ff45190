package stafette.split.rotate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.split.Reason;
import stafette.split.SmallBriefs;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.time.Length;
import stafette.time.Position;

class RegularTest {
  private static final Instrument FLUTE = Invented.instrument("flute");

  @Property(tries = 100)
  void the_search_finds_what_trying_every_rotation_finds(@ForAll long seed) {
    Brief brief = regular(SmallBriefs.of(seed, 14, 3));
    OptionalInt expected = AllRotations.cheapest(brief);
    OptionalInt found =
        RotationOrCheapest.of(brief, () -> false)
            .match(
                best -> OptionalInt.of(costOf(best)),
                none -> OptionalInt.empty(),
                stopped -> OptionalInt.of(-1));
    assertEquals(expected, found, brief::toString);
  }

  @Property(tries = 40)
  void it_does_so_under_locks_too(
      @ForAll long seed,
      @ForAll @IntRange(max = 3) int what,
      @ForAll @IntRange(max = 13) int stroke,
      @ForAll @IntRange(max = 3) int more) {
    Brief free = SmallBriefs.of(seed, 14, 3);
    int first = Math.min(stroke, free.line().count() - 1);
    int last = Math.min(first + more, free.line().count() - 1);
    int player = free.players().size() - 1;
    Lock lock =
        switch (what) {
          case 0 -> new Lock.In(0, player, first, last);
          case 1 -> new Lock.Out(0, player, first, last);
          case 2 -> new Lock.Exactly(0, player, OptionalInt.empty(), 0, last);
          default -> new Lock.At(0, first, last);
        };
    Brief brief = regular(free.with(free.rules().with(List.of(lock))));
    assertEquals(AllRotations.cheapest(brief), cost(brief), brief::toString);
  }

  @Test
  void several_lines_at_once_are_refused_with_the_reason() {
    Line line = Invented.line(4, 3, 200);
    Brief brief = new Brief(List.of(line, line), List.of(flutes(4)), Invented.rules());
    List<Reason> reasons =
        RotationOrCheapest.of(regular(brief), () -> false)
            .match(best -> List.of(), SplitResult.None::reasons, stopped -> List.of());
    assertTrue(reasons.get(0).text().toString().contains("one line at a time"), reasons.toString());
  }

  private static OptionalInt cheapest(Brief brief) {
    return Splitter.split(brief, () -> false).leastCost();
  }

  private static int costOf(SplitResult.Best best) {
    Verdict verdict = Judge.judge(best.plan());
    assertTrue(verdict.holds() && verdict.keepsMargin(), () -> verdict.findings().toString());
    assertEquals(best.cost(), verdict.cost().total());
    return best.cost();
  }

  @Property(tries = 30)
  void a_stopped_search_gives_a_rotation_that_holds_and_a_bound_below_the_best(
      @ForAll long seed, @ForAll byte patience) {
    Brief brief = regular(SmallBriefs.of(seed, 14, 4));
    AtomicInteger asked = new AtomicInteger();
    SplitResult stopped =
        RotationOrCheapest.of(brief, () -> asked.incrementAndGet() > Math.abs(patience));
    OptionalInt best = AllRotations.cheapest(brief);
    int bound = stopped.match(b -> b.cost(), none -> Integer.MAX_VALUE, SplitResult.Stopped::bound);
    assertTrue(best.isEmpty() || bound <= best.getAsInt());
    stopped.match(
        b -> costOf(b),
        none -> 0,
        s -> s.plan().map(p -> costOf(new SplitResult.Best(p, s.cost().orElseThrow()))).orElse(0));
  }

  @Property(tries = 30)
  void no_rotation_costs_less_than_the_best_plan(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 4);
    OptionalInt plan = cheapest(brief);
    OptionalInt rotation = cost(regular(brief));
    assertFalse(rotation.isPresent() && plan.isEmpty());
    assertTrue(rotation.isEmpty() || plan.getAsInt() <= rotation.getAsInt());
  }

  @Test
  void sixteen_equal_bars_are_split_at_least_as_well_as_by_the_best_regular_rotation() {
    for (int players = 2; players <= 5; players += 3) {
      for (int speed = 180; speed <= 240; speed += 30) {
        Brief brief = Invented.brief(Invented.line(16, 3, speed), flutes(players));
        OptionalInt rotation = cost(regular(brief));
        assertTrue(rotation.isEmpty() || cheapest(brief).getAsInt() <= rotation.getAsInt());
      }
    }
  }

  @Test
  void the_players_take_turns_in_one_order_and_land_where_the_next_unit_begins() {
    Plan plan = best(regular(Invented.brief(Invented.line(16, 3, 240), flutes(3))));
    List<Segment> segments = plan.segments();
    int unit = segments.get(1).first();
    assertTrue(List.of(3, 6, 12, 24, 48).contains(unit), segments.toString());
    int players = (int) segments.stream().map(Segment::player).distinct().count();
    for (int k = 0; k < segments.size(); k++) {
      assertEquals(k * unit, segments.get(k).first());
      assertEquals(segments.get(k % players).player(), segments.get(k).player());
      assertEquals(segments.get(k % players).way(), segments.get(k).way());
    }
    plan.handoffs().forEach(handoff -> assertEquals(1, handoff.shared()));
  }

  @Test
  void sixteen_players_who_are_alike_are_no_more_work_than_they_have_turns() {
    Plan plan = best(regular(Invented.brief(Invented.line(16, 4, 150), flutes(16))));
    assertEquals(0, plan.segments().get(0).player());
    assertEquals(1, plan.segments().get(1).player());
  }

  @Test
  void the_order_brings_players_of_one_instrument_together() {
    Instrument clarinet = Invented.instrument("clarinet");
    Brief brief =
        Invented.brief(
            Invented.line(4, 3, 240),
            Invented.player("Flute 1", FLUTE, 13, 4, 8, 1),
            Invented.player("Clarinet 1", clarinet, 13, 4, 8, 1),
            Invented.player("Flute 2", FLUTE, 13, 4, 8, 1),
            Invented.player("Clarinet 2", clarinet, 13, 4, 8, 1));
    Plan plan = best(regular(brief));
    assertEquals(AllRotations.cheapest(brief).getAsInt(), Judge.judge(plan).cost().total());
  }

  @Test
  void a_pickup_belongs_to_the_first_turn() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 34; i++) {
      strokes.add(
          Invented.stroke(Position.ofQuarters(14 + i, 4), Length.ofQuarters(1, 4), Invented.A4));
    }
    Line line = Invented.lineOf(strokes, 150);
    assertEquals(List.of(0, 18), RotationUnit.BAR.starts(line));
    assertEquals(List.of(0, 10, 18, 26), RotationUnit.HALF_BAR.starts(line));
    assertEquals(List.of(0), RotationUnit.TWO_BARS.starts(line));
  }

  @Test
  void a_short_rest_at_the_beginning_does_not_move_the_first_bar() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 1; i < 32; i++) {
      strokes.add(Invented.stroke(Position.ofQuarters(i, 4), Length.ofQuarters(1, 4), Invented.A4));
    }
    assertEquals(List.of(0, 15), RotationUnit.BAR.starts(Invented.lineOf(strokes, 150)));
  }

  @Test
  void a_note_alone_in_the_last_unit_is_the_landing_note_and_nobodys_turn() {
    Line line = Invented.line(33, 4, 150, i -> Invented.A4);
    Plan plan = best(regular(Invented.brief(line, flutes(2))));
    Segment last = plan.segments().get(plan.segments().size() - 1);
    assertTrue(last.strokes() > 1, plan.segments().toString());
    assertEquals(32, last.last());
  }

  @Test
  void a_leaving_instrument_that_speaks_slowly_gets_the_overlap_it_asks_for() {
    Line line = Invented.line(8, 4, 150);
    Rules rules = Invented.rules();
    Brief brief =
        new Brief(
            line,
            List.of(flutes(2)),
            new Rules(
                rules.assurance(),
                OverlapRule.DEFAULT,
                0,
                Favour.REGULAR,
                withTarget(rules.weights(), "flute", 2)));
    assertEquals(
        List.of(2), best(brief).handoffs().stream().map(Handoff::shared).distinct().toList());
  }

  private static Weights withTarget(Weights w, String instrument, int target) {
    return new Weights(
        w.handoff(),
        w.coverMost(),
        List.of(0, 0, 0, 0),
        List.of(0, 0, 0, 0),
        50,
        Map.of(instrument, target),
        w.strain(),
        w.knee(),
        w.spent(),
        w.tiredKnee(),
        w.breathKnee(),
        w.phrase(),
        w.shortTurn(),
        w.decibel(),
        w.decibelFree(),
        w.register(),
        w.hocket(),
        w.player(),
        w.used(),
        w.idle(),
        w.rotation(),
        w.patternChange(),
        w.blend(),
        w.blendOther());
  }

  @Test
  void where_no_rotation_holds_the_reason_says_what_to_try() {
    List<Reason> reasons =
        RotationOrCheapest.of(
                regular(Invented.brief(Invented.line(4, 4, 240), flutes(2))), () -> false)
            .match(best -> List.of(), SplitResult.None::reasons, stopped -> List.of());
    assertTrue(
        reasons.get(0).text().toString().contains("no regular rotation holds"), reasons.toString());
  }

  private static Brief regular(Brief brief) {
    return brief.with(brief.rules().favouring(Favour.REGULAR, brief.rules().weights()));
  }

  private static Player[] flutes(int count) {
    Player[] players = new Player[count];
    for (int i = 0; i < count; i++) {
      players[i] = Invented.player("Flute " + (i + 1), FLUTE, 13, 8, 20, 8);
    }
    return players;
  }

  private static Plan best(Brief brief) {
    return RotationOrCheapest.of(brief, () -> false)
        .match(
            SplitResult.Best::plan,
            none -> {
              throw new AssertionError(none.reasons().toString());
            },
            stopped -> {
              throw new AssertionError("stopped");
            });
  }

  private static OptionalInt cost(Brief brief) {
    return RotationOrCheapest.of(brief, () -> false)
        .match(
            best -> OptionalInt.of(best.cost()),
            none -> OptionalInt.empty(),
            stopped -> OptionalInt.empty());
  }
}
