package stafette.check.alone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.ask.Allowance;
import stafette.limits.Assurance;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.musicxml.read.Xml;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Line;
import stafette.score.Score;
import stafette.tables.LimitTables;

/** With what passages are played on instruments that do not tongue, bow or strike in one way. */
class ManyInstrumentsTest {
  private static final Catalogue CATALOGUE = LimitTables.builtIn().catalogue();
  private static final int SIXTEENTH = 3;

  private static String begin(String words, int quartersPerMinute) {
    return Xml.ATTRIBUTES
        + "<direction><direction-type><words>"
        + words
        + "</words></direction-type><sound tempo=\""
        + quartersPerMinute
        + "\"/></direction>";
  }

  /** A bar of sixteenths of so many pitches in turn, all under one slur if wanted. */
  private static String bar(boolean slurred, String... steps) {
    StringBuilder notes = new StringBuilder();
    for (int i = 0; i < 16; i++) {
      String slur = i == 0 ? "start" : "stop";
      boolean end = slurred && (i == 0 || i == 15);
      notes.append(
          Xml.note(
              steps[i % steps.length],
              4,
              SIXTEENTH,
              end ? "<notations><slur type=\"" + slur + "\"/></notations>" : ""));
    }
    return notes.toString();
  }

  private static Score read(String part, String... measures) throws UnreadableScore {
    return Xml.read(Xml.scoreOf("<part-name>" + part + "</part-name>", measures)).score();
  }

  private static List<Line> passages(Score score) {
    return FastPassages.in(score, CATALOGUE::of, Assurance.DEFAULT, 6).stream()
        .map(Passage::line)
        .toList();
  }

  private static LineVerdict judged(Score score, Line line, List<Allowance> allowances) {
    Instrument instrument = CATALOGUE.of(score.parts().get(0)).orElseThrow();
    List<Technique> usable = Allowance.usable(allowances, "", instrument, List.of(line));
    return LineTrial.of(line, instrument, Assurance.DEFAULT, usable);
  }

  private static List<String> with(Score score, Line line) {
    return judged(score, line, List.of()).techniques().stream()
        .map(shown -> shown.technique().name())
        .toList();
  }

  private static List<String> with(String part, String... measures) throws UnreadableScore {
    Score score = read(part, measures);
    List<Line> passages = passages(score);
    assertEquals(1, passages.size(), part);
    return with(score, passages.get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "Guitar, 126, alternate fingers",
    "Mandolin, 138, alternate strokes",
    "Organ, 140, alternate fingers",
    "Harmonium, 130, alternate fingers",
    "Cimbalom, 140, alternate hands",
    "Crotales, 110, alternate hands",
    "Recorder, 150, double tonguing",
    "Bass Clarinet, 90, single tonguing",
  })
  void a_fast_passage_is_found_and_judged(String part, int tempo, String technique)
      throws UnreadableScore {
    assertEquals(
        List.of(technique), with(part, begin("", tempo) + bar(false, "C", "D", "E", "F")), part);
  }

  @Test
  void a_guitar_plucks_what_no_word_asks_to_be_plucked() throws UnreadableScore {
    Score score = read("Guitar", begin("", 126) + bar(false, "C", "E", "G"));
    Line line = passages(score).get(0);
    assertFalse(line.isPlucked());
    assertTrue(judged(score, line, List.of()).ease().plays());
  }

  @Test
  void a_guitars_repeated_note_is_a_tremolo_of_the_fingers_once_two_do_not_do() throws Exception {
    List<String> fast = with("Guitar", begin("", 138) + bar(false, "E"));
    assertEquals("tremolo by fingers", fast.get(fast.size() - 1));
    assertEquals(List.of("alternate fingers"), with("Guitar", begin("", 120) + bar(false, "E")));
  }

  @Test
  void col_legno_is_struck_with_the_wood_and_what_follows_bowed_again() throws UnreadableScore {
    Score score =
        read(
            "Violin",
            begin("col legno", 120) + bar(false, "A", "B"),
            begin("arco", 176) + bar(false, "A", "B"));
    List<Line> passages = passages(score);
    assertEquals(2, passages.size());
    assertEquals(List.of("col legno"), with(score, passages.get(0)));
    assertEquals(List.of("sautillé"), with(score, passages.get(1)));
    LineVerdict struck = judged(score, passages.get(0), List.of());
    assertEquals("col legno", struck.techniques().get(0).technique().name());
    assertFalse(struck.ease().plays(), "8 a second");
  }

  @Test
  void col_legno_on_a_bowed_instrument_without_it_goes_by_the_bow() throws UnreadableScore {
    Score score = read("Violin", begin("col legno", 120) + bar(false, "A", "B"));
    LineVerdict bowed =
        judged(score, passages(score).get(0), Allowance.parse(List.of("sautillé"), true));
    assertTrue(bowed.ease().plays());
  }

  @Test
  void two_slurred_notes_in_turn_more_than_a_tone_apart_are_a_fingered_tremolo()
      throws UnreadableScore {
    String begin = begin("", 150);
    assertEquals(List.of("fingered tremolo"), with("Violin", begin + bar(true, "A", "C")));
    assertEquals(List.of("slurred"), with("Violin", begin + bar(true, "A", "B")), "a trill");
    assertEquals(List.of("slurred"), with("Violin", begin + bar(true, "C", "G", "E", "G")));
    assertEquals(
        List.of("sautillé"), with("Violin", begin("", 176) + bar(false, "A", "C")), "bowed");
    assertEquals(List.of("slurred"), with("Flute", begin + bar(true, "A", "C")));
  }

  @Test
  void a_slurred_tremolo_between_two_notes_is_fingered_on_a_string() throws UnreadableScore {
    String first =
        "<type>half</type><time-modification><actual-notes>2</actual-notes>"
            + "<normal-notes>1</normal-notes></time-modification><notations>"
            + "<slur type=\"start\"/><ornaments><tremolo type=\"start\">2</tremolo></ornaments>"
            + "</notations>";
    String second = first.replace("start", "stop");
    String pair = Xml.note("A", 4, 12, first) + Xml.note("C", 5, 12, second);
    assertEquals(List.of("fingered tremolo"), with("Viola", begin("", 132) + pair + pair));
  }

  @Test
  void effects_are_used_where_they_are_set_alone() throws UnreadableScore {
    Score score = read("Violin", begin("", 150) + bar(false, "A", "E"));
    Line line = passages(score).get(0);
    List<String> set =
        judged(score, line, Allowance.parse(List.of("bariolage"), true)).techniques().stream()
            .map(shown -> shown.technique().name())
            .toList();
    assertEquals(List.of("bariolage"), set);
    for (String strings : List.of("violin", "viola", "cello", "double bass")) {
      Instrument instrument = CATALOGUE.find(strings).orElseThrow();
      for (String effect : List.of("bariolage", "left-hand pizzicato")) {
        assertFalse(Catalogue.technique(instrument, effect).orElseThrow().expected(), strings);
      }
    }
  }
}
