package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Plan;

/**
 * The step in level at handoffs of two equal players, measured in rendered sound.
 *
 * <p>Two equal unrelated sources are 10 log10 2 = 3.0103 dB above one: a textbook formula. Two
 * tones on one note make 2 + 2 cos φ times the energy of one, where φ is how far apart their waves
 * are; if that is left to chance the mean is 2 and the deviation √2 (for a tone of one partial;
 * less for more). Over n notes the mean ratio so has a deviation of √(2/n), which for 784 notes is
 * 0.05, or 0.11 dB: a tolerance of 0.33 dB is three of them.
 */
class LevelStepTest {
  private static final double INCOHERENT_DECIBEL = 3.0103;
  private static final double COHERENT_DECIBEL = 6.0206;
  private static final int SHARED = 16;

  /** 49 handoffs that share 16 notes each. */
  private static final Plan MANY =
      InventedRelay.of(Invented.line(1600, 4, 240, InventedRelay::scale), 2, 32, SHARED);

  @Test
  void players_as_in_an_ensemble_add_up_as_unrelated_sources() throws NoSound {
    assertIncoherent(steps(MANY, InventedRelay.hearing(MANY, Timing.ENSEMBLE)));
  }

  @Test
  void players_together_do_so_too() throws NoSound {
    assertIncoherent(steps(MANY, InventedRelay.hearing(MANY, Timing.TOGETHER)));
  }

  private static void assertIncoherent(List<LevelStep> steps) {
    assertEquals(49, steps.size());
    double tolerance = 3 * 10 * Math.log10(1 + Math.sqrt(2.0 / (49 * SHARED)) / 2);
    assertEquals(0.33, tolerance, 0.01);
    assertEquals(
        INCOHERENT_DECIBEL,
        LevelStep.meanDecibel(steps, LevelStep::overOne).orElseThrow(),
        tolerance);
    assertEquals(
        INCOHERENT_DECIBEL,
        LevelStep.meanDecibel(steps, LevelStep::overBefore).orElseThrow(),
        tolerance);
  }

  /** From one place on the stage, so that left and right have the same two waves. */
  @Test
  void the_same_voice_at_the_same_moment_would_add_up_as_one_wave() throws NoSound {
    Plan plan = InventedRelay.of(64, 2, 32, SHARED, InventedRelay::scale);
    Hearing apart = InventedRelay.hearing(plan, Timing.WRITTEN);
    Hearing oneSeat = InventedRelay.seated(apart, 0, 0);
    assertEquals(
        COHERENT_DECIBEL,
        LevelStep.meanDecibel(steps(plan, oneSeat), LevelStep::overOne).orElseThrow(),
        0.05);
  }

  @Test
  void nothing_is_measured_where_a_player_is_silent_or_nothing_is_shared() throws NoSound {
    Plan plan = InventedRelay.of(64, 2, 32, 2, InventedRelay::scale);
    Hearing all = InventedRelay.hearing(plan, Timing.ENSEMBLE);
    Hearing solo = new Hearing(all.speed(), all.timing(), all.seats(), Set.of(1), all.rest());
    assertTrue(steps(plan, solo).get(0).overOne().isEmpty());
    Plan apart = InventedRelay.of(64, 2, 32, 0, InventedRelay::scale);
    assertTrue(
        steps(apart, InventedRelay.hearing(apart, Timing.ENSEMBLE)).get(0).overBefore().isEmpty());
    assertTrue(LevelStep.decibel(OptionalDouble.empty()).isEmpty());
  }

  private static List<LevelStep> steps(Plan plan, Hearing hearing) throws NoSound {
    Performance whole = Performance.of(plan, Excerpts.whole(plan), hearing);
    Performance apart = Comparison.withoutOverlaps(plan, Excerpts.whole(plan), hearing);
    return LevelStep.measured(whole, whole.audio(Optional.empty()), apart.audio(Optional.empty()));
  }
}
