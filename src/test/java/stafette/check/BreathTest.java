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
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/**
 * What silences give back to a player with air for four seconds, who breathes from half a second on
 * and is full after two.
 */
class BreathTest {
  private static final Instrument WIND =
      Invented.instrument(
          "wind pipe", new Range(60, 96), Optional.of(new Breath(4, 0.5, 2, Map.of())));
  private static final Player ONE = Invented.player("One", WIND, 10, 7, 20, 8);
  private static final Player TWO = Invented.player("Two", WIND, 10, 7, 20, 8);

  /** Two seconds of four; back half a second of two; two of four again. */
  @Test
  void a_rest_just_long_enough_to_breathe_gives_back_its_share_inside_a_segment() {
    assertEquals(0.5 - 0.25 + 0.5, breathAfterRest(4), 1e-9);
  }

  /** The air is held for 3/8 s, and that takes of it as playing does. */
  @Test
  void a_shorter_rest_gives_nothing_back() {
    assertEquals(0.5 + 0.375 / 4 + 0.5, breathAfterRest(3), 1e-9);
  }

  @Test
  void a_longer_rest_gives_back_more_and_never_more_than_was_spent() {
    assertEquals(0.5 - 0.375 + 0.5, breathAfterRest(6), 1e-9);
    assertEquals(0.5, breathAfterRest(8), 1e-9);
    assertEquals(0.5, breathAfterRest(16), 1e-9);
  }

  private static double breathAfterRest(int sixteenths) {
    Plan plan =
        new Plan(Invented.brief(withRest(sixteenths), ONE), List.of(new Segment(0, 0, 0, 31)));
    return Judge.judge(plan).segments().get(0).breath();
  }

  /** Two seconds of sixteenths at 120, a rest of so many sixteenths, and two seconds again. */
  private static Line withRest(int sixteenths) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 32; i++) {
      Position onset = Position.ofQuarters(i < 16 ? i : i + sixteenths, 4);
      strokes.add(Invented.stroke(onset, Length.ofQuarters(1, 4), Invented.A4));
    }
    return Invented.lineOf(strokes, 120);
  }

  /** Seventeen sixteenths before and after half a second in which the other one plays. */
  @Test
  void so_does_the_time_between_two_segments() {
    Brief brief = Invented.brief(Invented.line(38, 4, 120, i -> Invented.A4), ONE, TWO);
    List<Segment> segments =
        List.of(new Segment(0, 0, 0, 16), new Segment(1, 0, 16, 21), new Segment(0, 0, 21, 37));
    Verdict verdict = Judge.judge(new Plan(brief, segments));
    assertEquals(2.125 / 4 - 0.25 + 2.125 / 4, verdict.segments().get(2).breath(), 1e-9);
    assertEquals(List.of(), verdict.findings());
  }
}
