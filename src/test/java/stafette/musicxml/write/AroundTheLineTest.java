package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Dynamic;
import stafette.score.Stroke;
import stafette.score.Tremolo;

/** What a part has of its own around a line that is written into it is read as it was before. */
class AroundTheLineTest {
  private static final String HALF = rest(24);

  private static String mark(String dynamic) {
    return "<direction><direction-type><dynamics><"
        + dynamic
        + "/></dynamics></direction-type></direction>";
  }

  private static String tone(String step, int alter, int duration, String more) {
    return note(step, 4, duration, more)
        .replace("</step>", alter == 0 ? "</step>" : "</step><alter>" + alter + "</alter>");
  }

  /** The score with strokes of the piano's sixteenth notes in the flute's part, written twice. */
  private static String written(String score, int first, int last) throws Exception {
    Document before = TwoParts.read(score);
    return twice(before, List.of(new Segment(0, 0, first, last)));
  }

  private static String twice(Document before, List<Segment> segments) throws Exception {
    Plan plan = new Plan(TwoParts.plan(before, 0, 0).brief(), segments);
    WrittenScore once = TwoParts.write(before, plan);
    assertEquals(List.of(), OfficialSchema.errors(once.bytes()));
    Document after = MusicXmlReader.read(once.bytes());
    Plan again = new Plan(TwoParts.plan(after, 0, 0).brief(), segments);
    assertEquals(List.of(), TwoParts.write(after, again).replacements());
    return new String(once.bytes(), StandardCharsets.UTF_8);
  }

  private static String flute(String score) {
    return score.substring(score.indexOf("<part id=\"P2\""));
  }

  private static int count(String text, String pattern) {
    return (int) Pattern.compile(pattern).matcher(text).results().count();
  }

  private static List<Dynamic> dynamics(String score) throws Exception {
    return TwoParts.read(score).score().part("P2").orElseThrow().voices().get(0).strokes().stream()
        .map(Stroke::dynamic)
        .distinct()
        .toList();
  }

  @Test
  void its_former_dynamic_is_said_again_after_the_line() throws Exception {
    String own = mark("p") + note("C", 5, 12, "") + rest(24) + note("C", 5, 12, "");
    String score = written(TwoParts.score(ATTRIBUTES + own), 4, 11);
    assertEquals(List.of(Dynamic.P, Dynamic.MF), dynamics(score));
    assertEquals(2, count(flute(score), "<p/>"), score);
    assertTrue(
        flute(score).indexOf("<p/>", flute(score).indexOf("<mf/>")) > 0, "p after mf: " + score);
  }

  @Test
  void it_is_said_again_some_bars_later_too_and_once_only() throws Exception {
    String score =
        written(
            TwoParts.score(
                ATTRIBUTES + mark("ff") + note("C", 5, 12, "") + rest(36),
                rest(48),
                HALF + note("C", 5, 12, "").repeat(2)),
            8,
            15);
    assertEquals(2, count(flute(score), "<ff/>"), score);
    assertEquals(List.of(Dynamic.FF, Dynamic.MF), dynamics(score));
  }

  @Test
  void it_is_not_said_where_the_part_has_a_mark_of_its_own_or_the_line_had_the_same()
      throws Exception {
    String marked =
        written(
            TwoParts.score(
                ATTRIBUTES + mark("p") + note("C", 5, 12, "") + rest(36),
                mark("p") + note("C", 5, 12, "").repeat(4)),
            4,
            11);
    assertEquals(2, count(flute(marked), "<p/>"), marked);
    String same =
        written(
            TwoParts.score(ATTRIBUTES + note("C", 5, 24, "") + rest(12) + note("C", 5, 12, "")),
            8,
            11);
    assertEquals(1, count(flute(same), "<mf/>"), same);
  }

  @Test
  void a_dynamic_that_stands_there_in_another_form_is_not_said_twice() throws Exception {
    String mark =
        "<direction placement=\"below\"><direction-type><dynamics default-x=\"3\" default-y=\"-70\"><mf/></dynamics></direction-type><sound dynamics=\"70\"/></direction>";
    String before = written(TwoParts.score(ATTRIBUTES + HALF + mark + HALF), 8, 15);
    assertEquals(1, count(flute(before), "<mf/>"), before);
    assertTrue(before.contains("default-y=\"-70\""), before);
  }

  @Test
  void cue_notes_where_the_player_plays_not_stay() throws Exception {
    String cue = note("C", 5, 12, "").replace("<note>", "<note><cue/>");
    String score = written(TwoParts.score(ATTRIBUTES + cue.repeat(4)), 4, 11);
    assertEquals(2, count(flute(score), "<cue/>"), score);
    Document withCues =
        MusicXmlReader.read(score.getBytes(StandardCharsets.UTF_8), Tremolo.AS_WRITTEN, true);
    assertEquals(
        10, TwoParts.strokes(withCues, "P2").size(), TwoParts.strokes(withCues, "P2").toString());
  }

  @Test
  void cue_notes_under_one_beam_go_together() throws Exception {
    String cues = "";
    for (String beam : List.of("begin", "continue", "continue", "end")) {
      cues +=
          note("C", 5, 6, "<type>eighth</type><beam number=\"1\">" + beam + "</beam>")
              .replace("<note>", "<note><cue/>");
    }
    String score = written(TwoParts.score(ATTRIBUTES + cues + cues), 0, 3);
    assertEquals(4, count(flute(score), "<cue/>"), score);
  }

  @Test
  void a_note_that_the_line_would_bend_shows_its_accidental() throws Exception {
    String sharps = tone("A", 1, 3, "").repeat(16);
    String own = "<voice>1</voice><type>half</type>";
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(ATTRIBUTES + sharps), List.of(ATTRIBUTES + HALF + tone("A", 0, 24, own))));
    String score = twice(before, List.of(new Segment(0, 0, 0, 7)));
    assertEquals(1, count(flute(score), "<accidental>natural</accidental>"), score);
    assertTrue(
        flute(score).replaceAll(">\\s+<", "><").contains("</type><accidental>natural"), score);
  }

  @Test
  void a_note_that_relied_on_an_accidental_before_the_line_shows_it_again() throws Exception {
    String sharp = tone("A", 1, 12, "<accidental>sharp</accidental>");
    String score = written(TwoParts.score(ATTRIBUTES + sharp + HALF + tone("A", 1, 12, "")), 4, 11);
    assertEquals(2, count(flute(score), "<accidental>sharp</accidental>"), score);
    assertEquals(1, count(flute(score), "<accidental>natural</accidental>"), score);
  }

  @Test
  void the_second_passage_of_a_bar_knows_the_accidentals_of_the_first() throws Exception {
    String line = tone("A", 1, 3, "").repeat(8) + tone("A", 0, 3, "").repeat(8);
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(ATTRIBUTES + line),
                List.of(ATTRIBUTES + rest(12) + note("C", 5, 24, "") + rest(12))));
    String score = twice(before, List.of(new Segment(0, 0, 0, 3), new Segment(0, 0, 12, 15)));
    assertEquals(1, count(flute(score), "<accidental>sharp</accidental>"), score);
    assertEquals(1, count(flute(score), "<accidental>natural</accidental>"), score);
  }
}
