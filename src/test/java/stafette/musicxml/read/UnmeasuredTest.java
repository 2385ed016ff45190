package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Attack;
import stafette.score.Stroke;
import stafette.score.Tremolo;

/** Strokes that words let nobody count, and slashes that are finger changes. */
class UnmeasuredTest {
  private static final String QUARTER = "<type>quarter</type>";
  private static final String PLAIN = note("A", 4, 12, QUARTER);
  private static final String SLASHED = note("A", 4, 12, QUARTER + slashes("single", 1));

  private static String slashes(String type, int count) {
    return "<notations><ornaments><tremolo type=\"%s\">%d</tremolo></ornaments></notations>"
        .formatted(type, count);
  }

  private static String words(String text) {
    return "<direction><direction-type><words>" + text + "</words></direction-type></direction>";
  }

  private static List<Stroke> strokes(String part, Tremolo tremolo, String... notes)
      throws UnreadableScore {
    String text =
        Xml.scoreOf("<part-name>" + part + "</part-name>", ATTRIBUTES + String.join("", notes));
    return MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8), tremolo, false)
        .score()
        .parts()
        .get(0)
        .voices()
        .get(0)
        .strokes();
  }

  /** A letter for each stroke: x where it is a tremolo that nobody counts. */
  private static String read(String part, String... notes) throws UnreadableScore {
    return strokes(part, Tremolo.AS_WRITTEN, notes).stream()
        .map(stroke -> stroke.isTremolo() ? "x" : "-")
        .collect(Collectors.joining());
  }

  @ParameterizedTest
  @ValueSource(strings = {"non trem.", "ord.", "senza tremolo", "nicht trem.", "pizz.", "arco"})
  void the_word_tremolo_holds_on_bows_until_it_is_revoked(String end) throws UnreadableScore {
    assertEquals("-xx-", read("Viola", PLAIN, words("trem."), PLAIN, PLAIN, words(end), PLAIN));
  }

  @Test
  void on_winds_it_says_nothing() throws UnreadableScore {
    assertEquals("--", read("Oboe", words("tremolo"), PLAIN, PLAIN));
  }

  @Test
  void at_slashes_it_says_that_these_are_not_counted_and_nothing_of_notes_without()
      throws UnreadableScore {
    assertEquals("--", read("Viola", SLASHED));
    assertEquals("x-x", read("Viola", words("trem."), SLASHED, PLAIN, SLASHED));
  }

  @Test
  void at_short_notes_it_names_what_is_written_out() throws UnreadableScore {
    String sixteenths = note("A", 4, 3, "<type>16th</type>").repeat(4);
    assertEquals("-----x", read("Viola", words("trem."), sixteenths, PLAIN, SLASHED));
    assertEquals("x----x", read("Viola", words("trem."), PLAIN, sixteenths, PLAIN));
  }

  @Test
  void the_user_may_have_slashes_counted_all_the_same() throws UnreadableScore {
    assertEquals(2, strokes("Viola", Tremolo.MEASURED, words("trem."), SLASHED).size());
    assertEquals(2, strokes("Flute", Tremolo.MEASURED, words("frull."), SLASHED).size());
  }

  @Test
  void slashes_with_a_word_for_it_are_flutter_tonguing_on_winds() throws UnreadableScore {
    String thirtySeconds = note("A", 4, 12, QUARTER + slashes("single", 3));
    assertEquals("--------", read("Flute", thirtySeconds));
    assertEquals("x", read("Flute", words("Flatterzunge"), thirtySeconds));
    List<Stroke> ended =
        strokes("Flute", Tremolo.AS_WRITTEN, words("Flzg."), SLASHED, words("ord."), SLASHED);
    assertEquals(
        List.of(Attack.FLUTTERED, Attack.PLAIN, Attack.PLAIN),
        ended.stream().map(stroke -> stroke.manner().attack()).toList());
  }

  @Test
  void notes_without_slashes_that_flutter_are_strokes_as_they_stand() throws UnreadableScore {
    assertEquals("--", read("Flute", words("Flatterzunge"), PLAIN, PLAIN));
  }

  private static final String PAIR =
      pair("A", "start") + pair("C", "stop").replace("<octave>4", "<octave>5");

  private static String pair(String step, String type) {
    return pair(step, type, 1);
  }

  private static String pair(String step, String type, int slashes) {
    return note(
        step,
        4,
        12,
        "<type>half</type><time-modification><actual-notes>2</actual-notes>"
            + "<normal-notes>1</normal-notes></time-modification>"
            + slashes(type, slashes));
  }

  @Test
  void three_slashes_between_two_keys_are_no_count_but_on_one_key_they_are()
      throws UnreadableScore {
    String alternating = pair("A", "start", 3) + pair("C", "stop", 3);
    assertEquals("xx-", read("Piano", alternating, PLAIN));
    assertEquals("----", read("Piano", PAIR));
    assertEquals("-".repeat(8), read("Piano", note("A", 4, 12, QUARTER + slashes("single", 3))));
    assertEquals(
        "-".repeat(16), read("Harp", alternating), "common practice, no source: keys alone");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Flute",
        "Flöte 2",
        "Flauti",
        "Fl.",
        "Clarinet in A",
        "Fagott",
        "Horn in F",
        "Tuba"
      })
  void between_two_notes_of_a_wind_slashes_are_finger_changes(String part) throws UnreadableScore {
    List<Stroke> strokes = strokes(part, Tremolo.AS_WRITTEN, PAIR, PLAIN);
    assertEquals(
        List.of(69, 72, 69, 72, 69), strokes.stream().map(s -> s.tones().get(0).key()).toList());
    assertEquals(
        List.of(false, true, true, true, false), strokes.stream().map(Stroke::slurred).toList());
    assertEquals(
        List.of(true, true, true, false, false),
        strokes.stream().map(Stroke::slurContinues).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Violin", "Piano", "Marimba", "Tubular Bells"})
  void between_two_notes_of_others_they_are_strokes(String part) throws UnreadableScore {
    List<Stroke> strokes = strokes(part, Tremolo.AS_WRITTEN, PAIR);
    assertEquals(
        List.of(69, 72, 69, 72), strokes.stream().map(s -> s.tones().get(0).key()).toList());
    assertTrue(strokes.stream().noneMatch(Stroke::slurred));
  }
}
