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

  private static List<LineVerdict> trial(Line line) {
    return LineTrial.of(line, pipe(Optional.empty()), MEAN, List.of(SINGLE, DOUBLE, TRIPLE));
  }

  @Test
  void sixteenths_at_150_are_beyond_single_tonguing_and_demanding_for_double() {
    List<LineVerdict> rows = trial(Invented.line(1, 4, 150));
    assertEquals(
        List.of("double", "single"), rows.stream().map(row -> row.technique().name()).toList());
    LineVerdict best = rows.get(0);
    assertEquals(10.0, best.ratePerSecond(), 1e-9, "150 quarters × 4 notes ÷ 60");
    assertEquals(10.0 / 12, best.use(), 1e-9);
    assertEquals(Ease.DEMANDING, best.ease());
    assertEquals(OptionalDouble.empty(), best.lastsSeconds());
    assertEquals(Thinning.ALL, best.thinning());
    LineVerdict single = rows.get(1);
    assertEquals(10.0 / 8, single.use(), 1e-9);
    assertEquals(Ease.BEYOND, single.ease());
    assertEquals(OptionalDouble.of(0), single.lastsSeconds());
    assertEquals(Thinning.HALF, single.thinning());
  }

  /** 8 a second is 120 quarters of four; a μs of rounding must not let more through. */
  @Test
  void the_fastest_tempo_of_a_short_line_is_its_peak() {
    LineVerdict single = trial(Invented.line(4, 4, 150, i -> Invented.A4)).get(1);
    assertEquals("quarter = 120", single.fastestTempo().orElseThrow().toString());
  }

  /** T = stamina/(r − sustained): Monod and Scherrer 1965, the critical-power law. */
  @Test
  void single_tonguing_at_7_and_a_half_lasts_eight_seconds() {
    LineVerdict single =
        LineTrial.of(Invented.line(20, 3, 150), pipe(Optional.empty()), MEAN, List.of(SINGLE))
            .get(0);
    assertEquals(4 / (7.5 - 7), single.lastsSeconds().orElseThrow(), 1 / 7.5 + 1e-6);
    assertEquals(Ease.BEYOND, single.ease());
    assertTrue(single.use() < 1);
  }

  @Test
  void triple_tonguing_goes_on_triplets_only_and_two_for_three_is_the_fullest_single_tongue() {
    List<LineVerdict> rows = trial(Invented.line(2, 3, 180));
    assertEquals(3, rows.size());
    LineVerdict single = rows.get(2);
    assertEquals("single", single.technique().name());
    assertEquals(Thinning.TWO_FOR_THREE, single.thinning());
  }

  @Test
  void a_note_out_of_range_leaves_no_tempo_and_only_what_does_without_it() {
    Line line = Invented.line(16, 4, 60, i -> i % 2 == 0 ? Invented.A4 : new Pitch(Step.C, 0, 2));
    for (LineVerdict row : trial(line)) {
      assertEquals(Ease.OUT_OF_RANGE, row.ease());
      assertEquals(Optional.empty(), row.fastestTempo());
      assertEquals(Thinning.HALF, row.thinning());
    }
  }

  /**
   * 79 gaps at r spend 79 − 10 · 79/r of ten strokes of stamina: r up to 790/69, 171.7 quarters.
   */
  @Test
  void a_line_longer_than_the_breath_needs_a_faster_tempo() {
    Breath breath = new Breath(9, 0.4, 1, Map.of());
    LineVerdict row =
        LineTrial.of(Invented.line(5, 4, 100), pipe(Optional.of(breath)), MEAN, List.of(DOUBLE))
            .get(0);
    assertEquals(12.0 / 9, row.breath(), 1e-6);
    assertEquals(Ease.BEYOND, row.ease());
    assertEquals("quarter = 171", row.fastestTempo().orElseThrow().toString());
    assertEquals(9, row.lastsSeconds().orElseThrow(), 0.15);
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
            true,
            new Limit(10, 1, 9, OptionalDouble.of(9), 8, OptionalDouble.empty()),
            0,
            Map.of(),
            new Source("invented for a test", Grade.D),
            "");
    LineVerdict row =
        LineTrial.of(Invented.line(1, 4, 60), pipe(Optional.empty()), MEAN, List.of(twins)).get(0);
    assertEquals(Ease.BEYOND, row.ease());
    assertEquals(OptionalDouble.of(0), row.lastsSeconds());
    assertEquals(Optional.empty(), row.fastestTempo());
  }
}
