package stafette.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.limits.Act;
import stafette.limits.Breath;
import stafette.limits.Evidence;
import stafette.limits.Grade;
import stafette.limits.Instrument;
import stafette.limits.Source;
import stafette.limits.Stance;
import stafette.limits.Statement;
import stafette.limits.Technique;
import stafette.score.Transposition;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;

/**
 * The built-in tables against what has been published: limits/statements.csv holds what is said of
 * an instrument's technique, shared/reference-limits.csv what holds for more than one (syllables,
 * taps, breath), of grade A and B and read, each with its source.
 */
class PublishedFiguresTest {
  private static final LimitTables TABLES = LimitTables.builtIn();
  private static final List<CSVRecord> PUBLISHED = published();

  @Test
  void every_row_names_a_source_with_its_grade() {
    for (Instrument instrument : TABLES.catalogue().instruments()) {
      assertNamed(instrument.name(), instrument.source());
      instrument
          .techniques()
          .forEach(t -> assertNamed(instrument.name() + ", " + t.name(), t.source()));
    }
  }

  private static void assertNamed(String what, Source source) {
    assertFalse(source.text().isBlank(), what);
    boolean none = source.text().equals(Source.COMMON_PRACTICE.text());
    assertTrue(!none || source.grade() == Grade.D, what + " has no source and so grade D");
    assertTrue(source.grade() != Grade.A, what + ": nothing measured is known");
    assertTrue(
        source.grade() != Grade.C || source.text().contains("from memory"),
        what + " of grade C says that it is from memory");
  }

  @Test
  void published_figures_name_their_source_and_are_of_grade_a_or_b() {
    assertFalse(PUBLISHED.isEmpty());
    for (CSVRecord row : PUBLISHED) {
      assertFalse(row.get("source").isBlank(), row.toString());
      assertTrue(List.of("A", "B").contains(row.get("grade")), row.toString());
      assertFalse(row.get("value").isBlank() && row.get("low").isBlank(), row.toString());
    }
  }

  /** Aoki & Kinoshita 2001: two fingers in turn tap half as fast again as one. */
  @Test
  void two_fingers_pluck_about_half_as_fast_again_as_one() {
    double ratio =
        number("index+middle finger", "alternate tapping, 7 s, ratio to one finger", "value");
    for (String strings : List.of("violin", "viola", "cello", "double bass")) {
      assertEquals(
          ratio,
          peak(strings, "pizzicato two fingers") / peak(strings, "pizzicato one finger"),
          0.05,
          strings);
    }
  }

  @Test
  void one_hand_is_within_the_population_and_two_are_below_the_record() {
    String stick = "one hand, stick";
    double most = number(stick, "single-hand repeated stroke", "high");
    double record = record();
    for (Instrument instrument : TABLES.catalogue().instruments()) {
      if (instrument.techniques().get(0).act() == Act.MALLET) {
        for (Technique technique : instrument.techniques()) {
          assertTrue(
              technique.limit().peakPerSecond() < (technique.takers() == 1 ? most : record),
              instrument.name() + ", " + technique.name());
        }
      }
    }
    assertTrue(
        number(stick, "single-hand repeated stroke", "low") <= peak("snare drum", "one hand"));
  }

  /** The most single strokes in 60 s, among the statements on the snare drum. */
  private static double record() {
    return TABLES.evidence().about(instrument("snare drum")).stream()
        .map(Stance::statement)
        .filter(
            said -> said.figure() == Statement.Figure.SUSTAINED && said.source().grade() == Grade.B)
        .mapToDouble(Statement::highPerSecond)
        .findFirst()
        .orElseThrow();
  }

  /** Trained tongues outrun untrained ones at syllables (Icht & Ben-David 2014). */
  @Test
  void single_tonguing_is_faster_than_untrained_syllables() {
    double syllables = number("tongue (speech proxy)", "syllable repetition /pataka/", "value");
    for (Instrument wind : winds()) {
      assertTrue(peak(wind.name(), "single tonguing") > syllables, wind.name());
    }
  }

  /**
   * Icht & Ben-David 2014: 0.8 of 6.2. That winds spread as much where nobody is chosen for it, and
   * less where auditions cut the lower tail, is a judgement.
   */
  @Test
  void winds_spread_as_syllables_do_or_less_where_auditions_choose() {
    double syllables = 0.8 / 6.2;
    for (Instrument wind : winds()) {
      for (Technique technique : wind.techniques()) {
        double spread = technique.limit().deviationPerSecond() / technique.limit().peakPerSecond();
        String which = wind.name() + ", " + technique.name();
        if (technique.expected()) {
          assertEquals(0.085, spread, 0.005, which);
        } else {
          assertEquals(syllables, spread, 0.002, which);
        }
      }
    }
  }

  /**
   * Wolfe: 0.1 to 1 litre a second; Cossette et al. 2000: 72 to 83 % of the vital capacity in a
   * breath; Wolfe's own example of five litres.
   */
  @Test
  void a_breath_lasts_as_long_as_flow_and_lungs_allow() {
    String flow = "air flow while playing";
    String share = "share of vital capacity used in a breath";
    double least = 5 * number("flute", share, "low") / number("winds", flow, "high");
    double most = 5 * number("flute", share, "high") / number("winds", flow, "low");
    for (Instrument wind : winds()) {
      double capacity = wind.breath().map(Breath::capacitySeconds).orElseThrow();
      assertTrue(least <= capacity && capacity <= most, wind.name());
    }
  }

  /** Rates as metronome marks for sixteenths, reckoned by the clock: mark × 4 / 60. */
  @ParameterizedTest
  @CsvSource({"126, 8.4", "120, 8.0", "138, 9.2", "100, 6.6667", "121, 8.0667", "131, 8.7333"})
  void a_published_mark_is_that_rate(long quartersPerMinute, double strokesPerSecond) {
    TempoMark mark = new TempoMark(BeatUnit.QUARTER, Rational.of(quartersPerMinute));
    double seconds = mark.seconds(Rational.of(1, 4)).toDouble();
    assertEquals(strokesPerSecond, 1 / seconds, 1e-4);
    assertEquals(quartersPerMinute * 4 / 60.0, 1 / seconds, 1e-9);
  }

  /** From written to sounding, letters and semitones; from memory of handbooks. */
  @ParameterizedTest
  @CsvSource({
    "piccolo, 7, 12",
    "flute, 0, 0",
    "alto flute, -3, -5",
    "oboe d'amore, -2, -3",
    "cor anglais, -4, -7",
    "clarinet in E-flat, 2, 3",
    "clarinet in B-flat, -1, -2",
    "clarinet in A, -2, -3",
    "basset horn, -4, -7",
    "bass clarinet, -8, -14",
    "contrabassoon, -7, -12",
    "soprano saxophone, -1, -2",
    "alto saxophone, -5, -9",
    "tenor saxophone, -8, -14",
    "baritone saxophone, -12, -21",
    "horn in F, -4, -7",
    "trumpet in C, 0, 0",
    "trumpet in B-flat, -1, -2",
    "glockenspiel, 14, 24",
    "xylophone, 7, 12",
    "celesta, 7, 12",
    "double bass, -7, -12",
    "bass flute, -7, -12",
    "contra-alto clarinet, -12, -21",
    "contrabass clarinet, -15, -26",
    "bass saxophone, -15, -26",
    "soprano recorder, 7, 12",
    "alto recorder, 0, 0",
    "bass recorder, 7, 12",
    "piccolo trumpet, 6, 10",
    "bass trumpet, -8, -14",
    "Wagner tuba in B-flat, -1, -2",
    "Wagner tuba in F, -4, -7",
    "tenor horn, -5, -9",
    "baritone in B-flat, -8, -14",
    "crotales, 14, 24",
    "guitar, -7, -12",
  })
  void an_instrument_transposes(String name, int diatonic, int chromatic) {
    assertEquals(new Transposition(diatonic, chromatic), instrument(name).transposition());
  }

  /** Lowest notes of instruments that can't go lower; from memory of handbooks. */
  @ParameterizedTest
  @CsvSource({
    "oboe, 58",
    "clarinet in B-flat, 50",
    "clarinet in A, 49",
    "bassoon, 34",
    "violin, 55",
    "viola, 48",
    "cello, 36",
    "piano, 21",
    "harp, 23",
    "cor anglais, 52",
    "piccolo, 72",
    "alto recorder, 65",
    "tenor recorder, 60",
    "guitar, 40",
    "mandolin, 55",
    "contra-alto clarinet, 30"
  })
  void an_instrument_reaches_down_to(String name, int midi) {
    assertEquals(midi, instrument(name).range().orElseThrow().low());
  }

  /** Common practice, no source. */
  @Test
  void double_tonguing_is_expected_of_flutes_recorders_and_brass_only() {
    for (Instrument wind : winds()) {
      boolean expected =
          wind.family().equals("brass") || wind.name().matches(".*flute|piccolo|.*recorder");
      assertEquals(expected, technique(wind.name(), "double tonguing").expected(), wind.name());
    }
  }

  /** Rimsky-Korsakov, Principles of Orchestration: pizzicato is never as fast as the bow. */
  @Test
  void plucking_is_slower_than_bowing_and_slowest_on_the_double_bass() {
    for (String strings : List.of("violin", "viola", "cello", "double bass")) {
      assertTrue(peak(strings, "pizzicato one finger") < peak(strings, "détaché"), strings);
      assertFalse(technique(strings, "pizzicato one finger").expected(), strings);
    }
    assertTrue(
        peak("double bass", "pizzicato one finger") < peak("violin", "pizzicato one finger"));
  }

  /** No single string of the harp is asked for more than both hands can do on it. */
  @Test
  void moving_over_twin_strings_does_not_outrun_one_string() {
    double moving = technique("harp", "twin strings").limit().movingPerSecond().orElseThrow();
    assertTrue(moving / 2 <= peak("harp", "alternate hands"));
  }

  @Test
  void every_statement_is_about_an_instrument_and_names_who_says_it() {
    assertFalse(TABLES.evidence().statements().isEmpty());
    for (Statement statement : TABLES.evidence().statements()) {
      assertFalse(statement.instruments().isEmpty(), statement.toString());
      assertFalse(statement.conditions().isBlank(), statement.toString());
      assertTrue(statement.source().grade() != Grade.D, "a source has said it: " + statement);
      assertTrue(
          statement.source().grade() == Grade.C || !statement.source().text().contains("memory"),
          "what is from memory is of grade C: " + statement);
    }
  }

  @Test
  void sources_that_contradict_each_other_are_both_kept() {
    List<Evidence.Dispute> disputes = TABLES.evidence().disputes(instrument("clarinet"));
    assertTrue(
        disputes.stream()
            .anyMatch(
                dispute ->
                    dispute.floor().source().text().startsWith("osbornmusic.com")
                        && dispute.ceiling().source().text().startsWith("Fobes")));
  }

  /** Common practice, no source: the wood is thrown anew, and another hand's finger is slower. */
  @Test
  void wood_and_the_left_hand_are_slower_than_the_hair_and_the_right_hand() {
    for (String strings : List.of("violin", "viola", "cello", "double bass", "viola d'amore")) {
      assertTrue(peak(strings, "col legno") < peak(strings, "spiccato"), strings);
      assertTrue(
          peak(strings, "left-hand pizzicato") < peak(strings, "pizzicato one finger"), strings);
      assertTrue(
          moving(strings, "fingered tremolo") < moving(strings, "slurred"),
          strings + ": slower than a trill");
    }
  }

  /** Common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "contra-alto clarinet, contrabass clarinet",
    "sopranino recorder, alto recorder",
    "alto recorder, tenor recorder",
    "tenor recorder, bass recorder",
    "piccolo trumpet, bass trumpet",
    "alto trombone, contrabass trombone",
    "Wagner tuba in B-flat, Wagner tuba in F",
    "flugelhorn, tenor horn",
    "tenor horn, baritone in B-flat",
  })
  void a_larger_wind_is_slower_than_a_smaller_one_of_its_kind(String smaller, String larger) {
    for (Technique technique : instrument(smaller).techniques()) {
      assertTrue(
          peak(larger, technique.name()) < technique.limit().peakPerSecond(),
          smaller + ", " + larger + ": " + technique.name());
      assertTrue(moving(larger, technique.name()) <= moving(smaller, technique.name()), larger);
    }
  }

  private static double moving(String instrument, String technique) {
    return technique(instrument, technique).limit().movingPerSecond().orElseThrow();
  }

  private static List<Instrument> winds() {
    return TABLES.catalogue().instruments().stream().filter(Instrument::isWind).toList();
  }

  private static Instrument instrument(String name) {
    return TABLES.catalogue().find(name).orElseThrow();
  }

  private static Technique technique(String instrument, String name) {
    return stafette.limits.Catalogue.technique(instrument(instrument), name).orElseThrow();
  }

  private static double peak(String instrument, String technique) {
    return technique(instrument, technique).limit().peakPerSecond();
  }

  private static double number(String instrument, String technique, String column) {
    return PUBLISHED.stream()
        .filter(row -> row.get("instrument").equals(instrument))
        .filter(row -> row.get("technique").equals(technique))
        .map(row -> Double.parseDouble(row.get(column)))
        .findFirst()
        .orElseThrow();
  }

  private static List<CSVRecord> published() {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(
            Path.of("shared", "reference-limits.csv"),
            java.nio.charset.StandardCharsets.UTF_8,
            format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void no_built_in_judgement_contradicts_a_statement_that_is_not_set_aside() {
    assertEquals(List.of(), TABLES.contradictions());
  }
}
