package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/** Where an overlap begins at the earliest, and that its end, the landing note, is part of it. */
class OverlapTest {
  private static final Instrument PIPE = Invented.instrument("pipe");
  private static final Player ONE = Invented.player("One", PIPE, 10, 7, 20, 8);
  private static final Player TWO = Invented.player("Two", PIPE, 10, 7, 20, 8);
  private static final Line LINE = Invented.line(33, 4, 120, i -> Invented.A4);
  private static final List<Segment> HALVES =
      List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 32));

  @Test
  void exactly_a_beat_from_the_first_to_the_last_shared_onset_is_allowed() {
    assertEquals(List.of(), kinds(sharingABeatAnd(0)));
  }

  @Test
  void a_hair_more_than_a_beat_is_not() {
    assertEquals(List.of(Finding.FindingKind.OVERLAP), kinds(sharingABeatAnd(1)));
  }

  private static Plan sharingABeatAnd(int hairs) {
    return new Plan(
        Invented.brief(entryEarlierBy(hairs), ONE, TWO),
        List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 12, 32)));
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

  /** Sixteen gaps at 8 a second spend two of twenty strokes, the one to the landing note too. */
  @Test
  void the_landing_note_tires_whoever_leaves_and_what_follows_it_whoever_enters() {
    List<SegmentReport> reports = reports(new Plan(Invented.brief(LINE, ONE, TWO), HALVES));
    assertEquals(0.1, reports.get(0).tiredness(), 1e-9);
    assertEquals(0.1, reports.get(1).tiredness(), 1e-9);
  }

  /** Seventeen sixteenths of 1/8 s, of ten seconds. */
  @Test
  void the_landing_note_takes_the_air_of_both() {
    Instrument wind = wind(10);
    Player one = Invented.player("One", wind, 10, 7, 20, 8);
    Player two = Invented.player("Two", wind, 10, 7, 20, 8);
    List<SegmentReport> reports = reports(new Plan(Invented.brief(LINE, one, two), HALVES));
    assertEquals(0.2125, reports.get(0).breath(), 1e-9);
    assertEquals(0.2125, reports.get(1).breath(), 1e-9);
  }

  private static Instrument wind(double capacity) {
    Breath breath = new Breath(capacity, 0.4, 1, Map.of());
    return Invented.instrument("wind pipe", new Range(60, 96), Optional.of(breath));
  }

  /** The landing note comes after a gap of 1/8 s, everything else after 1/4 s. */
  @Test
  void the_rate_at_the_landing_note_counts_in_the_report_of_whoever_leaves() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 33; i++) {
      Position onset = Position.ofQuarters(2 * i - (i < 16 ? 0 : 1), 4);
      strokes.add(Invented.stroke(onset, Length.ofQuarters(1, 4), Invented.A4));
    }
    Line late = Invented.lineOf(strokes, 120);
    List<SegmentReport> reports = reports(new Plan(Invented.brief(late, ONE, TWO), HALVES));
    assertEquals(8, reports.get(0).ratePerSecond(), 1e-9);
    assertEquals(0.8 / 1.5, reports.get(0).use(), 1e-9, "one close gap");
    assertEquals(4, reports.get(1).ratePerSecond(), 1e-9);
  }

  @Test
  void the_landing_note_must_be_in_the_range_of_both() {
    Player low =
        Invented.player(
            "Low", Invented.instrument("low", new Range(50, 96), Optional.empty()), 10, 7, 20, 8);
    Line dips = Invented.line(33, 4, 120, i -> i == 16 ? new Pitch(Step.B, 0, 3) : Invented.A4);
    Player other = new Player("Other", low.instrument(), low.part(), low.skills(), low.busy());
    assertEquals(List.of(), kinds(new Plan(Invented.brief(dips, low, other), HALVES)));
    List<Finding.FindingKind> range = List.of(Finding.FindingKind.RANGE);
    assertEquals(range, kinds(new Plan(Invented.brief(dips, ONE, low), HALVES)));
    assertEquals(range, kinds(new Plan(Invented.brief(dips, low, ONE), HALVES)));
  }

  private static List<SegmentReport> reports(Plan plan) {
    return Judge.judge(plan).segments();
  }

  private static List<Finding.FindingKind> kinds(Plan plan) {
    return Judge.judge(plan).findings().stream().map(Finding::kind).toList();
  }
}
