package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.plan.Seat;
import stafette.tables.LimitTables;
import stafette.words.UnreadableFile;

/** Players with measured limits. */
class PlayersFileTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();
  private static final String TWO =
      """
      {
        "format": "stafette-players",
        "version": 1,
        "players": [
          {
            "name": "Clarinet 1",
            "techniques": [
              { "name": "Double Tonguing", "peak": 11.5, "stamina": 20, "comment": "on one day" }
            ],
            "level": 90,
            "breath": { "capacity": 30 }
          },
          {
            "name": "Desk 3",
            "instrument": "violin",
            "techniques": [
              { "name": "sautille", "peak": 12, "sustained": 9.5, "recovery": 5, "moving": 11 }
            ]
          }
        ]
      }
      """;

  @Test
  void a_players_own_figures_hold_at_every_assurance() throws Exception {
    Technique own = technique(read(TWO).of("clarinet 1").orElseThrow(), "double tonguing");
    Capability at84 = own.limit().at(Assurance.DEFAULT);
    assertEquals(11_500, at84.peakMilli());
    assertEquals(at84, own.limit().at(new Assurance(99)));
    assertTrue(own.expected(), "the player is known to have it");
  }

  @Test
  void what_a_player_manages_may_be_said_in_words() throws Exception {
    String said =
        TWO.replace(
                "\"peak\": 11.5, \"stamina\": 20", "\"says\": \"sixteenths at 165 for 20 seconds\"")
            .replace("\"comment\": \"on one day\"", "\"recovery\": 5");
    Schemas.assertValid("players", said);
    Instrument clarinet = read(said).of("Clarinet 1").orElseThrow();
    Instrument usual = CATALOGUE.find("clarinet").orElseThrow();
    Capability own = technique(clarinet, "double tonguing").limit().at(Assurance.DEFAULT);
    assertEquals(20, own.staminaStrokes() / (11 - own.sustainedPerSecond()), 0.05);
    assertEquals(5, own.recoverySeconds());
    assertEquals(own, technique(clarinet, "double tonguing").limit().at(new Assurance(99)));
    assertTrue(technique(clarinet, "double tonguing").expected(), "the player is known to have it");
    assertEquals(
        own.sustainedPerSecond() / technique(usual, "double tonguing").limit().sustainedPerSecond(),
        technique(clarinet, "single tonguing").limit().peakPerSecond()
            / technique(usual, "single tonguing").limit().peakPerSecond(),
        0.001,
        "what else the tongue does follows");
  }

  @Test
  void the_file_that_the_readme_shows_is_one() throws Exception {
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf("```json") + "```json".length();
    String shown = readme.substring(from, readme.indexOf("```", from));
    Schemas.assertValid("players", shown);
    Technique single = technique(read(shown).of("Flute 1").orElseThrow(), "single tonguing");
    assertEquals(9.601, single.limit().peakPerSecond());
  }

  @Test
  void a_figure_beside_a_saying_stays_as_it_was_measured() throws Exception {
    String measured = "{ \"name\": \"sautille\"";
    String said = "{ \"name\": \"détaché\", \"says\": \"sixteenths at 180\" }, ";
    Instrument violin = read(TWO.replace(measured, said + measured)).of("Desk 3").orElseThrow();
    assertEquals(
        new Capability(12_000, 9_500, 26_000, 5_000, 11_000),
        technique(violin, "sautillé").limit().at(Assurance.DEFAULT));
    assertEquals(12_001, technique(violin, "détaché").limit().at(Assurance.DEFAULT).peakMilli());
  }

  @Test
  void a_technique_that_is_there_twice_is_told_and_not_read_twice() {
    String figures =
        "{ \"name\": \"sautille\", \"peak\": 12, \"sustained\": 9.5, \"recovery\": 5, \"moving\": 11 }";
    String twice = TWO.replace(figures, figures + ", " + figures);
    UnreadableFile unreadable = assertThrows(UnreadableFile.class, () -> read(twice));
    assertEquals(
        List.of("players.json, player 2, technique 2: 'sautillé' is there twice; keep one of them"),
        unreadable.problems());
  }

  @Test
  void a_seat_may_be_given_and_must_be_whole() throws Exception {
    String seated = TWO.replace("\"level\": 90,", "\"seat\": {\"across\": -3, \"back\": 4.5},");
    Schemas.assertValid("players", seated);
    assertEquals(Map.of("Clarinet 1", new Seat(-3, 4.5)), read(seated).seats());
    UnreadableFile unreadable =
        assertThrows(UnreadableFile.class, () -> read(seated.replace("\"back\"", "\"bock\"")));
    assertEquals(
        List.of(
            "players.json, player 1, seat: 'bock' is not known here; use back",
            "players.json, player 1, seat: back is missing; add it"),
        unreadable.problems());
  }

  @Test
  void what_was_not_measured_follows_the_population_in_proportion() throws Exception {
    Instrument clarinet = read(TWO).of("Clarinet 1").orElseThrow();
    Technique own = technique(clarinet, "double tonguing");
    Technique usual = technique(CATALOGUE.find("clarinet").orElseThrow(), "double tonguing");
    assertEquals(
        11.5 * usual.limit().sustainedPerSecond() / usual.limit().peakPerSecond(),
        own.limit().sustainedPerSecond(),
        1e-9);
    assertEquals(20, own.limit().staminaStrokes().orElseThrow());
    assertEquals(
        technique(CATALOGUE.find("clarinet").orElseThrow(), "single tonguing"),
        technique(clarinet, "single tonguing"));
    assertEquals(90, clarinet.levelDecibel());
    assertEquals(30, clarinet.breath().orElseThrow().capacitySeconds());
    assertEquals(0.4, clarinet.breath().orElseThrow().catchSeconds());
  }

  @Test
  void a_player_of_any_name_can_say_what_it_plays() throws Exception {
    Instrument violin = read(TWO).of("Desk 3").orElseThrow();
    assertEquals("violin", violin.name());
    assertEquals(
        new Capability(12_000, 9_500, 26_000, 5_000, 11_000),
        technique(violin, "sautillé").limit().at(Assurance.DEFAULT));
  }

  @Test
  void the_schema_and_the_reader_agree() {
    Schemas.assertValid("players", TWO);
    assertEquals(1, Schemas.problems("players", TWO.replace("\"peak\": 12", "\"peak\": 0")).size());
    assertEquals(1, Schemas.problems("players", TWO.replace("sustained", "sustain")).size());
  }

  @Test
  void a_file_is_named_as_the_user_names_it() {
    byte[] bytes = TWO.replace("11.5", "-1").getBytes(StandardCharsets.UTF_8);
    assertEquals(
        List.of("../section.json, player 1, technique 1: peak must be a number above 0, found -1"),
        assertThrows(
                UnreadableFile.class, () -> PlayersFile.read("../section.json", bytes, CATALOGUE))
            .problems());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '§',
      value = {
        "11.5§\"fast\"§player 1, technique 1: peak must be a number above 0, found \"fast\"",
        "\"peak\": 11.5, §§player 1, technique 1: double tonguing needs either"
            + " \"peak\", a figure, or \"says\", such as \"sixteenths at 132 for 4 bars\"",
        "11.5§11.5, \"says\": \"16ths at 132\"§player 1, technique 1: double tonguing needs either"
            + " \"peak\", a figure, or \"says\", such as \"sixteenths at 132 for 4 bars\"",
        "\"peak\": 11.5§\"says\": \"16ths at 172\"§player 1, technique 1: \"says\" stands for"
            + " sustained and stamina; take those out",
        "Double Tonguing\", \"peak\": 11.5, \"stamina\": 20§slurred\", \"says\": \"16ths at 132\"§player"
            + " 1, technique 1: slurred: \"says\" is about strokes of tongue or bow, and these notes"
            + " are made by the fingers; give \"peak\" and \"moving\"",
        "\"peak\": 11.5, \"stamina\": 20§\"says\": \"16ths\"§player 1, technique 1, says: say the"
            + " tempo, as in \"sixteenths at 132 for 4 bars\"",
        "Double Tonguing§flutter§player 1, technique 1: clarinet in B-flat has no 'flutter'; use"
            + " one of slurred, single tonguing, double tonguing",
        "sustained§sustain§player 2, technique 1: 'sustain' is not known here; use sustained",
        "9.5§12.5§player 2, technique 1: sustained is above peak; correct one of them",
        "\"violin\"§\"violinn\"§player 2: no instrument is called 'violinn'; use violin or violone",
        "Desk 3§Clarinet 1§player 2: 'Clarinet 1' is there twice; keep one of them",
        "Clarinet 1§Nobody§player 1: no instrument is called 'Nobody'; add it to instruments.csv,"
            + " or name one with \"instrument\"",
      })
  void a_mistake_is_told_with_player_and_technique(String sound, String spoilt, String message) {
    String text = TWO.replace(sound, spoilt == null ? "" : spoilt);
    UnreadableFile unreadable = assertThrows(UnreadableFile.class, () -> read(text));
    assertEquals(List.of("players.json, " + message), unreadable.problems());
  }

  @Test
  void breath_is_for_winds() {
    String text =
        TWO.replace("\"instrument\": \"violin\",", "\"instrument\": \"violin\", \"breath\": {},");
    assertEquals(
        List.of("players.json, player 2: breath means nothing to violin; take it out"),
        assertThrows(UnreadableFile.class, () -> read(text)).problems());
  }

  private static PlayersFile read(String text) throws UnreadableFile {
    return PlayersFile.read("players.json", text, CATALOGUE);
  }

  private static Technique technique(Instrument instrument, String name) {
    return Catalogue.technique(instrument, name).orElseThrow();
  }
}
