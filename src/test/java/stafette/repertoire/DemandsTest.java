package stafette.repertoire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.ask.LineRequest;
import stafette.check.alone.Ease;
import stafette.check.alone.Limiting;
import stafette.check.alone.LineTrial;
import stafette.check.alone.LineVerdict;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.tables.LimitTables;
import stafette.words.Refusal;

/**
 * What the tables must allow, because orchestras play it, and what they must not. Sources and what
 * is from memory stand in {@code shared/repertoire-demands.csv}.
 */
class DemandsTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();

  /**
   * Double tonguing, which not everybody has, or single tonguing at 10.1 a second: clarinettists
   * differ (clarinetcorner, 2004, names the movement for double tonguing).
   */
  private static final String HARDEST = "Prokofiev, Classical Symphony";

  private static List<Double> shares() {
    return Asked.all().stream().map(asked -> asked.verdict(CATALOGUE).share()).toList();
  }

  @Test
  void nothing_that_the_repertoire_asks_is_beyond() {
    for (Asked asked : Asked.all()) {
      assertTrue(asked.verdict(CATALOGUE).ease().plays(), asked.toString());
    }
  }

  @Test
  void most_of_it_is_within_reach_of_half_and_much_of_eighty_four_of_a_hundred() {
    assertEquals(30, shares().size());
    assertTrue(shares().stream().filter(share -> share >= 50).count() >= 28, shares().toString());
    assertTrue(shares().stream().filter(share -> share >= 84).count() >= 24, shares().toString());
  }

  @Test
  void one_passage_alone_is_for_the_few_and_it_is_known_why() {
    assertEquals(
        List.of(HARDEST),
        Asked.all().stream()
            .filter(asked -> asked.verdict(CATALOGUE).share() < 50)
            .map(asked -> asked.passage().substring(0, HARDEST.length()))
            .toList());
  }

  private static LineVerdict verdict(
      String instrument, String techniques, String figure, double ratePerSecond, double seconds) {
    return new Asked("", instrument, techniques, figure, "", ratePerSecond, seconds)
        .verdict(CATALOGUE);
  }

  @Test
  void twelve_strokes_a_second_on_one_string_of_the_harp_are_beyond() {
    Instrument harp = CATALOGUE.find("harp").orElseThrow();
    List<Technique> single =
        harp.techniques().stream().filter(technique -> !technique.twinStrings()).toList();
    Asked asked = new Asked("", "harp", "", "repeated", "", 12, 2);
    assertEquals(
        Ease.BEYOND, LineTrial.of(asked.line(harp), harp, Assurance.DEFAULT, single).ease());
  }

  @Test
  void a_chromatic_run_is_beyond_the_pedals_of_the_harp() {
    LineVerdict verdict = verdict("harp", "", "chromatic", 8, 3);
    assertEquals(Ease.BEYOND, verdict.ease());
    assertEquals(Limiting.PEDALS, verdict.limiting());
  }

  private static List<Technique> expected(Instrument instrument) {
    return instrument.techniques().stream().filter(Technique::expected).toList();
  }

  private static Stream<Instrument> winds() {
    return CATALOGUE.instruments().stream().filter(Instrument::isWind);
  }

  @Test
  void repeated_notes_above_eleven_a_second_are_beyond_single_tonguing() {
    for (Instrument wind : winds().toList()) {
      Technique single = Catalogue.technique(wind, "single tonguing").orElseThrow();
      Asked asked = new Asked("", wind.name(), "", "repeated", "", 11.1, 2);
      assertEquals(
          Ease.BEYOND,
          LineTrial.of(asked.line(wind), wind, Assurance.DEFAULT, List.of(single)).ease(),
          wind.name());
    }
  }

  @Test
  void a_bassoon_does_not_tongue_ten_a_second_for_half_a_minute_without_breath() {
    Instrument bassoon = CATALOGUE.find("bassoon").orElseThrow();
    Asked asked = new Asked("", "bassoon", "", "repeated", "", 10, 30);
    List<Technique> expected = expected(bassoon);
    assertEquals(
        Ease.BEYOND,
        LineTrial.of(asked.line(bassoon), bassoon, Assurance.DEFAULT, expected).ease());
    Instrument endless =
        bassoon.with(bassoon.levelDecibel(), Optional.<Breath>empty(), bassoon.techniques());
    LineVerdict tired = LineTrial.of(asked.line(bassoon), endless, Assurance.DEFAULT, expected);
    assertEquals(Ease.BEYOND, tired.ease(), "nor if it never had to breathe");
    assertEquals(Limiting.TIREDNESS, tired.limiting());
  }

  @ParameterizedTest
  @CsvSource({"lantern-run, 5, 16", "mill-stairs, 1, 19"})
  void the_piano_lines_of_the_samples_are_beyond_any_single_wind(
      String sample, String first, String last) throws Refusal {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    LineChoice choice =
        new LineChoice(
            "Piano",
            Optional.of(new BarChoice(first + "-" + last)),
            OptionalInt.of(1),
            Optional.empty(),
            Optional.empty());
    LineRequest.FoundLine found =
        LineRequest.whole(Path.of("samples", sample + ".musicxml")).with(choice).find(limits);
    for (Instrument wind : winds().toList()) {
      assertTrue(
          !LineTrial.of(found.line(), wind, Assurance.DEFAULT, expected(wind)).ease().plays(),
          wind.name());
    }
  }
}
