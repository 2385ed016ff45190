package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.limits.Capability;

class TirednessTest {
  /**
   * T = stamina / (r − sustained): H. Monod and J. Scherrer, "The work capacity of a synergic
   * muscular group", Ergonomics 8, 1965.
   */
  @Property
  void at_a_constant_rate_the_last_stroke_before_t_holds_and_the_next_does_not(
      @ForAll @DoubleRange(min = 2, max = 12) double sustained,
      @ForAll @DoubleRange(min = 0.5, max = 8) double beyond,
      @ForAll @DoubleRange(min = 1, max = 30) double stamina) {
    Capability capability = capability(sustained, stamina, 8);
    double rate = capability.sustainedPerSecond() + beyond;
    double lasts = capability.staminaStrokes() / beyond;
    double tiredness = Tiredness.atFirst(0, capability);
    int strokes = 0;
    while (tiredness <= 1) {
      strokes++;
      tiredness =
          Tiredness.after(tiredness, 1e6 / rate, capability.sustainedMilli(), 0, capability);
    }
    assertTrue((strokes - 1) / rate <= lasts + 1e-9, "the last that holds");
    assertTrue(strokes / rate > lasts - 1e-9, "the first that doesn't");
  }

  @Property
  void at_or_below_the_sustained_rate_nobody_tires(
      @ForAll @DoubleRange(min = 0.1, max = 1) double share) {
    Capability capability = capability(8, 3, 8);
    double tiredness = 0;
    for (int stroke = 0; stroke < 1000; stroke++) {
      tiredness = Tiredness.after(tiredness, 1e6 / (8 * share), 8000, 0, capability);
    }
    assertEquals(0, tiredness, 1e-9);
  }

  @Property
  void a_spent_player_is_not_fresh_before_recovery_is_over(
      @ForAll @DoubleRange(min = 0, max = 0.99) double share,
      @ForAll @DoubleRange(min = 0, max = 12) double sustained,
      @ForAll @IntRange(min = 1, max = 12) int recovery) {
    Capability capability = capability(sustained, 5, recovery);
    double gap = share * recovery * 1e6;
    double tiredness = Tiredness.after(1, gap, capability.sustainedMilli(), 0, capability);
    assertTrue(tiredness >= 1 - share - 1e-9, "after " + gap + " is " + tiredness);
  }

  @Test
  void a_spent_player_is_fresh_when_recovery_is_over() {
    assertEquals(0, Tiredness.after(1, 8_000_000, 9_000, 0, capability(9, 5, 8)), 1e-9);
    assertEquals(0.5, Tiredness.after(1, 4_000_000, 9_000, 0, capability(9, 5, 8)), 1e-9);
  }

  @Test
  void each_grace_note_costs_one_stroke_of_the_stamina() {
    Capability capability = capability(9, 5, 8);
    assertEquals(0.4, Tiredness.atFirst(2, capability), 1e-12);
    assertEquals(0.2, Tiredness.after(0, 1_000_000, 9_000, 1, capability), 1e-12);
  }

  private static Capability capability(double sustained, double stamina, int recoverySeconds) {
    return new Capability(
        20_000,
        (int) (sustained * 1000),
        (int) (stamina * 1000),
        recoverySeconds * 1000,
        Capability.UNLIMITED);
  }
}
