package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.read;
import static stafette.musicxml.read.Xml.score;
import static stafette.musicxml.read.Xml.strokes;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import stafette.musicxml.text.UnreadableScore;
import stafette.time.Length;
import stafette.time.Position;

/** What no music has is refused with the bar in which it stands, and not counted out. */
class PlausibleRangesTest {
  private static final String FULL = note("A", 4, 48, "");

  @TestFactory
  Stream<DynamicTest> what_no_music_has_is_refused_with_its_bar() {
    return Map.of(
            "duration", note("A", 4, 120_000_000, ""),
            "divisions", attributes("<divisions>0</divisions>"),
            "beat-type", attributes(time("4", "960")),
            "of beats", attributes(time("0", "4")),
            "from 1 to 999",
                attributes(
                    time("999", "1")
                        .replace("</time>", "<beats>2</beats><beat-type>4</beat-type></time>")),
            "tremolo", note("A", 4, 48, tremolo(9)),
            "actual-notes", note("A", 4, 48, modification(1_000, 1)),
            "alter", note("A", 4, 48, "").replace("<octave>", "<alter>7</alter><octave>"),
            "octave", note("A", 44, 48, ""),
            "the bar lasts", note("A", 4, 12_000, "").repeat(5))
        .entrySet()
        .stream()
        .map(
            wrong ->
                DynamicTest.dynamicTest(
                    wrong.getKey(), () -> refused(wrong.getKey(), wrong.getValue())));
  }

  @Test
  void beats_that_hold_something_else_are_refused() {
    refused("4<voice>", attributes(time("4<voice>1</voice>", "4")));
  }

  private static void refused(String names, String inBarTwo) {
    String message =
        String.valueOf(
            assertThrows(
                    UnreadableScore.class,
                    () -> read(score(ATTRIBUTES + FULL, inBarTwo + FULL, FULL)))
                .getMessage());
    assertTrue(message.startsWith("Part Flute, bar 2 (line "), message);
    assertTrue(message.contains(names), message);
  }

  @Test
  void a_long_cadenza_and_a_metre_in_hundred_twenty_eighths_are_music() throws UnreadableScore {
    Document read =
        read(
            score(
                ATTRIBUTES + note("A", 4, 12_000, ""),
                attributes(time("7", "128")) + note("A", 4, 12, "")));
    assertEquals(Length.ofQuarters(1_000, 1), read.score().bars().get(0).span().length());
    assertEquals(
        "bar 2, beat 1", read.score().bars().nameOf(Position.ofQuarters(1_000, 1)).toString());
  }

  @Test
  void lengths_without_a_common_part_are_refused_where_they_get_too_many() {
    String measures =
        IntStream.of(9_973, 9_967, 9_949, 9_941)
            .mapToObj(
                divisions ->
                    attributes("<divisions>" + divisions + "</divisions>") + note("A", 4, 1, ""))
            .collect(Collectors.joining());
    String message =
        String.valueOf(
            assertThrows(UnreadableScore.class, () -> read(score(measures))).getMessage());
    assertTrue(message.contains("bar 1 ") && message.contains("more than 999999999"), message);
  }

  @Test
  void a_tremolo_of_more_strokes_than_anybody_counts_is_unmeasured() throws UnreadableScore {
    String first = modification(999, 1) + tremolo("start", 8);
    String second = modification(999, 1) + tremolo("stop", 8);
    String two = note("A", 4, 384, first) + note("C", 5, 384, second);
    assertEquals(2, strokes(score(ATTRIBUTES + two)).size());
    String little = note("A", 4, 1, "<type>256th</type>" + tremolo("start", 8));
    String much = note("C", 5, 384, "<type>breve</type>" + tremolo("stop", 8));
    assertEquals(2, strokes(score(ATTRIBUTES + little + much)).size());
  }

  @Test
  void more_bars_than_any_score_has_are_refused() {
    String message =
        String.valueOf(
            assertThrows(
                    UnreadableScore.class,
                    () -> read(score(ATTRIBUTES + FULL, "<measure/>".repeat(100_000))))
                .getMessage());
    assertTrue(message.contains("more than 99999 bars"), message);
  }

  @Test
  void more_parts_than_any_score_has_are_refused() {
    String more = "<part id=\"P\"><measure/></part>".repeat(1_000);
    String many = score(FULL).replace("</score-partwise>", more + "</score-partwise>");
    String message =
        String.valueOf(assertThrows(UnreadableScore.class, () -> read(many)).getMessage());
    assertTrue(message.contains("more than 1000 parts"), message);
  }

  private static String attributes(String... what) {
    return Stream.of(what)
        .map(each -> "<attributes>" + each + "</attributes>")
        .collect(Collectors.joining());
  }

  private static String time(String beats, String beatType) {
    return "<time><beats>" + beats + "</beats><beat-type>" + beatType + "</beat-type></time>";
  }

  private static String modification(int actual, int normal) {
    return "<time-modification><actual-notes>"
        + actual
        + "</actual-notes><normal-notes>"
        + normal
        + "</normal-notes></time-modification>";
  }

  private static String tremolo(int slashes) {
    return tremolo("single", slashes);
  }

  private static String tremolo(String type, int slashes) {
    return "<notations><ornaments><tremolo type=\""
        + type
        + "\">"
        + slashes
        + "</tremolo></ornaments></notations>";
  }
}
