package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Player;
import stafette.plan.Seat;

/** How people stray. */
class PeopleTest {
  private static final Player FLUTE =
      Invented.player("Flute 1", Invented.instrument("flute"), 13, 8, 20, 8);

  /**
   * R. A. Rasch, "Synchronization in performed ensemble music", Acustica 43, 1979, as a thesis sums
   * it up: onsets of two players of a woodwind trio differ with a standard deviation of 27 and 37
   * ms in two pieces; one of two independent players alike has that divided by √2.
   */
  @Test
  void a_players_onsets_spread_as_was_measured_in_a_trio() {
    People people = new People(Heard.HUMAN, 7);
    double[] late =
        IntStream.range(0, 4000)
            .mapToDouble(
                i -> {
                  people.enter(FLUTE);
                  return people.lateMicros(FLUTE) / 1000.0;
                })
            .toArray();
    double spread = deviation(late);
    assertTrue(spread > 27 / Math.sqrt(2) && spread < 37 / Math.sqrt(2), "spread " + spread);
    assertEquals(0, DoubleStream.of(late).average().orElseThrow(), 1);
  }

  @Test
  void within_a_segment_strokes_stray_but_little() {
    People people = new People(Heard.HUMAN, 7);
    people.enter(FLUTE);
    double[] late =
        IntStream.range(0, 1000).mapToDouble(i -> people.lateMicros(FLUTE) / 1000.0).toArray();
    assertTrue(deviation(late) < 37 / Math.sqrt(2) / 3, "spread " + deviation(late));
  }

  /** Sound in dry air at 20 degrees Celsius: 343 m/s, 2.91 ms a metre; textbook physics. */
  @Test
  void sound_from_the_back_of_the_stage_comes_late() {
    double near = meanLate(new Seat(0, 0));
    double far = meanLate(new Seat(6, 8));
    assertEquals(29.1, far - near, 0.1);
  }

  @Test
  void a_machine_is_never_late() {
    People people = new People(Heard.MACHINE, 7);
    people.enter(FLUTE);
    assertEquals(0, people.lateMicros(FLUTE));
  }

  private static double meanLate(Seat seat) {
    People people = new People(new Manner(true, 1, Map.of("Flute 1", seat)), 7);
    people.enter(FLUTE);
    return IntStream.range(0, 100)
        .mapToDouble(i -> people.lateMicros(FLUTE) / 1000.0)
        .average()
        .orElseThrow();
  }

  private static double deviation(double[] values) {
    double mean = DoubleStream.of(values).average().orElseThrow();
    return Math.sqrt(DoubleStream.of(values).map(v -> (v - mean) * (v - mean)).average().orElse(0));
  }
}
