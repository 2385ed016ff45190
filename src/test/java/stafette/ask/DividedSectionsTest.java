package stafette.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.chairs.Chairs;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.ToneChoice;
import stafette.score.Voice;
import stafette.words.Refusal;

/** "Violins I div. a 2" stands for two players. */
class DividedSectionsTest {
  private static final String ORCHESTRA =
      "Flute, Oboe, Clarinet, Bassoon, Horn, Violin I, Violin II, Viola, Cello, Double Bass";

  @ParameterizedTest
  @CsvSource(
      delimiter = '§',
      value = {
        "Violins I div. a 2§Violins I outside, Violins I inside",
        "Violins 1 div.§Violins 1 outside, Violins 1 inside",
        "Violas divisi§Violas outside, Violas inside",
        "Violinen II geteilt§Violinen II outside, Violinen II inside",
        "Violas div. a 3§Violas desks 1 of 3, Violas desks 2 of 3, Violas desks 3 of 3",
        "Cellos div. à 2§Cellos outside, Cellos inside",
        "Violini II div. a due§Violini II outside, Violini II inside",
        "Flute 1, Anna = bassoon§Flute 1, Anna",
      })
  void it_is_read_as_so_many_names(String typed, String players) throws Refusal {
    assertEquals(
        players,
        PlayerWish.parse(typed).stream().map(PlayerWish::name).collect(Collectors.joining(", ")));
  }

  @Test
  void into_four_goes_and_into_more_does_not() throws Refusal {
    assertEquals(4, PlayerWish.parse("Violins II div. a 4").size());
    Refusal refusal =
        assertThrows(Refusal.class, () -> PlayerWish.parse("Flute 1, Violins II div. a 5"));
    assertEquals(
        "\"Violins II div. a 5\": a section is divided into two, three or four; write for example"
            + " \"Violins II div. a 2\"",
        refusal.inWords().toString());
  }

  @Test
  void each_division_plays_the_sections_instrument_so_much_softer_and_is_busy_with_its_part()
      throws Exception {
    List<Player> players = players("Violins I, Violins II", "Violins II, Violins I div. a 2");
    Player whole = players.get(0);
    Player outside = players.get(1);
    Player inside = players.get(2);
    assertEquals("violin", inside.instrument().name());
    assertEquals(
        whole.instrument().levelDecibel() - 10 * Math.log10(2),
        outside.instrument().levelDecibel(),
        1e-9);
    assertEquals(Optional.of("P1"), outside.part());
    assertEquals(outside.part(), inside.part());
    assertEquals(OptionalInt.of(2), inside.chair());
    assertEquals(1, outside.busy().size());
    assertEquals(outside.busy(), inside.busy());
    assertTrue(outside.isLike(inside));
  }

  @Test
  void a_third_is_nearly_five_decibels_softer() throws Exception {
    List<Player> thirds = players("Violins I, Violas", "Violas div. a 3");
    assertEquals(Collections.nCopies(3, Optional.of("P2")), parts(thirds));
    assertEquals(87 - 4.77, thirds.get(2).instrument().levelDecibel(), 0.01);
  }

  @Test
  void a_section_that_the_score_does_not_have_is_new_and_free() throws Exception {
    List<Player> players = players("Piano", "Violins I div.");
    assertEquals(List.of(Optional.empty(), Optional.empty()), parts(players));
    assertTrue(players.stream().allMatch(player -> player.busy().isEmpty()));
  }

  @Test
  void in_an_orchestra_a_part_is_a_section_by_whatever_name() throws Exception {
    assertEquals(
        List.of(Optional.of("P6"), Optional.of("P6")), parts(players(ORCHESTRA, "Violins 1 div.")));
    assertEquals(
        List.of(Optional.of("P7"), Optional.of("P7")), parts(players(ORCHESTRA, "Violin II div.")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Violin 1 div.", "Violins I div. a 2", "Viola divisi"})
  void who_plays_alone_can_not_be_divided(String typed) throws Exception {
    Refusal refusal = refused("Violin 1, Violin 2, Viola, Cello", typed);
    assertTrue(
        refusal.inWords().toString().contains("is one player and can't be divided"),
        refusal.inWords().toString());
  }

  @Test
  void winds_can_not_be_divided() throws Exception {
    assertEquals(
        "Flutes outside: only sections of bowed strings can be divided, as in \"Violins I div. a"
            + " 2\"; name each player of Flutes instead",
        refused("Flutes, Violins I", "Flutes div. a 2").inWords().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Violins I inside, Violins I",
        "Violins I, Violins I inside",
        "Violins I inside, Violins I div. a 3",
      })
  void nobody_sits_in_two_divisions(String typed) throws Exception {
    assertTrue(
        refused("Violins I, Violins II", typed).inWords().toString().contains("share players"));
  }

  private static Refusal refused(String parts, String typed) throws Exception {
    return assertThrows(Refusal.class, () -> players(parts, typed));
  }

  private static List<Optional<String>> parts(List<Player> players) {
    return players.stream().map(Player::part).toList();
  }

  /** Players for a line of the last part; all others have a note in the second bar. */
  private static List<Player> players(String parts, String typed) throws Exception {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    Score score = MusicXmlReader.read(score(parts.split(", "))).score();
    Part last = score.parts().get(score.parts().size() - 1);
    Voice voice = last.voices().get(0);
    Line line = score.line(last, voice, voice.strokes().subList(0, 1), new ToneChoice.All());
    return new Roster(
            score,
            Chairs.of(score, limits.catalogue()),
            List.of(line),
            limits,
            MeasuredPlayers.load(Optional.empty(), limits),
            Assurance.DEFAULT,
            List.of())
        .of(PlayerWish.parse(typed));
  }

  private static byte[] score(String... names) {
    StringBuilder list = new StringBuilder();
    StringBuilder parts = new StringBuilder();
    for (int i = 1; i <= names.length; i++) {
      String name = "<part-name>" + names[i - 1] + "</part-name>";
      list.append("<score-part id=\"P" + i + "\">" + name + "</score-part>");
      parts.append("<part id=\"P" + i + "\"><measure number=\"1\">" + Xml.ATTRIBUTES);
      parts.append(i == names.length ? Xml.note("A", 4, 48, "") : Xml.rest(48));
      parts.append("</measure><measure number=\"2\">" + Xml.note("A", 4, 48, ""));
      parts.append("</measure></part>");
    }
    return ("<score-partwise version=\"4.0\"><part-list>"
            + list
            + "</part-list>"
            + parts
            + "</score-partwise>")
        .getBytes(StandardCharsets.UTF_8);
  }
}
