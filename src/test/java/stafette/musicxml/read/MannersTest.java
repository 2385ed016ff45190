package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.score;
import static stafette.musicxml.read.Xml.strokes;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Manner;
import stafette.score.Stroke;

/** Ways of playing that a score asks for in words or in sound. */
class MannersTest {
  private static final String QUARTER = note("A", 4, 12, "");

  private static String words(String text) {
    return "<direction><direction-type><words>" + text + "</words></direction-type></direction>";
  }

  private static List<Manner> manners(String... parts) throws UnreadableScore {
    return strokes(score(ATTRIBUTES + String.join("", parts))).stream()
        .map(Stroke::manner)
        .toList();
  }

  private static List<Manner> plucked(String pattern) {
    return Arrays.stream(pattern.split(""))
        .map(each -> each.equals("p") ? Manner.PLUCKED : Manner.PLAIN)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"pizz.", "Pizz", "pizzicato", "pizzicati", "sempre pizz.", "gezupft", "pincé"})
  void words_for_plucking_hold_from_their_place_on(String text) throws UnreadableScore {
    assertEquals(plucked("-ppp"), manners(QUARTER, words(text), QUARTER, QUARTER, QUARTER));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"arco", "coll'arco", "gestrichen", "mit Bogen", "mit dem Bogen", "avec l'archet"})
  void words_for_the_bow_end_it(String text) throws UnreadableScore {
    assertEquals(
        plucked("pp--"), manners(words("pizz."), QUARTER, QUARTER, words(text), QUARTER, QUARTER));
  }

  @ParameterizedTest
  @ValueSource(strings = {"marcato", "spiccato", "dolce", "Marco", "pizza"})
  void other_words_leave_it_as_it_was(String text) throws UnreadableScore {
    assertEquals(plucked("pp"), manners(words("pizz."), QUARTER, words(text), QUARTER));
    assertEquals(plucked("--"), manners(QUARTER, words(text), QUARTER));
  }

  @Test
  void a_sound_says_it_too() throws UnreadableScore {
    assertEquals(
        plucked("-p-"),
        manners(
            QUARTER,
            "<sound pizzicato=\"yes\"/>",
            QUARTER,
            "<direction><direction-type><words>norm.</words></direction-type>"
                + "<sound pizzicato=\"no\"/></direction>",
            QUARTER));
  }

  @Test
  void it_goes_on_in_the_next_bar() throws UnreadableScore {
    List<Stroke> strokes =
        strokes(score(ATTRIBUTES + words("pizz.") + note("A", 4, 48, ""), note("A", 4, 48, "")));
    assertEquals(plucked("pp"), strokes.stream().map(Stroke::manner).toList());
  }
}
