package stafette.check.alone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Act;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Grade;
import stafette.limits.Groups;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Range;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;

/** One line on one instrument with several techniques; all figures are invented. */
class LineTrialTest {
  /** At half, everybody is an average player: the figures are the means. */
  private static final Assurance MEAN = new Assurance(50);

  private static final Technique SINGLE = tonguing("single", Groups.ANY, 8, 7, 4);
  private static final Technique DOUBLE = tonguing("double", Groups.ANY, 12, 10, 10);
  private static final Technique TRIPLE = tonguing("triple", Groups.THREES, 12, 10, 10);

  private static Technique tonguing(
      String name, Groups groups, double peak, double sustained, double stamina) {
    return new Technique(
        name,
        Act.TONGUE,
        Technique.Pitches.ANY,
        Technique.SlurUse.ANY,
        groups,
        false,
        1,
        true,
        new Limit(peak, 1, sustained, OptionalDouble.of(stamina), 8, OptionalDouble.empty()),
        0,
        Map.of(),
        new Source("invented for a test", Grade.D),
        "");
  }

  private static Instrument pipe(Optional<Breath> breath) {
    return Invented.instrument("pipe", new Range(60, 96), breath);
  }

  private static LineVerdict trial(Line line, Technique... techniques) {
    return LineTrial.of(line, pipe(Optional.empty()), MEAN, List.of(techniques));
  }

  @Test
  void sixteenths_at_150_are_beyond_single_tonguing_and_comfortable_for_double() {
    LineVerdict best = trial(Invented.line(1, 4, 150), SINGLE, DOUBLE, TRIPLE);
    assertEquals(List.of("double"), names(best));
    assertEquals(10.0, best.ratePerSecond(), 1e-9, "150 quarters × 4 notes ÷ 60");
    assertEquals(10.0 / 12, best.use(), 1e-5);
    assertEquals(Ease.DEMANDING, best.ease());
    assertEquals(OptionalDouble.empty(), best.lastsSeconds());
    assertEquals(Thinning.ALL, best.thinning());
    LineVerdict single = trial(Invented.line(1, 4, 150), SINGLE);
    assertEquals(10.0 / 8, single.use(), 1e-6, "over four gaps nothing is given");
    assertEquals(Ease.BEYOND, single.ease());
    assertEquals(Limiting.BURST, single.limiting());
    assertEquals(Thinning.HALF, single.thinning());
  }

  private static List<String> names(LineVerdict verdict) {
    return verdict.techniques().stream().map(shown -> shown.technique().name()).toList();
  }

  /** The share of a normal distribution above a rate: 8 ± 1 gives 16 of 100 at 9, 84 at 7. */
  @Test
  void the_share_of_players_is_that_of_the_normal_distribution_above_the_rate() {
    assertEquals(50, trial(Invented.line(1, 4, 120), SINGLE).share(), 0.1);
    assertEquals(15.87, trial(Invented.line(1, 4, 135), SINGLE).share(), 0.1);
    assertEquals(84.13, trial(Invented.line(1, 4, 105), SINGLE).share(), 0.1);
  }

  @Test
  void a_flautist_is_told_single_until_double_is_needed() {
    assertEquals(List.of("single"), names(trial(Invented.line(4, 4, 100), SINGLE, DOUBLE, TRIPLE)));
    assertEquals(List.of("double"), names(trial(Invented.line(4, 4, 150), SINGLE, DOUBLE, TRIPLE)));
  }

  /** 8 a second is 120 quarters of four. */
  @Test
  void the_fastest_tempo_of_a_short_line_is_its_peak() {
    LineVerdict single = trial(Invented.line(4, 4, 150, i -> Invented.A4), SINGLE);
    assertEquals(
        "quarter = 131",
        single.fastestTempo().orElseThrow().toString(),
        "three gaps go 1.1 times as fast: 132, but for the clock's whole microseconds");
    LineVerdict longer = trial(Invented.line(5, 4, 150, i -> Invented.A4), SINGLE);
    assertEquals("quarter = 120", longer.fastestTempo().orElseThrow().toString());
  }

  /** T = stamina/(r − sustained): Monod and Scherrer 1965, the critical-power law. */
  @Test
  void single_tonguing_at_7_and_a_half_lasts_eight_seconds() {
    LineVerdict single = trial(Invented.line(20, 3, 150), SINGLE);
    assertEquals(4 / (7.5 - 7), single.lastsSeconds().orElseThrow(), 1 / 7.5 + 1e-6);
    assertEquals(Limiting.TIREDNESS, single.limiting());
    assertTrue(single.use() < 1);
    assertTrue(single.share() < 50);
  }

  @Test
  void triple_tonguing_goes_on_triplets_only_and_a_single_tongue_leaves_out_their_middle() {
    assertEquals(Limiting.TECHNIQUE, trial(Invented.line(2, 4, 180), TRIPLE).limiting());
    assertEquals(List.of("triple"), names(trial(Invented.line(2, 3, 180), SINGLE, TRIPLE)));
    assertEquals(
        Thinning.WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET,
        trial(Invented.line(2, 3, 180), SINGLE).thinning());
  }

  @Test
  void a_note_out_of_range_leaves_no_tempo_and_only_what_does_without_it() {
    Line line = Invented.line(16, 4, 60, i -> i % 2 == 0 ? Invented.A4 : new Pitch(Step.C, 0, 2));
    LineVerdict verdict = trial(line, SINGLE, DOUBLE);
    assertEquals(Ease.OUT_OF_RANGE, verdict.ease());
    assertEquals(Limiting.RANGE, verdict.limiting());
    assertEquals(1, verdict.stroke());
    assertEquals(Optional.empty(), verdict.fastestTempo());
    assertEquals(Thinning.HALF, verdict.thinning());
  }

  /**
   * 79 gaps at r spend 79 − 10 · 79/r of ten strokes of stamina: r up to 790/69, 171.7 quarters. At
   * half, the capacity is the mean: that of 84 of 100 by (1 + 0.15 · 0) / (1 − 0.15 · 0.994).
   */
  @Test
  void a_line_longer_than_the_breath_needs_a_faster_tempo() {
    double mean = 9;
    double of84 = mean * (1 + 0.15 * Assurance.DEFAULT.z());
    Breath breath = new Breath(of84, 0.4, 1, Map.of());
    LineVerdict verdict =
        LineTrial.of(Invented.line(5, 4, 100), pipe(Optional.of(breath)), MEAN, List.of(DOUBLE));
    assertEquals(12.0 / 9, verdict.breath(), 1e-6);
    assertEquals(Limiting.BREATH, verdict.limiting());
    assertEquals("quarter = 171", verdict.fastestTempo().orElseThrow().toString());
    assertEquals(9, verdict.lastsSeconds().orElseThrow(), 0.15);
    assertEquals(1.3, verdict.share(), 0.1, "a third more than the mean is 2.22 deviations");
  }

  /** D, G and A natural have no twin (Kuntz, harp notes for composers). */
  @Test
  void twin_strings_that_the_pedals_do_not_give_are_beyond_at_any_tempo() {
    Technique twins =
        new Technique(
            "twin strings",
            Act.STRING,
            Technique.Pitches.ANY,
            Technique.SlurUse.ANY,
            Groups.ANY,
            true,
            1,
            true,
            new Limit(10, 1, 9, OptionalDouble.of(9), 8, OptionalDouble.empty()),
            0,
            Map.of(),
            new Source("invented for a test", Grade.D),
            "");
    LineVerdict verdict = trial(Invented.line(1, 4, 60), twins);
    assertEquals(Ease.BEYOND, verdict.ease());
    assertEquals(Limiting.PEDALS, verdict.limiting());
    assertEquals(OptionalDouble.empty(), verdict.lastsSeconds());
    assertEquals(Optional.empty(), verdict.fastestTempo());
  }
}
