package stafette.split.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.limits.Act;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Lock;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.score.Drum;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.split.SmallBriefs;
import stafette.split.rotate.RotationOrCheapest;
import stafette.time.Length;
import stafette.time.Position;

/** Why there is no plan: the smallest set of reasons, and where. */
class ConflictTest {
  private static final Instrument FLUTE = Invented.instrument("flute");

  @Property(tries = 150, maxDiscardRatio = 20)
  void the_constraints_named_leave_no_plan_and_without_any_one_of_them_there_is_one(
      @ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 12, 3);
    Assume.that(hasNone(brief));
    Conflict conflict = conflict(brief);
    assertTrue(conflict.isProven());
    assertFalse(conflict.constraints().isEmpty());
    Set<Constraint> named = EnumSet.copyOf(conflict.constraints());
    Brief stretch = Conflict.stretch(brief, conflict.first(), conflict.last());
    assertTrue(hasNone(Conflict.under(named, stretch)), () -> conflict + " " + brief);
    for (Constraint constraint : conflict.constraints()) {
      Set<Constraint> fewer = EnumSet.copyOf(conflict.constraints());
      fewer.remove(constraint);
      assertFalse(hasNone(Conflict.under(fewer, stretch)), () -> conflict + " " + constraint);
    }
  }

  @Test
  void a_constraint_counts_that_bears_only_once_another_is_thought_away() {
    Brief graceForPlayersWithoutTechniques = SmallBriefs.of(2014, 12, 3);
    assertEquals(
        List.of(Constraint.TIREDNESS), conflict(graceForPlayersWithoutTechniques).constraints());
  }

  @Property(tries = 60, maxDiscardRatio = 20)
  void a_stroke_less_at_the_end_of_the_stretch_has_a_plan(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 12, 3);
    Assume.that(hasNone(brief));
    Conflict conflict = conflict(brief);
    Assume.that(conflict.last() > 0);
    Set<Constraint> named = EnumSet.copyOf(conflict.constraints());
    Brief shorter = Conflict.stretch(brief, 0, conflict.last() - 1);
    assertFalse(hasNone(Conflict.under(named, shorter)), () -> conflict + " " + brief);
  }

  @Property(tries = 300)
  void a_plan_stays_good_with_any_constraint_thought_away(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 12, 3);
    Optional<Plan> plan = AnyPlan.of(brief, () -> false).plan();
    Assume.that(plan.isPresent());
    for (Constraint constraint : Constraint.values()) {
      Plan freer = plan(constraint.thoughtAwayIn(brief), plan.get().segments());
      assertEquals(List.of(), Judge.judge(freer).findings(), () -> constraint + " " + plan);
    }
  }

  /** Where all techniques are one, there is one way. */
  private static Plan plan(Brief freer, List<Segment> segments) {
    return new Plan(
        freer,
        segments.stream()
            .map(
                s ->
                    freer.players().get(s.player()).ways().size() > s.way()
                        ? s
                        : new Segment(s.relay(), s.player(), 0, s.first(), s.last(), s.pattern()))
            .toList());
  }

  @Test
  void hands_that_move_faster_than_they_repeat_tire_no_sooner_when_rates_are_thought_away() {
    Technique tongue = Invented.tonguing("mallets");
    Technique mallets =
        new Technique(
            "mallets",
            Act.MALLET,
            tongue.pitches(),
            tongue.slurs(),
            tongue.groups(),
            false,
            1,
            true,
            tongue.limit(),
            0,
            Map.of(),
            tongue.source(),
            "");
    Skill skill = new Skill(mallets, new Capability(9_000, 2_700, 1_000, 8_000, 12_000));
    Player player = new Player("Bells", FLUTE, Optional.empty(), List.of(skill), List.of());
    Pitch b4 = new Pitch(Step.B, 0, 4);
    Line line = Invented.line(64, 4, 45, i -> i % 2 == 0 ? Invented.A4 : b4);
    Brief brief = Invented.brief(line, player);
    assertFalse(hasNone(brief));
    assertFalse(hasNone(Constraint.RATES.thoughtAwayIn(brief)));
  }

  @Test
  void with_every_constraint_thought_away_anybody_plays_alone() {
    Brief brief =
        Invented.brief(Invented.line(8, 8, 240), Invented.player("Flute 1", FLUTE, 5, 4, 3, 8));
    assertFalse(hasNone(Conflict.under(Set.of(), brief)));
  }

  @Test
  void a_note_that_nobody_has_is_the_only_reason_and_the_only_place() {
    Line line = Invented.line(16, 4, 60, i -> i == 9 ? new Pitch(Step.C, 0, 2) : Invented.A4);
    Brief brief = Invented.brief(line, flute("Flute 1"), flute("Flute 2"));
    Conflict conflict = conflict(brief);
    assertEquals(List.of(Constraint.RANGE), conflict.constraints());
    assertEquals(9, conflict.last());
    assertTrue(
        said(brief).contains("C2 (bar 1, second quarter of beat 3) is out of the range of Flute 1"),
        said(brief));
  }

  @Test
  void a_drum_that_nobody_has_is_called_a_drum() {
    Drum drum = new Drum(Step.C, 5, "");
    Stroke stroke = Invented.stroke(Position.START, Length.ofQuarters(1, 1), drum);
    Brief brief = Invented.brief(Invented.lineOf(List.of(stroke), 60), flute("Flute 1"));
    assertTrue(
        said(brief).contains("a drum (bar 1, beat 1) is out of the range of Flute 1"), said(brief));
    assertTrue(
        RotationOrCheapest.of(brief, () -> false).toString().contains("beat 1: a drum is out of"));
  }

  @Test
  void a_rate_that_nobody_reaches_is_the_only_reason() {
    Brief brief = Invented.brief(Invented.line(2, 4, 240), flute("Flute 1"));
    assertEquals(List.of(Constraint.RATES), conflict(brief).constraints());
    assertTrue(
        said(brief)
            .contains(
                "4 notes at 16.0 a second (bar 1, last quarter of beat 1), and they manage Flute 1 14.3"),
        said(brief));
  }

  @Test
  void one_player_who_tires_names_tiredness() {
    Brief brief = Invented.brief(Invented.line(16, 3, 240), flute("Flute 1"));
    Conflict conflict = conflict(brief);
    assertEquals(List.of(Constraint.TIREDNESS), conflict.constraints());
    assertTrue(conflict.last() < brief.line().count() - 1);
    assertTrue(said(brief).contains("Flute 1 8.0 before they tire"), said(brief));
  }

  @Test
  void one_player_who_runs_out_of_air_names_breath() {
    Breath breath = new Breath(4, 0.4, 1, Map.of());
    Instrument wind = Invented.instrument("flute", new Range(60, 96), Optional.of(breath));
    Brief brief =
        Invented.brief(Invented.line(8, 2, 120), Invented.player("Flute 1", wind, 13, 12, 20, 8));
    assertEquals(List.of(Constraint.BREATH), conflict(brief).constraints());
    assertTrue(said(brief).contains("Flute 1 4 seconds"), said(brief));
  }

  @Test
  void players_who_play_something_else_name_it() {
    Player free = flute("Flute 1");
    Player busy =
        new Player(
            free.name(),
            free.instrument(),
            free.part(),
            free.skills(),
            List.of(new GivenStretch(1_000_000, 1_500_000, List.of(1_000_000L))));
    Brief brief = Invented.brief(Invented.line(2, 4, 60), busy);
    assertEquals(List.of(Constraint.BUSY), conflict(brief).constraints());
    assertTrue(said(brief).contains("gives Flute 1 something else"), said(brief));
  }

  @Test
  void a_player_without_a_technique_names_techniques() {
    Player free = flute("Flute 1");
    Player none = new Player(free.name(), free.instrument(), free.part(), List.of(), List.of());
    Brief brief = Invented.brief(Invented.line(2, 4, 60), none);
    assertEquals(List.of(Constraint.TECHNIQUES), conflict(brief).constraints());
    assertTrue(said(brief).contains("Flute 1 has none"), said(brief));
  }

  @Test
  void two_who_must_rest_longer_than_the_other_lasts_name_rest_among_the_reasons() {
    Line line = Invented.line(4, 4, 120);
    Rules rules = Invented.rules();
    Rules slow = new Rules(rules.assurance(), rules.overlap(), 3, rules.favour(), rules.weights());
    Player one = Invented.player("Flute 1", FLUTE, 13, 6, 3, 0.05);
    Player two = Invented.player("Flute 2", FLUTE, 13, 6, 3, 0.05);
    Brief brief = new Brief(line, List.of(one, two), slow);
    assertTrue(
        conflict(brief).constraints().contains(Constraint.READY), conflict(brief).toString());
    assertTrue(said(brief).contains("up to 3.00 seconds"), said(brief));
  }

  @Test
  void overlaps_that_leave_no_room_are_named_among_the_reasons() {
    Player[] players = new Player[4];
    for (int i = 0; i < players.length; i++) {
      players[i] = Invented.player("Flute " + (i + 1), FLUTE, 11, 0.001, 4.5, 0.05);
    }
    Rules rules = Invented.rules();
    Rules wide =
        new Rules(
            rules.assurance(),
            new OverlapRule(5, OptionalInt.of(5)),
            0,
            rules.favour(),
            rules.weights());
    Brief brief = new Brief(Invented.line(13, 4, 150, i -> Invented.A4), List.of(players), wide);
    assertTrue(
        conflict(brief).constraints().contains(Constraint.OVERLAP), conflict(brief).toString());
    assertTrue(said(brief).contains("two players share just 5"), said(brief));
  }

  @Test
  void locks_that_contradict_each_other_are_the_only_reason() {
    Brief brief = Invented.brief(Invented.line(2, 4, 60), flute("Flute 1"));
    Brief locked = brief.with(brief.rules().with(List.of(new Lock.Out(0, 0, 3, 5))));
    assertEquals(List.of(Constraint.LOCKS), conflict(locked).constraints());
    assertTrue(said(locked).contains("take some locks off"), said(locked));
  }

  @Test
  void without_time_nothing_is_claimed_to_be_the_smallest() {
    Brief brief = Invented.brief(Invented.line(16, 3, 240), flute("Flute 1"));
    assertFalse(Conflict.of(brief, searches -> () -> true).isProven());
    assertEquals(List.of(), WhyNot.of(brief, searches -> () -> true));
  }

  private static Player flute(String name) {
    return Invented.player(name, FLUTE, 13, 8, 20, 8);
  }

  private static String said(Brief brief) {
    return String.join(
        "; ",
        WhyNot.of(brief, n -> () -> false).stream()
            .map(reason -> reason.text().toString())
            .toList());
  }

  private static Conflict conflict(Brief brief) {
    return Conflict.of(brief, searches -> () -> false);
  }

  private static boolean hasNone(Brief brief) {
    return AnyPlan.of(brief, () -> false).isImpossible();
  }
}
