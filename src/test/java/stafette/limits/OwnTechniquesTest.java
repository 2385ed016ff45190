package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.tables.LimitTables;
import stafette.words.Refusal;

/** One figure of a player shifts all that hang on it. */
class OwnTechniquesTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();
  private static final Source HEARD = new Source("said in a test", Grade.D);

  private static Technique technique(Instrument instrument, String name) {
    return Catalogue.technique(instrument, name).orElseThrow();
  }

  private static Instrument usual(String instrument) {
    return CATALOGUE.find(instrument).orElseThrow();
  }

  /** A technique in which somebody is better by a factor, said as a rate for a moment. */
  private static Technique better(Instrument usual, String name, double factor) {
    Technique mean = technique(usual, name);
    double perMinute = Math.round(mean.limit().peakPerSecond() * factor * 15 * 1000) / 1000.0;
    try {
      return mean.with(Saying.parse("sixteenths at " + perMinute).on(mean), true, HEARD);
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }

  private static Instrument in(Instrument usual, Technique... own) {
    return OwnTechniques.in(usual, Arrays.asList(own));
  }

  private static double proportion(Instrument usual, Instrument own, String technique) {
    return technique(own, technique).limit().peakPerSecond()
        / technique(usual, technique).limit().peakPerSecond();
  }

  @Test
  void who_tongues_single_a_tenth_faster_tongues_double_a_tenth_faster() {
    Instrument clarinet = usual("clarinet");
    Instrument own = in(clarinet, better(clarinet, "single tonguing", 1.1));
    Limit mean = technique(clarinet, "double tonguing").limit();
    Technique shifted = technique(own, "double tonguing");
    assertEquals(mean.peakPerSecond() * 1.1, shifted.limit().peakPerSecond(), 0.01);
    assertEquals(mean.sustainedPerSecond() * 1.1, shifted.limit().sustainedPerSecond(), 0.01);
    assertEquals(mean.deviationPerSecond() * 1.1, shifted.limit().deviationPerSecond(), 0.01);
    assertFalse(shifted.expected(), "nobody said that the player has it");
    assertTrue(technique(own, "single tonguing").expected());
  }

  @Test
  void the_stroke_that_begins_a_slur_is_the_players_own_and_the_fingers_are_those_of_most() {
    Instrument clarinet = usual("clarinet");
    Instrument own = in(clarinet, better(clarinet, "single tonguing", 0.9));
    Limit single = technique(own, "single tonguing").limit();
    Limit slurred = technique(own, "slurred").limit();
    assertEquals(single.moving(slurred.movingPerSecond()), slurred);
    assertEquals(
        technique(clarinet, "slurred").limit().at(Assurance.DEFAULT).movingMilli(),
        slurred.at(new Assurance(20)).movingMilli());
  }

  @Test
  void fingers_do_not_follow_the_tongue_and_hands_do() {
    Instrument flute = usual("flute");
    Instrument own = in(flute, better(flute, "single tonguing", 0.9));
    assertEquals(
        technique(flute, "double tonguing").limit().movingPerSecond(),
        technique(own, "double tonguing").limit().movingPerSecond());
    Instrument harp = usual("harp");
    Instrument hands = in(harp, better(harp, "one hand", 1.2));
    assertEquals(
        technique(harp, "alternate hands").limit().movingPerSecond().orElseThrow() * 1.2,
        technique(hands, "alternate hands").limit().movingPerSecond().orElseThrow(),
        0.01);
  }

  @Test
  void what_another_hand_or_bow_does_stays() {
    Instrument violin = usual("violin");
    Instrument own = in(violin, better(violin, "détaché", 1.2));
    assertEquals(1.2, proportion(violin, own, "sautillé"), 0.001);
    assertEquals(1, proportion(violin, own, "pizzicato one finger"));
  }

  @Test
  void of_several_known_techniques_that_with_as_many_takers_counts() {
    Instrument flute = usual("flute");
    Instrument own =
        in(flute, better(flute, "single tonguing", 0.9), better(flute, "double tonguing", 1.2));
    assertEquals(1.2, proportion(flute, own, "triple tonguing"), 0.001);
    assertEquals(0.9, proportion(flute, own, "slurred"), 0.001);
  }

  @Test
  void a_figure_without_spread_is_known_and_stays() {
    Instrument flute = usual("flute");
    Instrument measured = in(flute, better(flute, "double tonguing", 1.3));
    Instrument own = in(measured, better(flute, "single tonguing", 0.9));
    assertEquals(1.3, proportion(flute, own, "double tonguing"), 0.001);
  }

  @Test
  void nothing_known_changes_nothing() {
    assertEquals(usual("flute"), OwnTechniques.in(usual("flute"), List.of()));
  }
}
