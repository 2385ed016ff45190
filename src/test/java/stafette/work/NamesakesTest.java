package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.Xml;
import stafette.musicxml.write.HandoffWords;

/** New parts are called as those beside them are. */
class NamesakesTest {
  @ParameterizedTest(name = "{1} beside {0} is {2}")
  @CsvSource({
    "Flauto 1, Flute 2, Flauto 2",
    "Flauto I, Flute 2, Flauto II",
    "Flöte, Flute 2, Flöte 2",
    "1. Flöte, Flute 2, 2. Flöte",
    "Clarinet 1 in B-flat, Clarinet 2, Clarinet 2 in B-flat",
    "Flûtes 1 et 2, Flute 3, Flute 3",
    "1st Flute, Flute 2, Flute 2",
    "Flauto 1, Solo flute, Solo flute",
    "Flauto 1, Oboe 2, Oboe 2",
    "Trumpet 1 in C, Trumpet 2 in B-flat, Trumpet 2 in B-flat"
  })
  void a_part_is_called_like_the_one_beside_it(String there, String player, String name)
      throws Exception {
    Document after = NewPlayers.in(score("<part-name>" + there + "</part-name>"), player);
    assertTrue(after.score().part(name).isPresent(), after.origin().text());
  }

  @Test
  void its_abbreviation_and_printed_names_are_like_its_neighbours() throws Exception {
    String entry =
        entry(
            "<part-name>Clarinetto 1</part-name><part-name-display><display-text>Clarinetto 1 in"
                + " Si</display-text><accidental-text>flat</accidental-text></part-name-display>"
                + "<part-abbreviation>Clar. 1</part-abbreviation>",
            "Clarinet 2",
            "Clarinetto 2");
    assertTrue(entry.contains("<part-abbreviation>Clar. 2<"), entry);
    assertTrue(entry.contains("<display-text>Clarinetto 2 in Si<"), entry);
    assertTrue(entry.contains("<accidental-text>flat<"), entry);
    assertTrue(entry.contains("<instrument-sound>wind.reed.clarinet.bflat<"), entry);
  }

  @Test
  void without_a_like_it_is_abbreviated_as_its_instrument_is() throws Exception {
    String entry =
        entry(
            "<part-name>Flute</part-name><part-abbreviation>Fl.</part-abbreviation>",
            "Bassoon 2",
            "Bassoon 2");
    assertTrue(entry.contains("<part-abbreviation>Bn. 2<"), entry);
  }

  @Test
  void where_no_part_is_abbreviated_a_new_one_is_not() throws Exception {
    assertFalse(
        entry("<part-name>Flute 1</part-name>", "Flute 2", "Flute 2").contains("abbreviation"));
  }

  @Test
  void words_at_a_handoff_call_players_as_their_parts_are_called() throws Exception {
    Document after = NewPlayers.in(score("<part-name>Flauto 1</part-name>"), "Flute 2", "Flute 3");
    assertEquals(
        List.of("to Flauto 3", "from Flauto 2"),
        HandoffWords.in(after).stream().map(HandoffWords::text).toList());
  }

  private static String entry(String there, String player, String name) throws Exception {
    Document after = NewPlayers.in(score(there), player);
    String id = after.score().part(name).orElseThrow().id();
    return after.origin().parts().stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .flatMap(part -> part.scorePart())
        .orElseThrow()
        .in(after.origin().text());
  }

  private static String score(String there) {
    return Xml.scoreOf(there, Xml.ATTRIBUTES + Xml.note("A", 4, 3, "").repeat(16));
  }
}
