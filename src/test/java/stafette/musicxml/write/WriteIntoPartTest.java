package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.Origin;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/** A player's own part takes the line in place of its rests, whatever way they are written. */
class WriteIntoPartTest {
  private static final String FULL =
      ATTRIBUTES + "<note><rest measure=\"yes\"/>" + "<duration>48</duration></note>";

  @TestFactory
  Stream<DynamicTest> the_line_stands_in_the_part_and_is_written_only_once() {
    String ones = ATTRIBUTES.replace(">12<", ">1<");
    return Stream.of(
        rests("a whole-bar rest", FULL, 2, 9),
        rests("rests", ATTRIBUTES + rest(24) + rest(12) + rest(12), 2, 9),
        rests("a forward", ATTRIBUTES + forward(48), 2, 9),
        rests("an underfull bar", ATTRIBUTES + rest(12), 2, 9),
        rests("a bar without notes", ATTRIBUTES, 2, 9),
        rests("an empty measure element", "<measure number=\"1\"/>", 2, 9),
        rests("one division a quarter", ones + rest(4), 1, 6),
        rests("own notes first", ATTRIBUTES + note("C", 5, 24, "") + rest(24), 8, 15),
        rests("own notes last", ATTRIBUTES + rest(24) + note("C", 5, 24, ""), 0, 7),
        rests(
            "own notes around",
            ATTRIBUTES + note("C", 5, 12, "") + rest(24) + note("C", 5, 12, ""),
            4,
            11),
        rests("a rest that is too long for its bar", FULL.replace(">48<", ">96<"), 3, 15),
        rests(
            "two voices",
            ATTRIBUTES
                + note("C", 5, 48, "<voice>1</voice>")
                + backup(48)
                + "<note><rest/><duration>48</duration><voice>2</voice></note>",
            3,
            15),
        rests(
            "a voice that begins late",
            ATTRIBUTES
                + note("C", 5, 48, "<voice>1</voice>")
                + backup(36)
                + "<note><rest/><duration>36</duration><voice>2</voice></note>",
            4,
            15),
        rests(
            "a clef in between",
            ATTRIBUTES
                + rest(24)
                + "<attributes><clef><sign>F</sign><line>4</line></clef></attributes>"
                + rest(24),
            3,
            12),
        rests(
            "divisions that change in the bar",
            ATTRIBUTES + rest(24) + "<attributes><divisions>4</divisions></attributes>" + rest(8),
            3,
            12),
        rests(
            "divisions that change before it",
            ones
                + note("C", 5, 2, "")
                + "<attributes><divisions>2</divisions></attributes>"
                + rest(4),
            9,
            12));
  }

  private static DynamicTest rests(String what, String flute, int first, int last) {
    return DynamicTest.dynamicTest(
        what,
        () -> {
          String text = TwoParts.score(flute, FULL.replace(ATTRIBUTES, ""));
          Document before = TwoParts.read(text);
          Plan plan = TwoParts.plan(before, first, last);
          WrittenScore written = TwoParts.write(before, plan);
          Document after = TwoParts.read(new String(written.bytes(), StandardCharsets.UTF_8));
          List<String> expected = new ArrayList<>(TwoParts.strokes(before, "P2"));
          ByHand.written(plan, plan.segments().get(0), before.score())
              .forEach(s -> expected.add(TwoParts.heard(s)));
          assertEquals(expected.stream().sorted().toList(), TwoParts.strokes(after, "P2"));
          assertEquals(before.score().bars().get(0), after.score().bars().get(0));
          assertEquals(Rational.of(4), reached(after));
          assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
          WrittenScore again = TwoParts.write(after, TwoParts.plan(after, first, last));
          assertEquals(List.of(), again.replacements());
          assertArrayEquals(written.bytes(), again.bytes());
        });
  }

  /** How far the first bar of the flute reaches. */
  private static Rational reached(Document document) {
    Origin.MeasureText measure = document.origin().parts().get(1).measures().get(0);
    Rational reached = Rational.ZERO;
    for (Origin.ElementText element : measure.elements()) {
      Length length = element.note().map(Origin.NoteText::length).orElse(Length.ZERO);
      Rational end = element.onset().plus(length).quarters();
      reached = reached.compareTo(end) > 0 ? reached : end;
    }
    return reached;
  }

  private static String forward(int duration) {
    return "<forward><duration>" + duration + "</duration></forward>";
  }

  private static String backup(int duration) {
    return "<backup><duration>" + duration + "</duration></backup>";
  }

  @TestFactory
  Stream<DynamicTest> every_encoding_and_line_end_is_kept() {
    return Stream.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.ISO_8859_1)
        .flatMap(
            charset ->
                Stream.of("\n", "\r\n")
                    .map(
                        end ->
                            DynamicTest.dynamicTest(
                                charset + (end.length() == 1 ? " LF" : " CRLF"),
                                () -> encodingIsKept(charset, end))));
  }

  private static void encodingIsKept(Charset charset, String lineEnd) throws Exception {
    String text =
        TwoParts.score(FULL)
            .replace("UTF-8", charset.name().replace("LE", ""))
            .replace("\n", lineEnd);
    boolean marked = charset.equals(StandardCharsets.UTF_16LE);
    Document before = MusicXmlReader.read(((marked ? "\ufeff" : "") + text).getBytes(charset));
    String name = "Fl\u00f6te \u266d \ud834\udd2a <&>";
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, name, 3, 9));
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(charset, after.origin().charset());
    assertEquals(marked, after.origin().byteOrderMark());
    assertEquals(name, after.score().parts().get(2).name());
    assertEquals(7, TwoParts.strokes(after, "P3").size());
    String all = after.origin().text();
    assertEquals(count(all, "\n"), count(all, lineEnd));
    assertEquals(lineEnd.length() == 2, all.contains("\r"));
    assertEquals(charset.equals(StandardCharsets.ISO_8859_1), all.contains("&#9837;"));
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }

  @Test
  void attributes_in_single_quotes_are_understood() throws Exception {
    String text = TwoParts.score(FULL).replace('"', '\'');
    Document before = TwoParts.read(text);
    WrittenScore into = TwoParts.write(before, TwoParts.plan(before, 0, 15));
    assertEquals(
        TwoParts.strokes(before, "P1"), TwoParts.strokes(MusicXmlReader.read(into.bytes()), "P2"));
    WrittenScore fresh = TwoParts.write(before, TwoParts.plan(before, "Piccolo", 0, 15));
    Document after = MusicXmlReader.read(fresh.bytes());
    assertEquals(
        List.of("P1", "P2", "P3"), after.score().parts().stream().map(p -> p.id()).toList());
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, "P3"));
  }

  @Test
  void the_rest_of_a_bar_stays_as_it_is_where_divisions_are_raised() throws Exception {
    String other =
        "<note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration><voice>2</voice></note>";
    String text = TwoParts.score(ATTRIBUTES.replace(">12<", ">1<") + rest(4) + backup(4) + other);
    String written = TwoParts.written(text, 0, 15);
    assertTrue(written.contains(backup(4) + other), written);
    String bar = written.substring(written.indexOf("<part id=\"P2\""));
    assertEquals(3, count(bar, "<divisions>"));
    assertTrue(bar.lastIndexOf("<divisions>1<") > bar.indexOf("<divisions>4<"));
  }

  @Test
  void other_voices_stay_where_they_are_after_one_that_was_not_written_to_its_end()
      throws Exception {
    String other = note("C", 5, 24, "<voice>2</voice>");
    Document before = TwoParts.read(TwoParts.score(ATTRIBUTES + rest(12) + backup(12) + other));
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, 8, 15));
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(inVoice(before, "2"), inVoice(after, "2"));
    assertEquals(8, inVoice(after, "1").size());
    assertEquals(before.score().bars().get(0), after.score().bars().get(0));
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
  }

  @Test
  void notes_that_overlap_in_one_voice_are_written_at_their_places() throws Exception {
    String overlapping =
        ATTRIBUTES
            + note("A", 4, 36, "")
            + backup(24)
            + note("B", 4, 24, "")
            + note("C", 5, 12, "");
    Document before =
        TwoParts.read(TwoParts.of(List.of(overlapping), List.of(ATTRIBUTES + rest(48))));
    Document after =
        MusicXmlReader.read(TwoParts.write(before, TwoParts.plan(before, 0, 2)).bytes());
    assertEquals(onsets(before, "P1"), onsets(after, "P2"));
  }

  private static List<Position> onsets(Document document, String part) {
    return document.score().part(part).orElseThrow().voices().stream()
        .flatMap(voice -> voice.strokes().stream())
        .map(Stroke::onset)
        .toList();
  }

  private static List<Stroke> inVoice(Document document, String name) {
    return document.score().part("P2").orElseThrow().voices().stream()
        .filter(voice -> voice.name().equals(name))
        .flatMap(voice -> voice.strokes().stream())
        .toList();
  }

  @Test
  void directions_between_replaced_rests_stay_at_their_places() throws Exception {
    String sign =
        "<direction><direction-type><words>senza vib.</words></direction-type></direction>";
    String text = TwoParts.score(ATTRIBUTES + rest(24) + sign + rest(24));
    Document after = TwoParts.read(TwoParts.written(text, 5, 11));
    Origin.ElementText kept =
        after.origin().parts().get(1).measures().get(0).elements().stream()
            .filter(e -> e.span().in(after.origin().text()).equals(sign))
            .findFirst()
            .orElseThrow();
    assertEquals(Rational.of(2), kept.onset().quarters());
  }

  @Test
  void in_a_part_of_two_staves_the_line_goes_to_the_one_that_rests() throws Exception {
    String two = ATTRIBUTES.replace("</attributes>", "<staves>2</staves></attributes>");
    String upper = note("C", 5, 48, "<voice>1</voice><staff>1</staff>");
    String lower = "<note><rest/><duration>48</duration><voice>5</voice><staff>2</staff></note>";
    Document before = TwoParts.read(TwoParts.score(two + upper + backup(48) + lower));
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, 2, 13));
    Document after = MusicXmlReader.read(written.bytes());
    List<Stroke> found =
        after.score().part("P2").orElseThrow().voices().stream()
            .filter(voice -> voice.staff() == 2 && voice.name().equals("5"))
            .findFirst()
            .orElseThrow()
            .strokes();
    assertEquals(12, found.size());
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
  }

  @Test
  void nothing_stands_between_the_notes_and_the_closing_barline() throws Exception {
    String barline = "<barline location=\"right\"><bar-style>light-heavy</bar-style></barline>";
    String written = TwoParts.written(TwoParts.score(ATTRIBUTES + barline), 0, 3);
    assertTrue(
        written
            .replaceAll("\\s", "")
            .contains("</note>" + barline.replaceAll("\\s", "") + "</measure>"),
        written);
  }

  @Test
  void a_part_that_plays_there_is_refused() throws Exception {
    Document before = TwoParts.read(TwoParts.score(ATTRIBUTES + note("C", 5, 48, "")));
    Plan plan = TwoParts.plan(before, 2, 4);
    UnwritablePlan refused =
        org.junit.jupiter.api.Assertions.assertThrows(
            UnwritablePlan.class, () -> TwoParts.write(before, plan));
    assertTrue(String.valueOf(refused.getMessage()).contains("Flute, bar 1"));
  }

  @Test
  void the_line_is_written_on_either_side_of_what_the_player_has_in_the_same_bar()
      throws Exception {
    String own = note("C", 5, 12, "");
    Document before = TwoParts.read(TwoParts.score(ATTRIBUTES + rest(12) + own + rest(24)));
    Line line = TwoParts.plan(before, 0, 0).line();
    Plan plan =
        new Plan(
            TwoParts.plan(before, 0, 0).brief(),
            List.of(new Segment(0, 0, 0, 3), new Segment(0, 0, 8, 15)));
    Document after =
        TwoParts.read(new String(TwoParts.write(before, plan).bytes(), StandardCharsets.UTF_8));
    List<String> expected = new ArrayList<>(TwoParts.strokes(before, "P2"));
    line.strokes().stream()
        .filter(s -> line.strokes().indexOf(s) < 4 || line.strokes().indexOf(s) >= 8)
        .forEach(s -> expected.add(TwoParts.heard(s)));
    assertEquals(expected.stream().sorted().toList(), TwoParts.strokes(after, "P2"));
  }

  @Test
  void accidentals_that_hold_in_the_bar_are_taken_back() throws Exception {
    String sharp =
        "<note><pitch><step>A</step><alter>1</alter><octave>4</octave></pitch><duration>24</duration><accidental>sharp</accidental></note>";
    String written = TwoParts.written(TwoParts.score(ATTRIBUTES + sharp + rest(24)), 8, 15);
    String bar = written.substring(written.indexOf("<part id=\"P2\""));
    assertEquals(1, count(bar, "<accidental>natural</accidental>"));
    assertFalse(bar.contains("<accidental>flat"));
  }
}
