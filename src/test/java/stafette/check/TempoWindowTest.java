package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

class TempoWindowTest {
  /** Where a silence becomes long enough to breathe in, what fails may hold again soon. */
  private static final List<Double> HAIRS = List.of(1e-6, 1e-7);

  @Property(tries = 500)
  void a_plan_holds_at_both_ends_of_its_window_and_between_and_no_further(@ForAll long seed) {
    Plan plan = RandomPlans.holding(seed);
    TempoWindow window = TempoWindow.of(plan).orElseThrow();
    double slowest = window.slowestFactor();
    double fastest = window.fastestFactor();
    assertTrue(slowest <= 1 && 1 <= fastest, window.toString());
    if (slowest > 0) {
      assertHolds(plan, slowest);
      assertFailsBeyond(plan, slowest, -1);
    }
    if (fastest < Double.POSITIVE_INFINITY) {
      assertHolds(plan, fastest);
      assertFailsBeyond(plan, fastest, 1);
    }
    double from = Math.max(slowest, 0.01);
    double to = Math.min(fastest, 100);
    for (int step = 0; step <= 100; step++) {
      assertHolds(plan, from * Math.pow(to / from, step / 100.0));
    }
  }

  @Test
  void a_pair_who_take_notes_in_turn_interlock_up_to_sixteenths_at_185() {
    Instrument flute = Invented.instrument("flute");
    Plan plan =
        new Plan(
            Invented.brief(
                    Invented.line(2, 4, 120),
                    Invented.player("Flute 1", flute, 50, 50, 20, 8),
                    Invented.player("Flute 2", flute, 50, 50, 20, 8))
                .with(Invented.rules().with(Hocket.STROKE)),
            List.of(
                new Segment(0, 0, 0, 0, 31, Pattern.ODD),
                new Segment(0, 1, 0, 0, 31, Pattern.EVEN)));
    TempoWindow window = TempoWindow.of(plan).orElseThrow();
    assertEquals("quarter = 185", window.fastestText().toString());
    assertHolds(plan, window.fastestFactor());
    assertFailsBeyond(plan, window.fastestFactor(), 1);
    assertEquals(
        "turns stroke by stroke of Flute 1 at bar 1, beat 1", window.fastestLimit().toString());
  }

  private static void assertHolds(Plan plan, double factor) {
    assertEquals(List.of(), Judge.findings(plan, new Demands(plan.brief()), 1 / factor));
  }

  private static void assertFailsBeyond(Plan plan, double factor, int way) {
    assertTrue(
        HAIRS.stream()
            .map(hair -> 1 / (factor * (1 + way * hair)))
            .anyMatch(slower -> !Judge.findings(plan, new Demands(plan.brief()), slower).isEmpty()),
        "still holds beyond " + factor);
  }

  @Property(tries = 100)
  void the_marks_shown_lie_inward_of_the_ends(@ForAll long seed) {
    Plan plan = RandomPlans.holding(seed);
    TempoWindow window = TempoWindow.of(plan).orElseThrow();
    double present = plan.line().tempo().at(Position.START).perMinute().toDouble();
    if (window.slowestFactor() > 0) {
      long beats = beats(window.slowestText().toString());
      assertTrue(beats >= present * window.slowestFactor() * (1 - 1e-5), window.toString());
      assertTrue(beats <= present);
    }
    if (window.fastestFactor() < Double.POSITIVE_INFINITY) {
      long beats = beats(window.fastestText().toString());
      assertTrue(beats <= present * window.fastestFactor() * (1 + 1e-5), window.toString());
      assertTrue(beats >= present);
    }
  }

  private static long beats(String shown) {
    assertTrue(shown.startsWith("quarter = "), shown);
    return Long.parseLong(shown.substring("quarter = ".length()));
  }

  @Test
  void the_plans_made_up_at_random_meet_every_kind_of_bound() {
    Set<String> limits = new TreeSet<>();
    for (long seed = 0; seed < 400; seed++) {
      TempoWindow window = TempoWindow.of(RandomPlans.holding(seed)).orElseThrow();
      limits.add("slowest: " + window.slowestLimit().toString().replaceAll(" of P.*", ""));
      limits.add("fastest: " + window.fastestLimit().toString().replaceAll(" of P.*", ""));
    }
    assertEquals(
        Set.of(
            "slowest: nothing",
            "slowest: breath",
            "fastest: peak rate",
            "fastest: tiredness",
            "fastest: breath",
            "fastest: rest before the entry"),
        limits);
  }

  @Test
  void a_plan_that_does_not_hold_has_no_window() {
    Line line = Invented.line(1, 4, 200);
    assertEquals(Optional.empty(), TempoWindow.of(alone(line, piper(10, 9, 10))));
  }

  /** 120 quarters of four are 8 a second. */
  @Test
  void without_breath_any_slower_tempo_will_do_and_the_peak_bounds_the_fastest() {
    TempoWindow window =
        TempoWindow.of(alone(Invented.line(1, 4, 120), piper(10, 9.9, 9))).orElseThrow();
    assertEquals(0, window.slowestFactor());
    assertEquals("any slower tempo", window.slowestText().toString());
    assertEquals("nothing", window.slowestLimit().toString());
    assertEquals(1.25, window.fastestFactor(), 1e-6);
    assertEquals("quarter = 150", window.fastestText().toString());
    assertEquals("peak rate of Piper at bar 1, beat 2", window.fastestLimit().toString());
  }

  private static Player piper(double peak, double sustained, double stamina) {
    return Invented.player("Piper", Invented.instrument("pipe"), peak, sustained, stamina, 8);
  }

  /** 39 gaps at r spend 39 − 7 · 39/r strokes: five of them at r = 273/34, 120.4 quarters. */
  @Test
  void tiredness_bounds_a_long_line() {
    TempoWindow window =
        TempoWindow.of(alone(Invented.line(40, 4, 100, i -> Invented.A4), piper(12, 7, 5)))
            .orElseThrow();
    assertEquals(273 / 34.0 / 4 * 60 / 100, window.fastestFactor(), 1e-6);
    assertEquals("quarter = 120", window.fastestText().toString());
    assertEquals(
        "tiredness of Piper at bar 3, last quarter of beat 2", window.fastestLimit().toString());
  }

  /** 16 quarters at 120 sound for 8 seconds; the air lasts 10. */
  @Test
  void breath_bounds_the_slowest_tempo() {
    Instrument pipe =
        Invented.instrument(
            "pipe", new Range(60, 96), Optional.of(new Breath(10, 0.4, 1, Map.of())));
    Player piper = Invented.player("Piper", pipe, 20, 19, 9, 8);
    TempoWindow window = TempoWindow.of(alone(Invented.line(4, 4, 120), piper)).orElseThrow();
    assertEquals(0.8, window.slowestFactor(), 1e-6);
    assertEquals("quarter = 96", window.slowestText().toString());
    assertEquals(
        "breath of Piper at bar 4, last quarter of beat 4", window.slowestLimit().toString());
  }

  /** Four beats, one silent, four more; the air lasts three seconds, catching it takes 0.4. */
  @Test
  void breath_bounds_both_ends_where_it_must_be_caught_in_a_rest() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 36; i++) {
      if (i / 4 != 4) {
        strokes.add(
            Invented.stroke(Position.ofQuarters(i, 4), Length.ofQuarters(1, 4), Invented.A4));
      }
    }
    Instrument pipe =
        Invented.instrument(
            "pipe", new Range(60, 96), Optional.of(new Breath(3, 0.4, 0.5, Map.of())));
    Plan plan = alone(Invented.lineOf(strokes, 90), Invented.player("Piper", pipe, 40, 39, 9, 8));
    TempoWindow window = TempoWindow.of(plan).orElseThrow();
    assertEquals("quarter = 80", window.slowestText().toString());
    assertEquals(
        "breath of Piper at bar 1, last quarter of beat 4", window.slowestLimit().toString());
    assertEquals("quarter = 150", window.fastestText().toString());
    assertEquals(
        "breath of Piper at bar 2, second half of beat 4", window.fastestLimit().toString());
  }

  /** Out for two beats of four, 1 s at 120; half a second is needed. */
  @Test
  void rest_bounds_the_fastest_tempo_of_two_who_take_turns() {
    Line line = Invented.line(2, 4, 120);
    Player one = Invented.player("One", Invented.instrument("pipe"), 40, 39, 9, 8);
    Player two = Invented.player("Two", Invented.instrument("pipe"), 40, 39, 9, 8);
    Plan plan =
        new Plan(
            Invented.brief(line, one, two),
            List.of(new Segment(0, 0, 0, 7), new Segment(1, 0, 7, 16), new Segment(0, 0, 16, 31)));
    TempoWindow window = TempoWindow.of(plan).orElseThrow();
    assertEquals(2.0, window.fastestFactor(), 1e-6);
    assertEquals("rest before the entry of One at bar 2, beat 1", window.fastestLimit().toString());
  }

  private static Plan alone(Line line, Player player) {
    return new Plan(Invented.brief(line, player), List.of(new Segment(0, 0, 0, line.count() - 1)));
  }
}
