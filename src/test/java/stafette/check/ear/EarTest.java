package stafette.check.ear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Source;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Transposition;
import stafette.time.Length;
import stafette.time.Position;

/** Estimates for the ear beside the published figures that they rest on. */
class EarTest {
  private static final Player PIPER = player("Piper", "woodwind", 90);
  private static final Player SECOND = player("Second", "woodwind", 90);
  private static final Player FIDDLER = player("Fiddler", "strings", 87);
  private static final Player HORNIST = player("Hornist", "brass", 100);

  /** The level of n equal unrelated sources is 10 log10 n above one of them: a textbook formula. */
  @Test
  void two_equal_players_are_3_01_decibels_louder_than_either() {
    assertEquals(93.0103, Acoustics.togetherDecibel(90, 90), 1e-4);
    HandoffEar.Together both = together(PIPER, SECOND, 120);
    assertEquals(3.0103, both.aboveLeavingDecibel(), 1e-4);
    assertEquals(3.0103, both.aboveLouderDecibel(), 1e-4);
  }

  /** Ten equal ones make 10 dB: one beside nine, whose level is 10 log10 9 above one. */
  @Test
  void one_player_more_beside_nine_makes_ten_decibels_over_one() {
    assertEquals(100, Acoustics.togetherDecibel(90, 90 + 10 * Math.log10(9)), 1e-9);
  }

  /** By hand: 10 log10(10^9 + 10^10) = 100.414. */
  @Test
  void a_louder_player_who_enters_is_the_step_and_a_softer_one_hardly_any() {
    HandoffEar.Together louder = together(PIPER, HORNIST, 120);
    assertEquals(10.414, louder.aboveLeavingDecibel(), 1e-3);
    assertEquals(0.414, louder.aboveLouderDecibel(), 1e-3);
    assertEquals(0.414, together(HORNIST, PIPER, 120).aboveLeavingDecibel(), 1e-3);
    assertEquals(10, ear(PIPER, HORNIST, 120, Map.of()).thenDecibel());
    assertEquals(-10, ear(HORNIST, PIPER, 120, Map.of()).thenDecibel());
  }

  @Property(tries = 200)
  void two_are_louder_than_the_louder_and_by_no_more_than_two_equal_ones(
      @ForAll @DoubleRange(min = 0, max = 130) double one,
      @ForAll @DoubleRange(min = 0, max = 130) double other) {
    double both = Acoustics.togetherDecibel(one, other);
    double step = both - Math.max(one, other);
    assertTrue(step >= 0 && step <= 10 * Math.log10(2) + 1e-9, one + ", " + other);
    assertEquals(both, Acoustics.togetherDecibel(other, one), 1e-9);
  }

  /**
   * R. A. Rasch, Acustica 43 (1979), 121-131: onset differences in trios of oboe, clarinet and
   * bassoon 37 and 27 ms, of violin, viola and cello 49 and 37 ms (figures from a thesis that sums
   * them up). Per player divided by √2.
   */
  @Test
  void onsets_lie_apart_as_in_the_trios_that_rasch_measured() {
    assertSpread(27, 37, together(PIPER, SECOND, 120).spread());
    assertSpread(19.09, 26.16, OnsetSpread.of(PIPER.instrument()));
    assertSpread(26.16, 34.65, OnsetSpread.of(FIDDLER.instrument()));
    assertSpread(
        37, 49, OnsetSpread.between(FIDDLER.instrument(), instrument("viola", "strings", 87)));
  }

  @Test
  void players_of_two_kinds_lie_between_and_unmeasured_ones_get_the_whole_range() {
    assertSpread(
        Math.sqrt((27 * 27 + 37 * 37) / 2.0),
        Math.sqrt((37 * 37 + 49 * 49) / 2.0),
        together(PIPER, FIDDLER, 120).spread());
    assertSpread(27, 49, OnsetSpread.between(HORNIST.instrument(), instrument("harp", "harp", 86)));
  }

  private static void assertSpread(double least, double most, OnsetSpread spread) {
    assertEquals(least, spread.leastMillis(), 0.01);
    assertEquals(most, spread.mostMillis(), 0.01);
  }

  /**
   * A. Friberg and J. Sundberg, J. Acoust. Soc. Am. 98 (1995), 2524-2531: 6 ms where onsets follow
   * in less than about 240 ms, 2.5 % above.
   */
  @Test
  void what_is_just_noticed_is_6_ms_in_fast_rows_and_2_5_per_cent_in_slow_ones() {
    assertEquals(6, Ear.noticeableMillis(100));
    assertEquals(6, Ear.noticeableMillis(240));
    assertEquals(12.5, Ear.noticeableMillis(500));
    assertEquals(25, Ear.noticeableMillis(1000));
  }

  /** Sixteenths at quarter = 20 are 750 ms apart, at 120 they are 125 ms. */
  @Test
  void what_is_just_noticed_goes_by_the_notes_at_the_handoff() {
    assertEquals(18.75, together(PIPER, SECOND, 20).noticeableMillis(), 1e-6);
    assertEquals(6, together(PIPER, SECOND, 120).noticeableMillis());
  }

  /** 331.3 + 0.606 T: 343.42 m/s at 20 degrees Celsius, 2.91 ms a metre; a textbook formula. */
  @Test
  void sound_takes_2_91_milliseconds_a_metre() {
    assertEquals(343.42, Acoustics.METRES_PER_SECOND, 1e-9);
    assertEquals(2.912, Acoustics.delayMillis(1), 1e-3);
    HandoffEar.Distance distance =
        ear(PIPER, SECOND, 120, Map.of("Piper", new Seat(-1, 2), "Second", new Seat(2, 6)))
            .distance()
            .orElseThrow();
    assertEquals(5, distance.metres(), 1e-9);
    assertEquals(14.56, distance.delayMillis(), 0.01);
  }

  @Test
  void without_both_seats_there_is_no_distance() {
    assertEquals(
        Optional.empty(), ear(PIPER, SECOND, 120, Map.of("Piper", new Seat(0, 0))).distance());
  }

  @Test
  void over_a_rest_nothing_sounds_together() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      strokes.add(
          Invented.stroke(
              Position.ofQuarters(i + (i < 4 ? 0 : 8), 4), Length.ofQuarters(1, 4), Invented.A4));
    }
    Plan plan =
        new Plan(
            Invented.brief(Invented.lineOf(strokes, 120), PIPER, HORNIST),
            List.of(new Segment(0, 0, 0, 3), new Segment(1, 0, 4, 7)));
    HandoffEar ear = Ear.of(plan, Map.of()).get(0);
    assertEquals(Optional.empty(), ear.together());
    assertEquals(10, ear.thenDecibel());
  }

  @Test
  void of_a_hocket_pair_the_one_who_plays_the_landing_note_is_heard() {
    Rules strokeByStroke = Invented.rules().with(Hocket.STROKE);
    Brief brief =
        new Brief(Invented.line(2, 4, 120), List.of(PIPER, HORNIST, SECOND), strokeByStroke);
    assertEquals(0, afterPair(brief, 16).thenDecibel(), "stroke 16 is the first player's");
    assertEquals(-10, afterPair(brief, 15).thenDecibel(), "stroke 15 is the second player's");
  }

  private static HandoffEar afterPair(Brief brief, int landing) {
    Plan plan =
        new Plan(
            brief,
            List.of(
                new Segment(0, 0, 0, 0, landing, Pattern.ODD),
                new Segment(0, 1, 0, 0, landing, Pattern.EVEN),
                new Segment(2, 0, landing, 31)));
    return Ear.of(plan, Map.of()).get(0);
  }

  private static HandoffEar.Together together(Player leaves, Player enters, long tempo) {
    return ear(leaves, enters, tempo, Map.of()).together().orElseThrow();
  }

  private static HandoffEar ear(Player leaves, Player enters, long tempo, Map<String, Seat> seats) {
    Line line = Invented.line(2, 4, tempo);
    Plan plan =
        new Plan(
            Invented.brief(line, leaves, enters),
            List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 31)));
    return Ear.of(plan, seats).get(0);
  }

  private static Player player(String name, String family, double level) {
    return Invented.player(name, instrument(name + "'s", family, level), 10, 7, 20, 8);
  }

  private static Instrument instrument(String name, String family, double level) {
    return new Instrument(
        name,
        List.of(),
        family,
        Optional.of(new Range(48, 96)),
        Optional.of(new Range(48, 96)),
        Transposition.NONE,
        "G2",
        level,
        Optional.empty(),
        61,
        List.of(Invented.tonguing("tonguing")),
        Source.COMMON_PRACTICE);
  }
}
