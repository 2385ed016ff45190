package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.score;
import static stafette.musicxml.read.Xml.strokes;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Attack;
import stafette.score.Contact;
import stafette.score.Manner;
import stafette.score.Stroke;

/** Ways of playing that a score asks for in words, in signs or in sound. */
class MannersTest {
  private static final String QUARTER = note("A", 4, 12, "");

  private static final Predicate<Manner> PLUCKED = Manner::isPlucked;
  private static final Predicate<Manner> STRUCK = with(Attack.STRUCK_WITH_WOOD);
  private static final Predicate<Manner> DRAWN = with(Attack.DRAWN_WITH_WOOD);
  private static final Predicate<Manner> FLUTTERED = with(Attack.FLUTTERED);
  private static final Predicate<Manner> BRIDGE = with(Contact.AT_THE_BRIDGE);
  private static final Predicate<Manner> FINGERBOARD = with(Contact.OVER_THE_FINGERBOARD);
  private static final Predicate<Manner> MUTED = Manner::muted;

  private static Predicate<Manner> with(Attack attack) {
    return manner -> manner.attack() == attack;
  }

  private static Predicate<Manner> with(Contact contact) {
    return manner -> manner.contact() == contact;
  }

  private static String words(String text) {
    return "<direction><direction-type><words>" + text + "</words></direction-type></direction>";
  }

  private static String technical(String sign) {
    return "<notations><technical>" + sign + "</technical></notations>";
  }

  private static List<Manner> manners(String... parts) throws UnreadableScore {
    return strokes(score(ATTRIBUTES + String.join("", parts))).stream()
        .map(Stroke::manner)
        .toList();
  }

  /** A letter for each stroke: x where it is so. */
  private static String where(Predicate<Manner> so, String... parts) throws UnreadableScore {
    return manners(parts).stream()
        .map(manner -> so.test(manner) ? "x" : "-")
        .collect(Collectors.joining());
  }

  private static void assertBegins(Predicate<Manner> so, String text) throws UnreadableScore {
    assertEquals("-xx", where(so, QUARTER, words(text), QUARTER, QUARTER), text);
  }

  private static void assertEnds(Predicate<Manner> so, String begin, String text)
      throws UnreadableScore {
    assertEquals("x--", where(so, words(begin), QUARTER, words(text), QUARTER, QUARTER), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"pizz.", "Pizz", "pizzicato", "pizzicati", "sempre pizz.", "gezupft", "pincé"})
  void words_for_plucking_hold_from_their_place_on(String text) throws UnreadableScore {
    assertBegins(PLUCKED, text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "arco",
        "coll'arco",
        "gestrichen",
        "mit Bogen",
        "mit dem Bogen",
        "avec l'archet",
        "bowed",
        "non pizz."
      })
  void words_for_the_bow_end_it(String text) throws UnreadableScore {
    assertEnds(PLUCKED, "pizz.", text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "col legno",
        "col legno battuto",
        "coll legno",
        "col leg.",
        "c. l.",
        "mit Holz",
        "mit dem Holz",
        "avec le bois",
        "with the wood"
      })
  void the_wood_of_the_bow_strikes(String text) throws UnreadableScore {
    assertBegins(STRUCK, text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"col legno tratto", "col leg. tratto", "c. l. tratto"})
  void the_wood_of_the_bow_is_drawn(String text) throws UnreadableScore {
    assertBegins(DRAWN, text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"arco", "ord.", "ordin.", "ordinario", "normal", "gewöhnlich", "nat.", "pizz."})
  void the_wood_goes_with_the_bow_and_with_what_is_usual(String text) throws UnreadableScore {
    assertEnds(STRUCK, "col legno", text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Flatterzunge", "Flzg.", "Flz.", "frull.", "frullato", "flutter", "flatt."})
  void a_tongue_flutters(String text) throws UnreadableScore {
    assertBegins(FLUTTERED, text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ord.", "nat.", "norm.", "senza frull.", "ohne Flatterzunge"})
  void it_flutters_no_more(String text) throws UnreadableScore {
    assertEnds(FLUTTERED, "frull.", text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sul ponticello",
        "sul pont.",
        "s. pont.",
        "pont.",
        "am Steg",
        "sur le chevalet",
        "au chevalet",
        "near the bridge"
      })
  void the_bow_goes_to_the_bridge(String text) throws UnreadableScore {
    assertBegins(BRIDGE, text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sul tasto",
        "sulla tastiera",
        "s. tasto",
        "am Griffbrett",
        "auf dem Griffbrett",
        "sur la touche",
        "over the fingerboard"
      })
  void the_bow_goes_over_the_fingerboard(String text) throws UnreadableScore {
    assertBegins(FINGERBOARD, text);
    assertEnds(BRIDGE, "sul pont.", text);
    assertEnds(FINGERBOARD, text, "ord.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "con sord.",
        "con sordino",
        "con sordina",
        "c. sord.",
        "sordini",
        "mit Dämpfer",
        "mit Dämpfern",
        "m. Dpf.",
        "gedämpft",
        "Dämpfer auf",
        "avec sourdine",
        "en sourdine",
        "mettez les sourdines",
        "muted",
        "with mute",
        "straight mute"
      })
  void a_mute_is_put_on(String text) throws UnreadableScore {
    assertBegins(MUTED, text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "senza sord.",
        "senza sordino",
        "s. sord.",
        "via sord.",
        "sord. via",
        "levare le sordine",
        "ohne Dämpfer",
        "Dämpfer weg",
        "Dämpfer ab",
        "o. Dpf.",
        "sans sourdine",
        "ôtez les sourdines",
        "sourdines ôtées",
        "without mute",
        "mutes off",
        "remove mutes",
        "unmuted",
        "open",
        "offen",
        "ouvert"
      })
  void a_mute_is_taken_off(String text) throws UnreadableScore {
    assertEnds(MUTED, "con sord.", text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "marcato",
        "spiccato",
        "dolce",
        "Marco",
        "pizza",
        "legato",
        "con forza",
        "muta in La",
        "open string",
        "tranquillo"
      })
  void other_words_leave_all_as_it_was(String text) throws UnreadableScore {
    for (String before : List.of("", "pizz.", "col legno", "con sord.", "sul pont.", "frull.")) {
      List<Manner> manners = manners(words(before), QUARTER, words(text), QUARTER);
      assertEquals(manners.get(0), manners.get(1), before);
    }
  }

  @Test
  void what_is_usual_neither_takes_a_mute_off_nor_takes_up_the_bow() throws UnreadableScore {
    List<Manner> manners =
        manners(words("pizz. sul tasto"), words("con sord."), QUARTER, words("ord."), QUARTER);
    assertEquals(new Manner(Attack.PLUCKED, Contact.OVER_THE_FINGERBOARD, true), manners.get(0));
    assertEquals(new Manner(Attack.PLUCKED, Contact.PLAIN, true), manners.get(1));
  }

  @Test
  void each_is_in_force_beside_the_others() throws UnreadableScore {
    List<Manner> manners =
        manners(words("con sord."), QUARTER, words("pizz."), QUARTER, words("arco"), QUARTER);
    assertEquals(
        List.of(
            Manner.PLAIN.withMute(true),
            new Manner(Attack.PLUCKED, Contact.PLAIN, true),
            Manner.PLAIN.withMute(true)),
        manners);
  }

  @Test
  void words_run_on_from_element_to_element() throws UnreadableScore {
    String direction =
        "<direction><direction-type><words>senza</words></direction-type>"
            + "<direction-type><words>sord.</words></direction-type></direction>";
    assertEquals("x-", where(MUTED, words("con sord."), QUARTER, direction, QUARTER));
  }

  @Test
  void a_sound_says_it_too() throws UnreadableScore {
    assertEquals(
        "-x-",
        where(
            PLUCKED,
            QUARTER,
            "<sound pizzicato=\"yes\"/>",
            QUARTER,
            "<direction><direction-type><words>dolce</words></direction-type>"
                + "<sound pizzicato=\"no\"/></direction>",
            QUARTER));
    assertEquals(
        "-x-",
        where(
            MUTED,
            QUARTER,
            "<sound><play><mute>straight</mute></play></sound>",
            QUARTER,
            "<sound><play><mute>off</mute></play></sound>",
            QUARTER));
  }

  @Test
  void a_sound_that_is_not_plucked_leaves_the_wood_to_the_string() throws UnreadableScore {
    String direction = words("col legno").replace("</direction>", "<sound pizzicato=\"no\"/>");
    assertEquals("x", where(STRUCK, direction + "</direction>", QUARTER));
  }

  @Test
  void signs_for_mutes_are_read() throws UnreadableScore {
    String sign =
        "<direction><direction-type><string-mute type=\"%s\"/></direction-type></direction>";
    assertEquals(
        "-x-",
        where(MUTED, QUARTER, sign.formatted("on"), QUARTER, sign.formatted("off"), QUARTER));
  }

  @Test
  void what_stands_on_a_note_is_for_that_note_alone() throws UnreadableScore {
    assertEquals(
        "-x-", where(PLUCKED, QUARTER, note("A", 4, 12, technical("<snap-pizzicato/>")), QUARTER));
    String flutter = technical("<other-technical>Flatterzunge</other-technical>");
    assertEquals("-x-", where(FLUTTERED, QUARTER, note("A", 4, 12, flutter), QUARTER));
    String cup = technical("<harmon-mute><harmon-closed>yes</harmon-closed></harmon-mute>");
    assertEquals("-x-", where(MUTED, QUARTER, note("A", 4, 12, cup), QUARTER));
  }

  @Test
  void a_note_played_with_a_mute_is_muted_but_one_stopped_by_hand_is_not() throws UnreadableScore {
    String played = "<play><mute>%s</mute></play>";
    assertEquals(
        "x--",
        where(
            MUTED,
            note("A", 4, 12, played.formatted("cup")),
            note("A", 4, 12, played.formatted("stop-hand")),
            QUARTER));
  }

  @Test
  void it_goes_on_in_the_next_bar() throws UnreadableScore {
    List<Stroke> strokes =
        strokes(score(ATTRIBUTES + words("pizz.") + note("A", 4, 48, ""), note("A", 4, 48, "")));
    assertEquals(List.of(true, true), strokes.stream().map(s -> s.manner().isPlucked()).toList());
  }

  @Test
  void a_new_movement_begins_as_the_instrument_is_usually_played() throws UnreadableScore {
    String second = "<measure number=\"%d\">" + note("A", 4, 48, "") + "</measure>";
    List<Stroke> strokes =
        strokes(
            score(
                ATTRIBUTES + words("pizz.") + note("A", 4, 48, ""),
                second.formatted(2),
                second.formatted(1),
                second.formatted(2)));
    assertEquals(
        List.of(true, true, false, false),
        strokes.stream().map(s -> s.manner().isPlucked()).toList());
  }
}
