package stafette.musicxml.newparts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.Xml;
import stafette.musicxml.write.TwoParts;

/** Staves and clefs of new parts are those in which their players read these notes. */
class NewPartStavesTest {
  /** Bars of sixteenths on one note each, "A4" or "-" for a rest. */
  private static String[] bars(String... notes) {
    return IntStream.range(0, notes.length)
        .mapToObj(i -> (i == 0 ? ATTRIBUTES : "") + bar(notes[i]))
        .toArray(String[]::new);
  }

  private static String bar(String note) {
    return note.equals("-")
        ? rest(48)
        : note(note.substring(0, 1), note.charAt(1) - '0', 3, "").repeat(16);
  }

  /** The clef that begins with each bar; "." where none does. */
  private static String clefs(String instrument, String... notes) throws Exception {
    return String.join(
        " ",
        NewPartText.measures(instrument, bars(notes)).stream()
            .flatMap(
                measure -> {
                  List<String> signs = NewPartText.all("<sign>(\\w+)</sign>", measure);
                  return signs.isEmpty() ? Stream.of(".") : signs.stream();
                })
            .toList());
  }

  @Test
  void a_cello_that_stays_low_has_the_bass_clef() throws Exception {
    assertEquals("F . . .", clefs("cello", "C3", "D3", "-", "A3"));
  }

  @Test
  void a_cello_that_plays_high_begins_in_the_tenor_clef() throws Exception {
    assertEquals("C . .", clefs("cello", "A4", "A4", "A4"));
  }

  @Test
  void a_clef_changes_where_the_register_changes_for_three_bars() throws Exception {
    assertEquals(
        "F . . . C . . F . .",
        clefs("cello", "C3", "D3", "C3", "-", "A4", "A4", "A4", "C3", "D3", "C3"));
  }

  @Test
  void for_two_bars_the_clef_stays() throws Exception {
    assertEquals("F . . . . . .", clefs("cello", "C3", "D3", "C3", "A4", "A4", "C3", "D3"));
  }

  @Test
  void for_notes_that_could_not_be_read_it_changes_at_once() throws Exception {
    assertEquals("F . . G F", clefs("cello", "C3", "D3", "C3", "A5", "C3"));
  }

  @Test
  void a_viola_up_high_reads_the_treble_clef() throws Exception {
    assertEquals("G . .", clefs("viola", "A5", "A5", "A5"));
  }

  @Test
  void a_flute_reads_no_other_clef() throws Exception {
    assertEquals("G .", clefs("flute", "A6", "C4"));
  }

  @Test
  void a_harp_has_two_staves_with_the_line_on_that_of_its_register() throws Exception {
    List<String> harp = NewPartText.measures("harp", bars("A4", "C3", "-"));
    assertTrue(harp.get(0).contains("<staves>2</staves>"), harp.get(0));
    assertEquals(List.of("1", "2"), NewPartText.all("<clef number=\"(\\d)\">", harp.get(0)));
    assertEquals(List.of("G", "F"), NewPartText.all("<sign>(\\w)</sign>", harp.get(0)));
    assertEquals(List.of("1".repeat(16) + "2", "2".repeat(16) + "1", "12"), staves(harp));
    harp.forEach(measure -> assertTrue(measure.contains("<rest measure=\"yes\"/>"), measure));
  }

  @ParameterizedTest(name = "strokes {0} to {1}")
  @CsvSource({"0, 5", "5, 20", "12, 40", "16, 31", "17, 30", "33, 47"})
  void a_turn_within_bars_stands_on_the_staves_as_well(int first, int last) throws Exception {
    Document before = Xml.read(Xml.score(bars("A4", "C3", "E4")));
    Document after = NewPartText.turn(before, "harp", first, last);
    assertEquals(last - first + 1, TwoParts.strokes(after, "New").size());
  }

  @Test
  void a_note_that_is_tied_over_a_barline_stays_on_its_staff() throws Exception {
    String tied = note("C", 4, 12, "<tie type=\"start\"/>");
    String[] model = {
      ATTRIBUTES + note("E", 4, 36, "") + tied,
      note("C", 4, 12, "<tie type=\"stop\"/>") + note("C", 3, 36, ""),
      note("C", 3, 48, "")
    };
    assertEquals(List.of("112", "112", "21"), staves(NewPartText.measures("piano", model)));
  }

  /** The staves of the notes of each measure in their order. */
  private static List<String> staves(List<String> measures) {
    return measures.stream()
        .map(measure -> String.join("", NewPartText.all("</duration>.*?<staff>(\\d)", measure)))
        .toList();
  }

  private static final String HIT =
      "<note><unpitched><display-step>%s</display-step><display-octave>%s</display-octave>"
          + "</unpitched><duration>3</duration></note>";
  private static final String ONE_LINE =
      ATTRIBUTES.replace(
          "</attributes>",
          "<staff-details><staff-lines>1</staff-lines></staff-details></attributes>");

  @Test
  void a_drum_has_one_line_where_the_other_has() throws Exception {
    String drum =
        NewPartText.measures("snare drum", ONE_LINE + HIT.formatted("E", 4).repeat(16)).get(0);
    assertTrue(drum.contains("<sign>percussion</sign>"), drum);
    assertTrue(drum.contains("<staff-lines>1</staff-lines>"), drum);
    assertEquals(16, NewPartText.all("<unpitched>", drum).size(), drum);
  }

  @Test
  void a_drum_has_five_lines_where_the_other_has() throws Exception {
    String drum =
        NewPartText.measures("snare drum", ATTRIBUTES + HIT.formatted("C", 5).repeat(16)).get(0);
    assertFalse(drum.contains("staff-lines"), drum);
  }

  @Test
  void what_sounds_is_not_put_on_one_line() throws Exception {
    assertFalse(
        NewPartText.measures("marimba", ONE_LINE + bar("A4")).get(0).contains("staff-lines"));
  }
}
