package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Costing;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/**
 * At their very limits: what an overlap may span, what its landing note asks of both players, and
 * what a silence gives back. Locks leave the search one plan, which is there or not.
 */
class SharedAndSilentTest {
  private static final Instrument PIPE = Invented.instrument("pipe");
  private static final Player ONE = Invented.player("One", PIPE, 10, 7, 20, 8);
  private static final Player TWO = Invented.player("Two", PIPE, 10, 7, 20, 8);
  private static final Lock LANDING_ON_16 = new Lock.At(0, 16, 16);

  @Test
  void the_search_shares_exactly_a_beat_and_not_a_hair_more() {
    Lock shareABeat = new Lock.At(0, 12, 16);
    assertTrue(isFound(Invented.brief(entryEarlierBy(0), ONE, TWO), shareABeat));
    assertFalse(isFound(Invented.brief(entryEarlierBy(1), ONE, TWO), shareABeat));
  }

  /** Sixteenths at 120, the thirteenth earlier by so many 1024ths of a beat. */
  private static Line entryEarlierBy(int hairs) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 33; i++) {
      strokes.add(
          Invented.stroke(
              Position.ofQuarters(256L * i - (i == 12 ? hairs : 0), 1024),
              Length.ofQuarters(i == 11 ? 256 - hairs : 256, 1024),
              Invented.A4));
    }
    return Invented.lineOf(strokes, 120);
  }

  @Test
  void the_landing_note_must_be_in_the_range_of_both() {
    Line dips = dipping(new Pitch(Step.B, 0, 3));
    Instrument deep = Invented.instrument("deep", new Range(50, 96), Optional.empty());
    Player low = Invented.player("Low", deep, 10, 7, 20, 8);
    Player other = Invented.player("Other", deep, 10, 7, 20, 8);
    assertTrue(isFound(Invented.brief(dips, low, other), LANDING_ON_16));
    assertFalse(isFound(Invented.brief(dips, low, ONE), exactly(0, 0, 16)));
    assertFalse(isFound(Invented.brief(dips, ONE, low), exactly(0, 0, 16)));
  }

  @Test
  void a_landing_note_out_of_the_comfortable_range_is_paid_by_both() {
    Instrument deep = Invented.instrument("deep", new Range(50, 96), Optional.empty());
    Instrument uneasy =
        new Instrument(
            deep.name(),
            deep.aliases(),
            deep.family(),
            deep.range(),
            Optional.of(new Range(60, 96)),
            deep.transposition(),
            deep.clef(),
            deep.levelDecibel(),
            deep.breath(),
            deep.midiProgram(),
            deep.techniques(),
            deep.source());
    Player one = Invented.player("One", uneasy, 10, 7, 20, 8);
    Player two = Invented.player("Two", uneasy, 10, 7, 20, 8);
    int easy = cost(Invented.brief(dipping(Invented.A4), one, two), LANDING_ON_16);
    int dips = cost(Invented.brief(dipping(new Pitch(Step.B, 0, 3)), one, two), LANDING_ON_16);
    assertEquals(2 * Invented.WEIGHTS.register(), dips - easy);
  }

  /** At the peak rate, once, a stroke takes 1/1.5 of the limit: below the knee. */
  @Test
  void one_close_landing_note_costs_nobody_anything() {
    Player one = Invented.player("One", PIPE, 8, 7, 20, 8);
    Player two = Invented.player("Two", PIPE, 8, 7, 20, 8);
    Brief brief = Invented.brief(upToLandingLateBy(1), one, two);
    assertEquals(0, Costing.segment(brief, new Segment(0, 0, 0, 16)).strain());
    assertEquals(0, Costing.segment(brief, new Segment(1, 0, 16, 32)).strain());
  }

  /** Eighths at 120; those before the landing note come so many sixteenths late. */
  private static Line upToLandingLateBy(int sixteenths) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 33; i++) {
      Position onset = Position.ofQuarters(2L * i + (i < 16 ? sixteenths : 0), 4);
      strokes.add(Invented.stroke(onset, Length.ofQuarters(1, 4), Invented.A4));
    }
    return Invented.lineOf(strokes, 120);
  }

  /** Thirty-three sixteenths at 120; the seventeenth may be another note. */
  private static Line dipping(Pitch landing) {
    return Invented.line(33, 4, 120, i -> i == 16 ? landing : Invented.A4);
  }

  /** Sixteen gaps at 8 a second spend two strokes of stamina, fifteen 1.875. */
  @Test
  void the_landing_note_tires_whoever_leaves() {
    assertTrue(isFound(leaving(2), exactly(0, 0, 16)));
    assertFalse(isFound(leaving(1.999), exactly(0, 0, 16)));
  }

  private static Brief leaving(double stamina) {
    return Invented.brief(
        dipping(Invented.A4), Invented.player("One", PIPE, 10, 7, stamina, 8), TWO);
  }

  /** Seventeen sixteenths sound for 2.125 seconds. */
  @Test
  void the_landing_note_takes_the_air_of_both() {
    assertTrue(isFound(winds(2.125, 33), exactly(0, 0, 16), exactly(1, 16, 32)));
    assertFalse(isFound(winds(2.124, 33), exactly(0, 0, 16)));
    assertFalse(isFound(winds(2.124, 33), exactly(0, 16, 32)));
  }

  private static Brief winds(double capacity, int strokes) {
    Instrument wind = wind(capacity);
    return Invented.brief(
        Invented.line(strokes, 4, 120, i -> Invented.A4),
        Invented.player("One", wind, 10, 7, 20, 8),
        Invented.player("Two", wind, 10, 7, 20, 8),
        Invented.player("Three", PIPE, 10, 7, 20, 8));
  }

  private static Instrument wind(double capacity) {
    Breath breath = new Breath(capacity, 0.5, 2, Map.of());
    return Invented.instrument("wind pipe", new Range(60, 96), Optional.of(breath));
  }

  /** Two seconds, half a second that gives back a quarter of the air, and two more: 4/3.2 - ¼. */
  @Test
  void a_rest_inside_a_segment_gives_back_its_share_of_the_air() {
    assertTrue(playsAlone(3.2, 4));
    assertFalse(playsAlone(3.199, 4));
  }

  /** Two seconds, 3/8 s in which the air is held, and two seconds. */
  @Test
  void a_rest_too_short_to_breathe_in_gives_nothing_back() {
    assertTrue(playsAlone(4.375, 3));
    assertFalse(playsAlone(4.374, 3));
  }

  /** The five seconds fill the player, and no more than that; then it is as if fresh. */
  @Test
  void a_long_rest_gives_back_no_more_than_was_spent() {
    assertTrue(playsAlone(3.2, 40, 4));
    assertFalse(playsAlone(3.199, 40, 4));
  }

  /** Two seconds of sixteenths at 120, then after each rest two seconds more. */
  private static boolean playsAlone(double capacity, int... restsInSixteenths) {
    List<Stroke> strokes = new ArrayList<>();
    int late = 0;
    for (int i = 0; i < 16 * (restsInSixteenths.length + 1); i++) {
      late += i > 0 && i % 16 == 0 ? restsInSixteenths[i / 16 - 1] : 0;
      Position onset = Position.ofQuarters(i + late, 4);
      strokes.add(Invented.stroke(onset, Length.ofQuarters(1, 4), Invented.A4));
    }
    Player alone = Invented.player("Alone", wind(capacity), 10, 7, 20, 8);
    return isFound(Invented.brief(Invented.lineOf(strokes, 120), alone));
  }

  /** Twice 2.125 seconds with half a second between that gives back a quarter: 4.25/3.4 - ¼. */
  @Test
  void the_time_between_two_segments_gives_back_its_share_of_the_air() {
    Lock[] locks = {exactly(0, 0, 16), exactly(2, 16, 21), exactly(0, 21, 37)};
    assertTrue(isFound(winds(3.4, 38), locks));
    assertFalse(isFound(winds(3.399, 38), locks));
  }

  @Test
  void thinning_reckons_silences_in_the_same_way() {
    assertEquals(0.25, spentAfterHalfASecond(0.5), 1e-9);
    assertEquals(0.5 + 0.5 / 4, spentAfterHalfASecond(0.501), 1e-9);
  }

  private static double spentAfterHalfASecond(double catches) {
    Optional<Breath> lungs = Optional.of(new Breath(4, catches, 2, Map.of()));
    return Spent.FRESH
        .sound(new Spent.SpentSound(0, 2_000_000, 1, Spent.Role.OWN), lungs)
        .sound(new Spent.SpentSound(2_500_000, 3_000_000, 1, Spent.Role.OWN), lungs)
        .spent();
  }

  private static Lock exactly(int player, int first, int last) {
    return new Lock.Exactly(0, player, OptionalInt.empty(), first, last);
  }

  private static boolean isFound(Brief brief, Lock... locks) {
    return split(brief, locks) instanceof SplitResult.Best;
  }

  private static int cost(Brief brief, Lock... locks) {
    return split(brief, locks)
        .match(
            best -> {
              assertEquals(Costing.of(best.plan()).total(), best.cost());
              return best.cost();
            },
            none -> {
              throw new AssertionError(none.reasons().toString());
            },
            stopped -> {
              throw new AssertionError("stopped");
            });
  }

  private static SplitResult split(Brief brief, Lock... locks) {
    return Splitter.split(brief.with(brief.rules().with(List.of(locks))), () -> false);
  }
}
