package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What feats make of the limits of the population. All figures are inventions. */
class OwnLimitTest {
  private static final Limit MEAN =
      new Limit(8.4, 1.09, 7.2, OptionalDouble.empty(), 8, OptionalDouble.of(14));

  /** A thousandth, to which figures are rounded up, and what doubles lose. */
  private static final double ROUNDED = 0.001 + 1e-9;

  private static Limit own(Limit mean, Feat... feats) {
    return OwnLimit.of(mean, Arrays.asList(feats));
  }

  private static Feat feat(double perSecond, double seconds) {
    return new Feat("so", perSecond, OptionalDouble.of(seconds));
  }

  private static Feat moment(double perSecond) {
    return new Feat("so", perSecond, OptionalDouble.empty());
  }

  private static Capability figures(Limit limit) {
    return limit.at(Assurance.DEFAULT);
  }

  /** How long a fresh player lasts at a constant rate, by the law of tiredness. */
  private static double lasts(Capability capability, double perSecond) {
    return capability.staminaStrokes() / (perSecond - capability.sustainedPerSecond());
  }

  /** How much longer rounding to thousandths may let the player last. */
  private static double hair(Capability capability, double perSecond, double seconds) {
    return (seconds + 1) * ROUNDED / (perSecond - capability.sustainedPerSecond() - ROUNDED)
        + ROUNDED;
  }

  @Property
  void who_says_to_keep_a_rate_so_long_keeps_it_that_long_and_not_a_hair_longer(
      @ForAll @DoubleRange(min = 3, max = 20) double rate,
      @ForAll @DoubleRange(min = 8, max = 100) double seconds) {
    Capability capability = figures(own(MEAN, feat(rate, seconds)));
    double lasts = lasts(capability, rate);
    assertTrue(lasts >= seconds, () -> lasts + " for " + seconds);
    assertTrue(lasts <= seconds + hair(capability, rate, seconds), () -> lasts + " for " + seconds);
    assertTrue(capability.peakPerSecond() >= rate);
  }

  @Property
  void one_feat_multiplies_all_figures_by_one_factor(
      @ForAll @DoubleRange(min = 3, max = 20) double rate,
      @ForAll @DoubleRange(min = 0.1, max = 100) double seconds) {
    Limit own = own(MEAN, feat(rate, seconds));
    double counted = Math.max(8, seconds);
    double factor = rate * counted / (9.6 + 7.2 * counted);
    assertEquals(8.4 * factor, own.peakPerSecond(), ROUNDED);
    assertEquals(7.2 * factor, own.sustainedPerSecond(), ROUNDED);
    assertEquals(9.6 * factor, own.staminaStrokes().orElseThrow(), ROUNDED);
    assertEquals(14 * factor, own.movingPerSecond().orElseThrow(), ROUNDED);
    assertEquals(0, own.deviationPerSecond());
  }

  @Property
  void a_moment_and_what_is_kept_for_less_than_eight_seconds_speak_of_the_peak(
      @ForAll @DoubleRange(min = 3, max = 20) double rate,
      @ForAll @DoubleRange(min = 0.1, max = 8) double seconds) {
    assertEquals(own(MEAN, moment(rate)), own(MEAN, feat(rate, seconds)));
    assertEquals(rate, own(MEAN, moment(rate)).peakPerSecond(), ROUNDED);
  }

  @Property
  void who_says_a_faster_rate_has_faster_limits_and_who_says_longer_too(
      @ForAll @DoubleRange(min = 3, max = 20) double rate,
      @ForAll @DoubleRange(min = 0.1, max = 100) double seconds,
      @ForAll @DoubleRange(min = 1, max = 3) double more) {
    Limit own = own(MEAN, feat(rate, seconds));
    for (Limit better :
        List.of(own(MEAN, feat(rate * more, seconds)), own(MEAN, feat(rate, seconds * more)))) {
      assertTrue(better.peakPerSecond() >= own.peakPerSecond() - ROUNDED);
      assertTrue(better.sustainedPerSecond() >= own.sustainedPerSecond() - ROUNDED);
      assertTrue(
          better.staminaStrokes().orElseThrow() >= own.staminaStrokes().orElseThrow() - ROUNDED);
    }
  }

  @Property
  void two_feats_of_eight_seconds_and_more_both_just_hold(
      @ForAll @DoubleRange(min = 3, max = 15) double slower,
      @ForAll @DoubleRange(min = 1.02, max = 1.5) double quicker,
      @ForAll @DoubleRange(min = 8, max = 30) double seconds,
      @ForAll @DoubleRange(min = 1.6, max = 4) double longer) {
    Feat sprint = feat(slower * quicker, seconds);
    Feat distance = feat(slower, seconds * longer);
    Capability capability = figures(own(MEAN, sprint, distance));
    for (Feat feat : List.of(sprint, distance)) {
      double lasts = lasts(capability, feat.perSecond());
      assertTrue(lasts >= feat.lasting(), () -> lasts + " for " + feat);
      assertTrue(
          lasts <= feat.lasting() + hair(capability, feat.perSecond(), feat.lasting()),
          () -> lasts + " for " + feat);
    }
    assertTrue(capability.peakPerSecond() >= sprint.perSecond());
  }

  @Test
  void between_two_feats_a_third_raises_the_stamina_until_it_holds() {
    Feat sprint = feat(10, 10);
    Feat distance = feat(8, 40);
    Feat between = feat(9.5, 20);
    Capability two = figures(own(MEAN, sprint, distance));
    Capability three = figures(own(MEAN, sprint, between, distance));
    assertEquals(two.sustainedMilli(), three.sustainedMilli());
    assertEquals(20, lasts(three, 9.5), 0.1);
    assertTrue(lasts(three, 10) > 10 && lasts(three, 8) > 40);
  }

  @Test
  void beside_a_longer_feat_a_short_one_or_a_moment_is_the_peak() {
    for (Feat burst : List.of(moment(9.6), feat(9.6, 5 / 3.0))) {
      Limit own = own(MEAN, burst, feat(8.8, 20));
      double factor = 8.8 * 20 / (9.6 + 7.2 * 20);
      assertEquals(9.6, own.peakPerSecond(), ROUNDED);
      assertEquals(7.2 * factor, own.sustainedPerSecond(), ROUNDED);
      assertEquals(14 * 9.6 / 8.4, own.movingPerSecond().orElseThrow(), 2 * ROUNDED);
    }
  }

  @Test
  void where_nothing_can_go_on_the_strokes_are_the_stamina() {
    Limit thrown = new Limit(13, 1.5, 0, OptionalDouble.of(6), 8, OptionalDouble.empty());
    Limit own = own(thrown, feat(12, 2));
    assertEquals(12, own.peakPerSecond(), ROUNDED);
    assertEquals(0, own.sustainedPerSecond());
    assertEquals(24, own.staminaStrokes().orElseThrow(), ROUNDED);
    assertEquals(6 * 12 / 13.0, own(thrown, moment(12)).staminaStrokes().orElseThrow(), ROUNDED);
  }

  @Test
  void a_stamina_from_the_tables_counts_as_it_is_there() {
    Limit tables = new Limit(8.4, 1.09, 7.2, OptionalDouble.of(24), 8, OptionalDouble.empty());
    Limit own = own(tables, feat(8.8, 30));
    double factor = 8.8 * 30 / (24 + 7.2 * 30);
    assertEquals(24 * factor, own.staminaStrokes().orElseThrow(), ROUNDED);
    assertEquals(own(tables, moment(8.8)), own(tables, feat(8.8, 20)));
  }
}
