package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Player;
import stafette.plan.Seat;

/** How far strokes come from where they are written. */
class EnsembleTest {
  private static final Player PIPER =
      Invented.player("Piper", Invented.instrument("pipe"), 13, 10, 100, 8);
  private static final Player FIDDLER = Invented.player("Fiddler", of("strings"), 13, 10, 100, 8);
  private static final int MANY = 20_000;

  private static Instrument of(String family) {
    Instrument pipe = Invented.instrument("fiddle");
    return new Instrument(
        "fiddle",
        pipe.aliases(),
        family,
        pipe.range(),
        pipe.comfortable(),
        pipe.transposition(),
        pipe.clef(),
        pipe.levelDecibel(),
        pipe.breath(),
        41,
        pipe.techniques(),
        pipe.source());
  }

  /**
   * R. A. Rasch, Acustica 43 (1979), 121-131, as a thesis sums it up: onsets of two players differ
   * with a deviation of 37 and 27 ms in trios of oboe, clarinet and bassoon, 49 and 37 ms in string
   * trios. We take the middle; cutting at 2.5 deviations makes it some two per cent less.
   */
  @Test
  void two_players_differ_as_published_for_trios() {
    Ensemble ensemble = new Ensemble(Timing.ENSEMBLE, Map.of());
    assertEquals(32, differences(ensemble, PIPER), 32 * 0.03);
    assertEquals(43, differences(ensemble, FIDDLER), 43 * 0.03);
  }

  private static double differences(Ensemble ensemble, Player player) {
    return deviation(
        i ->
            (ensemble.lateMicros(player, 2 * i, i) - ensemble.lateMicros(player, 2 * i + 1, i))
                / 1e3);
  }

  @Test
  void the_strokes_of_one_segment_lie_closer_than_those_of_two_players() {
    Ensemble ensemble = new Ensemble(Timing.ENSEMBLE, Map.of());
    double within = deviation(i -> ensemble.lateMicros(PIPER, 3, i) / 1e3);
    assertEquals(0.4 * 32 / Math.sqrt(2), within, 0.3);
  }

  /** 2.91 ms a metre: 343.4 m/s, dry air at 20 degrees Celsius (the usual linear formula). */
  @Test
  void sound_from_a_seat_comes_later_the_further_it_is_from_the_conductor() {
    Ensemble none = new Ensemble(Timing.ENSEMBLE, Map.of());
    Ensemble seated =
        new Ensemble(Timing.ENSEMBLE, Map.of("Piper", new Seat(3, 4), "Fiddler", new Seat(-1, 0)));
    long delay = seated.lateMicros(PIPER, 1, 1) - none.lateMicros(PIPER, 1, 1);
    assertEquals(11.64, delay / 1e3, 0.01);
    assertEquals(0, seated.lateMicros(FIDDLER, 1, 1) - none.lateMicros(FIDDLER, 1, 1));
  }

  /** 6 ms are just noticed (A. Friberg and J. Sundberg, J. Acoust. Soc. Am. 98, 1995). */
  @Test
  void together_means_less_apart_than_is_noticed_and_without_delay_by_seats() {
    Ensemble together = new Ensemble(Timing.TOGETHER, Map.of("Piper", new Seat(0, 30)));
    for (int i = 0; i < MANY; i++) {
      assertTrue(Math.abs(together.lateMicros(PIPER, i % 7, i)) <= 4_000);
    }
    assertTrue(deviation(i -> together.lateMicros(PIPER, 1, i)) > 2_000);
    assertEquals(0, new Ensemble(Timing.WRITTEN, Map.of()).lateMicros(PIPER, 1, 1));
  }

  @Test
  void chance_is_even_and_normal_and_always_the_same() {
    double mean = IntStream.range(0, MANY).mapToDouble(i -> Chance.even(5, i)).average().orElse(0);
    assertEquals(0.5, mean, 3 / Math.sqrt(12.0 * MANY));
    assertEquals(1, deviation(i -> Chance.normal(1, 2, i)), 0.03);
    assertEquals(Chance.normal(1, 2, 3), Chance.normal(1, 2, 3));
  }

  private static double deviation(IntToDoubleFunction drawn) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < MANY; i++) {
      double each = drawn.applyAsDouble(i);
      sum += each;
      squares += each * each;
    }
    return Math.sqrt(squares / MANY - sum / MANY * sum / MANY);
  }
}
