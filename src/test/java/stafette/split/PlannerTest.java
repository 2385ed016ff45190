package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Costing;
import stafette.check.Judge;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

class PlannerTest {
  private static final Instrument FLUTE = Invented.instrument("flute");

  /**
   * N. Rimsky-Korsakov, Principles of Orchestration (tr. E. Agate, 1922), "Transference of passages
   * and phrases": the last note of each part coincides with the first note of the next.
   */
  @Test
  void the_last_note_of_each_player_is_the_first_of_the_next_and_falls_on_a_beat() {
    Plan plan = best(Invented.brief(Invented.line(16, 3, 240), flutes(3)));
    assertTrue(plan.handoffs().size() > 2);
    for (Handoff handoff : plan.handoffs()) {
      assertEquals(1, handoff.shared());
      assertTrue(plan.line().rank(handoff.leaves().last()).ordinal() <= 1);
    }
  }

  @Test
  void the_principal_starts_and_players_who_are_alike_come_in_the_order_listed() {
    Plan plan = best(Invented.brief(Invented.line(16, 3, 240), flutes(4)));
    List<Integer> order = plan.segments().stream().map(Segment::player).distinct().toList();
    assertEquals(order.stream().sorted().toList(), order);
    assertEquals(0, plan.segments().get(0).player());
  }

  @Test
  void a_line_within_one_players_reach_is_left_to_one_player_unless_others_were_named() {
    Brief named = Invented.brief(Invented.line(4, 2, 90), flutes(3));
    List<Player> proposed = named.players().stream().map(Player::proposed).toList();
    assertEquals(List.of(new Segment(0, 0, 0, 31)), best(named.with(proposed)).segments());
    Plan two = new Plan(named, List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 31)));
    assertTrue(Costing.of(best(named)).total() < Costing.of(two).total());
    assertEquals(
        List.of(0, 1, 2), best(named).segments().stream().map(Segment::player).distinct().toList());
  }

  @Test
  void sixteen_equal_bars_are_split_at_least_as_well_as_by_the_best_regular_rotation() {
    Line line = Invented.line(16, 3, 240);
    Brief brief = Invented.brief(line, flutes(3));
    int rotation = Integer.MAX_VALUE;
    for (int unit : new int[] {3, 6, 12, 24, 48}) {
      List<Segment> segments = new ArrayList<>();
      for (int first = 0; first < line.count(); first += unit) {
        segments.add(
            new Segment((first / unit) % 3, 0, first, Math.min(line.count() - 1, first + unit)));
      }
      Plan regular = new Plan(brief, segments);
      if (Judge.judge(regular).holds()) {
        rotation = Math.min(rotation, Costing.of(regular).total());
      }
    }
    assertTrue(rotation < Integer.MAX_VALUE);
    assertTrue(cost(brief).getAsInt() <= rotation);
  }

  /**
   * Overlaps of three and segments of five leave no room: the third player may enter only when the
   * first has left.
   */
  @Test
  void where_three_overlaps_meet_no_stroke_is_played_by_three() {
    Line line = Invented.line(13, 4, 150, i -> Invented.A4);
    Player[] players = new Player[4];
    for (int i = 0; i < players.length; i++) {
      players[i] = Invented.player("player " + i, FLUTE, 11, 0.001, 4.5, 0.05);
    }
    Rules rules = with(new OverlapRule(3, OptionalInt.of(3)));
    Brief brief = new Brief(line, List.of(players), rules);
    Optional<Plan> plan =
        Splitter.split(brief, () -> false)
            .match(b -> Optional.of(b.plan()), n -> Optional.empty(), s -> Optional.empty());
    assertEquals(AllPlans.of(brief).cheapest().isPresent(), plan.isPresent());
    Brief looser = new Brief(line, List.of(players), with(new OverlapRule(2, OptionalInt.of(3))));
    Plan tight = best(looser);
    assertEquals(AllPlans.of(looser).cheapest(), cost(looser));
    for (int k = 2; k < tight.segments().size(); k++) {
      assertTrue(tight.segments().get(k).first() > tight.segments().get(k - 2).last());
    }
    assertTrue(
        java.util.stream.IntStream.range(2, tight.segments().size())
            .anyMatch(
                k -> tight.segments().get(k).first() == tight.segments().get(k - 2).last() + 1),
        "the rule is not at its limit here: " + tight.segments());
  }

  @Test
  void after_a_silence_the_next_player_begins_with_nothing_shared_and_at_no_cost() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      int late = i < 12 ? 0 : 8;
      Pitch pitch = i < 12 ? Invented.A4 : new Pitch(Step.C, 0, 3);
      strokes.add(
          Invented.stroke(Position.ofQuarters(i + late, 4), Length.ofQuarters(1, 4), pitch));
    }
    Instrument low = Invented.instrument("bassoon", new Range(40, 60), Optional.empty());
    Brief brief =
        Invented.brief(
            Invented.lineOf(strokes, 120),
            Invented.player("Flute 1", FLUTE, 13, 12, 20, 8),
            Invented.player("Bassoon 1", low, 13, 12, 20, 8));
    Plan plan = best(brief);
    assertEquals(0, plan.handoffs().get(0).shared());
    assertEquals(0, Costing.of(plan).handoffs().get(0).total());
  }

  @Test
  void no_plan_names_the_note_that_nobody_has() {
    Line line = Invented.line(16, 4, 60, i -> i == 9 ? new Pitch(Step.C, 0, 2) : Invented.A4);
    Reason reason = reasons(Invented.brief(line, flutes(2))).get(0);
    assertEquals("bar 1, second quarter of beat 3", reason.place().orElseThrow().at().toString());
    assertTrue(
        reason.text().toString().contains("C2 is out of the range"), reason.text().toString());
  }

  @Test
  void no_plan_names_the_rate_that_nobody_reaches() {
    Reason reason = reasons(Invented.brief(Invented.line(2, 4, 240), flutes(3))).get(0);
    assertTrue(
        reason.text().toString().contains("16.0 notes a second are beyond the peak"),
        reason.text().toString());
  }

  @Test
  void no_plan_says_when_all_together_are_too_few() {
    Brief brief = Invented.brief(Invented.line(16, 3, 240), flutes(1));
    assertTrue(
        reasons(brief).get(0).text().toString().contains("add a player"),
        reasons(brief).toString());
  }

  @Property(tries = 150)
  void one_player_more_never_raises_the_cost_by_more_than_it_costs_to_leave_it_out(
      @ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 4);
    List<Player> fewer = brief.players().subList(0, brief.players().size() - 1);
    int idle = Costing.idle(brief, brief.players().size() - 1);
    assertNoDearer(brief, new Brief(brief.line(), fewer, brief.rules()), idle);
  }

  @Property(tries = 150)
  void looser_limits_raise_the_cost_at_most_by_what_it_costs_to_leave_out_who_becomes_able(
      @ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 3);
    List<Player> looser =
        brief.players().stream()
            .map(p -> p.with(p.skills().stream().map(PlannerTest::loosened).toList()))
            .toList();
    Brief after = new Brief(brief.line(), looser, brief.rules());
    int idle =
        IntStream.range(0, looser.size())
            .map(player -> Costing.idle(after, player) - Costing.idle(brief, player))
            .sum();
    assertNoDearer(after, brief, idle);
  }

  @Property(tries = 60)
  void the_same_brief_gives_the_same_plan(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 4);
    assertEquals(Splitter.split(brief, () -> false), Splitter.split(brief, () -> false));
  }

  private static Skill loosened(Skill skill) {
    Capability c = skill.capability();
    return new Skill(
        skill.technique(),
        new Capability(
            c.peakMilli() + 500,
            c.sustainedMilli() + 400,
            c.staminaMilli() + 300,
            c.recoveryMillis(),
            c.movingMilli() == Capability.UNLIMITED ? c.movingMilli() : c.movingMilli() + 500));
  }

  private static void assertNoDearer(Brief richer, Brief poorer, int but) {
    OptionalInt before = cost(poorer);
    OptionalInt after = cost(richer);
    assertFalse(before.isPresent() && after.isEmpty());
    assertTrue(
        before.isEmpty() || after.getAsInt() <= before.getAsInt() + but,
        () -> before + " " + after);
  }

  private static Rules with(OverlapRule overlap) {
    Rules rules = Invented.rules();
    return new Rules(rules.assurance(), overlap, 0, rules.favour(), rules.weights());
  }

  private static Player[] flutes(int count) {
    Player[] players = new Player[count];
    for (int i = 0; i < count; i++) {
      players[i] = Invented.player("Flute " + (i + 1), FLUTE, 13, 8, 20, 8);
    }
    return players;
  }

  private static List<Reason> reasons(Brief brief) {
    return Splitter.split(brief, () -> false)
        .match(best -> List.of(), SplitResult.None::reasons, stopped -> List.of());
  }

  private static Plan best(Brief brief) {
    return Splitter.split(brief, () -> false)
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
    return Splitter.split(brief, () -> false)
        .match(
            best -> OptionalInt.of(best.cost()),
            none -> OptionalInt.empty(),
            stopped -> OptionalInt.empty());
  }

  /** Four seconds of sixteenths, with something of the player's own right before and after. */
  @Test
  void the_line_may_touch_what_the_score_gives_on_both_sides() {
    Line line = Invented.line(2, 4, 120);
    Brief touching = readyAtOnce(line, -1_000_000, 0, 4_000_000, 5_000_000);
    Plan plan = best(touching);
    assertEquals(List.of(new Segment(0, 0, 0, 31)), plan.segments());
    assertTrue(Judge.judge(plan).holds());
    assertEquals(OptionalInt.empty(), cost(readyAtOnce(line, -1_000_000, 1, 5_000_000, 6_000_000)));
    assertEquals(OptionalInt.empty(), cost(readyAtOnce(line, -1_000_000, 0, 3_999_999, 6_000_000)));
  }

  @Test
  void the_place_where_nobody_is_free_is_not_the_one_beside_it() {
    List<Reason> reasons =
        reasons(readyAtOnce(Invented.line(1, 4, 120), -1_000_000, 0, 250_000, 375_000));
    assertEquals(
        "Piano, bar 1, second half of beat 1", reasons.get(0).place().orElseThrow().toString());
  }

  private static Brief readyAtOnce(Line line, long from, long to, long again, long end) {
    Player free = Invented.player("One", FLUTE, 10, 9, 20, 8);
    Player busy =
        new Player(
            free.name(),
            free.instrument(),
            free.part(),
            free.skills(),
            List.of(
                new GivenStretch(from, to, List.of(from)),
                new GivenStretch(again, end, List.of(again))));
    return new Brief(line, List.of(busy), Invented.rules().withReady(0));
  }

  /**
   * Rate 12, sustained 9, stamina 12: spent after 48 strokes to the last. By weights that shun
   * handoffs the cheapest plan uses just that.
   */
  @Test
  void what_ends_exactly_at_a_limit_is_not_missed() {
    Brief brief =
        Invented.brief(
            Invented.line(5, 3, 240),
            Invented.player("Flute 1", Invented.instrument("flute"), 13.899, 9, 12, 6),
            Invented.player("Flute 2", Invented.instrument("flute"), 12.1, 7.5, 13, 8));
    Segment whole = new Segment(0, 0, 0, 48);
    Plan edge = new Plan(brief, List.of(whole, new Segment(1, 0, 48, brief.line().count() - 1)));
    assertTrue(Judge.judge(edge).holds());
    Brief locked =
        brief.with(brief.rules().with(List.of(new Lock.Exactly(0, 0, OptionalInt.empty(), 0, 48))));
    SplitResult result = Splitter.split(locked, () -> false);
    assertTrue(result instanceof SplitResult.Best, String.valueOf(result));
  }
}
