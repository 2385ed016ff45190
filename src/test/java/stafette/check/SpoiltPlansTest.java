package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.check.Finding.FindingKind.BREATH;
import static stafette.check.Finding.FindingKind.BUSY;
import static stafette.check.Finding.FindingKind.MOVING;
import static stafette.check.Finding.FindingKind.OVERLAP;
import static stafette.check.Finding.FindingKind.PEAK;
import static stafette.check.Finding.FindingKind.RANGE;
import static stafette.check.Finding.FindingKind.REST;
import static stafette.check.Finding.FindingKind.SHAPE;
import static stafette.check.Finding.FindingKind.TECHNIQUE;
import static stafette.check.Finding.FindingKind.TIREDNESS;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Grade;
import stafette.limits.Groups;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.GivenStretch;
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

/** One good plan, and what the judge says when one thing in it is spoilt. */
class SpoiltPlansTest {
  /** Four bars of sixteenths at 120: 8 a second, a bar of 16 in two seconds. */
  private static final Line LINE = Invented.line(4, 4, 120);

  private static final Instrument PIPE = Invented.instrument("pipe");
  private static final Player ONE = Invented.player("One", PIPE, 10, 7, 20, 8);
  private static final Player TWO = Invented.player("Two", PIPE, 10, 7, 20, 8);
  private static final Player THREE = Invented.player("Three", PIPE, 10, 7, 20, 8);

  private static final List<Segment> GOOD =
      List.of(
          new Segment(0, 0, 0, 16),
          new Segment(1, 0, 16, 32),
          new Segment(0, 0, 32, 48),
          new Segment(1, 0, 48, 63));

  private static List<Finding.FindingKind> kinds(Plan plan) {
    return Judge.judge(plan).findings().stream().map(Finding::kind).toList();
  }

  private static List<Finding.FindingKind> kinds(List<Segment> segments) {
    return kinds(new Plan(Invented.brief(LINE, ONE, TWO, THREE), segments));
  }

  private static List<Finding.FindingKind> kinds(Line line, Player player) {
    return kinds(alone(line, player));
  }

  private static Plan alone(Line line, Player player) {
    return new Plan(Invented.brief(line, player), List.of(new Segment(0, 0, 0, line.count() - 1)));
  }

  @Test
  void the_good_plan_holds() {
    assertEquals(List.of(), kinds(GOOD));
    assertTrue(Judge.judge(new Plan(Invented.brief(LINE, ONE, TWO), GOOD)).holds());
  }

  @Test
  void a_gap_between_two_segments() {
    assertEquals(
        List.of(SHAPE), kinds(List.of(new Segment(0, 0, 0, 30), new Segment(1, 0, 32, 63))));
  }

  @Test
  void a_line_without_its_beginning_or_its_end() {
    assertEquals(List.of(SHAPE), kinds(List.of(new Segment(0, 0, 1, 63))));
    assertEquals(List.of(SHAPE), kinds(List.of(new Segment(0, 0, 0, 62))));
  }

  @Test
  void three_players_at_once() {
    assertEquals(
        List.of(SHAPE),
        kinds(
            List.of(
                new Segment(0, 0, 0, 16), new Segment(1, 0, 13, 18), new Segment(2, 0, 16, 63))));
  }

  @Test
  void segments_out_of_order() {
    assertEquals(
        List.of(SHAPE, OVERLAP),
        kinds(List.of(new Segment(0, 0, 0, 63), new Segment(1, 0, 16, 63))));
  }

  @Test
  void a_player_who_follows_itself() {
    List<Finding.FindingKind> kinds =
        kinds(List.of(new Segment(0, 0, 0, 16), new Segment(0, 0, 16, 63)));
    assertTrue(kinds.contains(SHAPE), kinds.toString());
  }

  @Test
  void nothing_shared_although_the_line_goes_on() {
    assertEquals(
        List.of(OVERLAP), kinds(List.of(new Segment(0, 0, 0, 15), new Segment(1, 0, 16, 63))));
  }

  @Test
  void a_beat_may_be_shared_and_one_stroke_more_may_not() {
    assertEquals(List.of(), kinds(List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 12, 63))));
    assertEquals(
        List.of(OVERLAP), kinds(List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 11, 63))));
  }

  @Test
  void an_overlap_counted_in_strokes() {
    OverlapRule twoOrThree = new OverlapRule(2, OptionalInt.of(3));
    for (int shared = 1; shared <= 4; shared++) {
      List<Segment> segments =
          List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 17 - shared, 63));
      assertEquals(
          shared == 2 || shared == 3 ? List.of() : List.of(OVERLAP),
          kinds(new Plan(new Brief(LINE, List.of(ONE, TWO), rules(twoOrThree)), segments)),
          shared + " shared");
    }
  }

  private static Rules rules(OverlapRule overlap) {
    return new Rules(
        Assurance.DEFAULT, overlap, Rules.DEFAULT_READY_SECONDS, Favour.BALANCE, Invented.WEIGHTS);
  }

  @Test
  void over_a_rest_of_the_line_nothing_need_be_shared() {
    Line line = withRest(16, 4);
    Brief brief = Invented.brief(line, ONE, TWO);
    assertEquals(
        List.of(),
        kinds(new Plan(brief, List.of(new Segment(0, 0, 0, 15), new Segment(1, 0, 16, 31)))));
    Line shorter = withRest(16, 3);
    assertEquals(
        List.of(OVERLAP),
        kinds(
            new Plan(
                Invented.brief(shorter, ONE, TWO),
                List.of(new Segment(0, 0, 0, 15), new Segment(1, 0, 16, 31)))));
  }

  /** Thirty-two sixteenths at 120 with a rest of so many sixteenths before one of them. */
  private static Line withRest(int before, int sixteenths) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 32; i++) {
      strokes.add(
          Invented.stroke(
              Position.ofQuarters(i < before ? i : i + sixteenths, 4),
              Length.ofQuarters(1, 4),
              Invented.A4));
    }
    return Invented.lineOf(strokes, 120);
  }

  /** Out from the end of stroke 16 to the onset of 20 is 3/8 s, to 21 it is half a second. */
  @Test
  void an_entry_with_less_than_half_a_second_of_rest() {
    assertEquals(
        List.of(REST),
        kinds(
            List.of(
                new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 20), new Segment(0, 0, 20, 63))));
    assertEquals(
        List.of(),
        kinds(
            List.of(
                new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 21), new Segment(0, 0, 21, 63))));
  }

  @Test
  void winds_never_get_less_rest_than_a_catch_breath_takes() {
    Player wind = Invented.player("Wind", windPipe(new Breath(99, 0.6, 1, Map.of())), 10, 7, 20, 8);
    List<Segment> segments =
        List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 21), new Segment(0, 0, 21, 63));
    assertEquals(List.of(REST), kinds(new Plan(Invented.brief(LINE, wind, TWO), segments)));
  }

  private static Instrument windPipe(Breath breath) {
    return Invented.instrument("wind pipe", new Range(60, 96), Optional.of(breath));
  }

  @Test
  void a_note_out_of_range() {
    Line low = Invented.line(16, 4, 120, i -> i == 9 ? new Pitch(Step.B, 0, 3) : Invented.A4);
    List<Finding> findings = Judge.judge(alone(low, ONE)).findings();
    assertEquals(List.of(RANGE), findings.stream().map(Finding::kind).toList());
    assertEquals("One, bar 1, second quarter of beat 3", findings.get(0).place().toString());
  }

  @Test
  void a_rate_beyond_the_peak() {
    assertEquals(
        List.of(PEAK),
        kinds(Invented.line(4, 4, 160), Invented.player("One", PIPE, 10, 10, 99, 8)));
    assertEquals(
        List.of(), kinds(Invented.line(4, 4, 150), Invented.player("One", PIPE, 10, 10, 99, 8)));
  }

  @Test
  void changing_notes_beyond_the_moving_rate_and_repeated_ones_that_go() {
    Player slow =
        new Player(
            "Slow",
            PIPE,
            Optional.empty(),
            List.of(
                new Skill(
                    PIPE.techniques().get(0), new Capability(10_000, 9_000, 99_000, 8_000, 7_000))),
            List.of());
    Line changing = Invented.line(16, 4, 120, i -> new Pitch(i % 2 == 0 ? Step.C : Step.D, 0, 5));
    assertEquals(List.of(MOVING), kinds(changing, slow));
    assertEquals(List.of(), kinds(Invented.line(1, 4, 120), slow));
  }

  /** 63 gaps at 8 a second spend 7.875 strokes of stamina. */
  @Test
  void a_player_who_tires_before_the_end() {
    assertEquals(List.of(TIREDNESS), kinds(LINE, Invented.player("One", PIPE, 10, 7, 7.8, 8)));
    assertEquals(List.of(), kinds(LINE, Invented.player("One", PIPE, 10, 7, 7.9, 8)));
  }

  /** 64 sixteenths at 120 sound for eight seconds. */
  @Test
  void a_player_who_runs_out_of_air() {
    assertEquals(
        List.of(BREATH),
        kinds(
            LINE,
            Invented.player("One", windPipe(new Breath(7.9, 0.4, 1, Map.of())), 10, 9, 9, 8)));
    assertEquals(
        List.of(),
        kinds(
            LINE, Invented.player("One", windPipe(new Breath(8, 0.4, 1, Map.of())), 10, 9, 9, 8)));
  }

  @Test
  void a_player_whom_the_score_already_gives_something() {
    assertEquals(List.of(BUSY), kinds(LINE, busy(3_000_000, 4_000_000)));
    assertEquals(List.of(BUSY), kinds(LINE, busy(7_900_000, 9_000_000)));
  }

  @Test
  void the_own_part_may_follow_at_once_and_must_leave_time_before() {
    assertEquals(List.of(), kinds(LINE, busy(8_000_000, 9_000_000)));
    assertEquals(List.of(), kinds(LINE, busy(-1_500_000, -500_000)));
    assertEquals(List.of(REST), kinds(LINE, busy(-1_500_000, -499_999)));
  }

  /** Two that share an edge share no time; there only the rest between them may be too short. */
  @Test
  void what_the_score_gives_may_touch_an_entry_where_no_rest_is_asked_for() {
    Player before = busy(-1_500_000, 0);
    assertEquals(List.of(REST), kinds(LINE, before));
    Plan plan = alone(LINE, before);
    assertEquals(List.of(), kinds(new Plan(readyAtOnce(plan.brief()), plan.segments())));
    assertEquals(
        List.of(BUSY),
        kinds(new Plan(readyAtOnce(alone(LINE, busy(-1_500_000, 1)).brief()), plan.segments())));
    assertEquals(List.of(BUSY), kinds(LINE, busy(7_999_999, 9_000_000)));
  }

  /** One leaves a relay with the note that ends where its entry into the other one stands. */
  @Test
  void a_players_own_segments_may_touch_where_no_rest_is_asked_for() {
    List<Segment> segments =
        List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 17), new Segment(0, 0, 17, 63));
    Brief brief = Invented.brief(LINE, ONE, TWO);
    assertEquals(List.of(REST), kinds(new Plan(brief, segments)));
    assertEquals(List.of(), kinds(new Plan(readyAtOnce(brief), segments)));
  }

  private static Brief readyAtOnce(Brief brief) {
    return brief.with(brief.rules().withReady(0));
  }

  private static Player busy(long from, long to) {
    return with(
        Invented.player("One", PIPE, 10, 8, 20, 8), new GivenStretch(from, to, List.of(from)));
  }

  private static Player with(Player player, GivenStretch... busy) {
    return new Player(
        player.name(), player.instrument(), player.part(), player.skills(), List.of(busy));
  }

  /** 63 gaps at 8 a second spend 7.875 of 8 strokes; four more at 8 a second in its own part. */
  @Test
  void what_the_plan_takes_is_missed_in_the_own_part() {
    List<Long> after = List.of(8_000_000L, 8_125_000L, 8_250_000L, 8_375_000L);
    Player tired =
        with(
            Invented.player("One", PIPE, 10, 7, 8, 8),
            new GivenStretch(8_000_000L, 8_500_000L, after));
    List<Finding> findings = Judge.judge(alone(LINE, tired)).findings();
    assertEquals(List.of(TIREDNESS), findings.stream().map(Finding::kind).toList());
    assertTrue(findings.get(0).message().toString().contains("own part"), findings.toString());
  }

  @Test
  void an_own_part_that_is_too_fast_anyway_is_not_held_against_the_plan() {
    List<Long> frantic = new ArrayList<>();
    for (long at = 8_000_000; at < 12_000_000; at += 50_000) {
      frantic.add(at);
    }
    Player player =
        with(
            Invented.player("One", PIPE, 10, 9, 8, 8),
            new GivenStretch(8_000_000L, 12_000_000L, frantic));
    List<Finding.FindingKind> kinds = kinds(LINE, player);
    assertEquals(List.of(), kinds);
  }

  @Test
  void a_technique_in_threes_plays_them_wherever_it_enters() {
    Line triplets = Invented.line(4, 3, 120);
    Player triple = player(technique(Groups.THREES, false, 0), 60_000);
    Player single = Invented.player("Single", PIPE, 10, 10, 9, 8);
    Brief brief = Invented.brief(triplets, single, triple);
    assertEquals(
        List.of(),
        kinds(new Plan(brief, List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 47)))));
  }

  @Test
  void a_technique_in_threes_does_not_play_fours() {
    assertEquals(
        List.of(TECHNIQUE), kinds(LINE, player(technique(Groups.THREES, false, 0), 60_000)));
  }

  @Test
  void a_technique_below_its_lowest_rate() {
    assertEquals(
        List.of(TECHNIQUE), kinds(LINE, player(technique(Groups.ANY, false, 8.1), 60_000)));
    assertEquals(List.of(), kinds(LINE, player(technique(Groups.ANY, false, 8), 60_000)));
  }

  /** D, G and A natural have no twin (Kuntz, harp notes for composers). */
  @Test
  void twin_strings_where_the_pedals_give_none() {
    Player harp = player(technique(Groups.ANY, true, 0), 60_000);
    assertEquals(List.of(TECHNIQUE), kinds(LINE, harp));
    assertEquals(List.of(), kinds(Invented.line(16, 4, 120, i -> new Pitch(Step.A, -1, 4)), harp));
  }

  private static Technique technique(Groups groups, boolean twins, double lowest) {
    return new Technique(
        "a way",
        twins ? Act.STRING : Act.TONGUE,
        Technique.Pitches.ANY,
        Technique.SlurUse.ANY,
        groups,
        twins,
        1,
        true,
        new Limit(12, 1.5, 10, OptionalDouble.empty(), 8, OptionalDouble.empty()),
        lowest,
        Map.of(),
        new Source("invented for a test", Grade.D),
        "");
  }

  private static Player player(Technique technique, int staminaMilli) {
    Capability capability =
        new Capability(20_000, 18_000, staminaMilli, 8_000, Capability.UNLIMITED);
    return new Player(
        "Special", PIPE, Optional.empty(), List.of(new Skill(technique, capability)), List.of());
  }
}
