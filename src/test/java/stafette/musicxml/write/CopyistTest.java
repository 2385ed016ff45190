package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.plan.Brief;
import stafette.plan.Joins;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;

/** What stands beside the notes in players' parts (common practice, no source). */
class CopyistTest {
  private static final String REST = "<note><rest measure=\"yes\"/><duration>16</duration></note>";
  private static final String ATTRIBUTES =
      "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
          + "</attributes>";

  @Test
  void who_enters_after_more_than_eight_bars_gets_a_cue_of_who_plays_before() throws Exception {
    byte[] written = relayed(12, 10, "", WrittenAs.plain(SourceTreatment.REMOVE));
    List<String> flute = BarsAsText.of(written, "Flute 2");
    assertTrue(flute.get(9).startsWith("10: R.bar || <Flute 1> cue A4"), flute.get(9));
    assertEquals(17, flute.get(9).split("cue ", -1).length);
    assertFalse(flute.get(8).contains("cue"), flute.get(8));
    assertEquals(List.of(), OfficialSchema.errors(written));
  }

  @Test
  void who_enters_after_eight_bars_counts_them() throws Exception {
    byte[] written = relayed(12, 8, "", WrittenAs.plain(SourceTreatment.REMOVE));
    assertFalse(String.join("", BarsAsText.of(written, "Flute 2")).contains("cue"));
  }

  @Test
  void a_new_tempo_before_the_entry_makes_a_cue_of_less() throws Exception {
    String tempo = "<sound tempo=\"90\"/>";
    byte[] written = relayed(12, 5, tempo, WrittenAs.plain(SourceTreatment.REMOVE));
    assertTrue(BarsAsText.of(written, "Flute 2").get(4).contains("cue A4"));
  }

  @Test
  void an_entry_reminds_of_its_accidental_where_the_cue_before_it_has_another() throws Exception {
    String sharp = "<note><pitch><step>A</step><alter>1</alter><octave>4</octave></pitch>";
    StringBuilder text = new StringBuilder(page(12, "").origin().text());
    int bar = text.indexOf("<measure number=\"11\">");
    int note = text.lastIndexOf("<note><pitch>", bar);
    text.replace(note, text.indexOf("<duration>", note), sharp);
    Document page = MusicXmlReader.read(text.toString().getBytes(StandardCharsets.UTF_8));
    byte[] written = relayed(page, 10, WrittenAs.plain(SourceTreatment.REMOVE));
    String bars = BarsAsText.of(written, "Flute 2").get(10);
    assertTrue(bars.contains("A4(natural"), bars);
  }

  @Test
  void a_cue_is_written_once_into_a_part_of_the_score() throws Exception {
    byte[] once = relayed(12, 10, "", WrittenAs.plain(SourceTreatment.KEEP));
    Document after = MusicXmlReader.read(once);
    byte[] twice = relayed(after, 10, WrittenAs.plain(SourceTreatment.KEEP));
    assertEquals(
        new String(once, StandardCharsets.UTF_8), new String(twice, StandardCharsets.UTF_8));
  }

  @Test
  void a_cue_lies_where_the_player_can_read_it() throws Exception {
    Document page = page(12, "");
    Line line = ByHand.line(page.score(), "P1", "1-12");
    List<Player> players =
        List.of(
            ByHand.player("Flute 1", "flute", page.score()),
            ByHand.player("Tuba", "tuba", page.score()));
    byte[] written = write(page, line, players, 10 * 16, WrittenAs.plain(SourceTreatment.REMOVE));
    String bar = BarsAsText.of(written, "Tuba").get(9);
    assertTrue(bar.contains("cue A3") || bar.contains("cue A2"), bar);
  }

  @Test
  void marks_that_no_note_has_any_more_go_with_the_notes_but_words_for_a_tempo_stay()
      throws Exception {
    assertEquals("5: <Agitato> R.bar", pianoAfterRemoving("5-6").get(4));
  }

  @Test
  void marks_that_only_later_notes_have_go_to_them() throws Exception {
    assertEquals("5: <Agitato> R.bar", pianoAfterRemoving("5-5").get(4));
    String next = pianoAfterRemoving("5-5").get(5);
    assertTrue(
        next.startsWith("6: <p> <sempre stacc.> A4")
            || next.startsWith("6: <sempre stacc.> <p> A4"),
        next);
  }

  @Test
  void words_for_hairpins_and_signs_for_octaves_go_with_the_notes() throws Exception {
    String shift = "<direction><direction-type><octave-shift type=\"%s\" size=\"8\"/>%s";
    String end = "</direction-type></direction>";
    String words = "<direction><direction-type><words>cresc.</words>" + end;
    Document page = page(6, words + shift.formatted("down", end));
    StringBuilder text = new StringBuilder(page.origin().text());
    text.insert(text.indexOf("</measure>", text.indexOf("\"5\"")), shift.formatted("stop", end));
    page = MusicXmlReader.read(text.toString().getBytes(StandardCharsets.UTF_8));
    Line line = ByHand.line(page.score(), "P1", "5-6");
    WrittenAs removing = WrittenAs.plain(SourceTreatment.REMOVE);
    byte[] written = write(page, line, flutes(page), 16, removing);
    assertEquals("5: R.bar", BarsAsText.of(written, "Piano").get(4));
    assertFalse(new String(written, StandardCharsets.UTF_8).contains("octave-shift"));
    assertTrue(BarsAsText.of(written, "Flute 1").get(4).contains("cresc."));
  }

  @Test
  void a_landing_note_keeps_the_beam_that_it_has_in_the_part() throws Exception {
    String bar = landingBefore(beamed("A", 1, "16th", "begin") + beamed("G", 1, "16th", "end"), 2);
    assertTrue(bar.contains(" A4.16th[> G4.16th]"), bar);
  }

  @Test
  void notes_beside_a_turn_that_lose_their_beam_get_flags() throws Exception {
    String bar =
        landingBefore(beamed("A", 2, "eighth", "begin") + beamed("G", 2, "eighth", "end"), 4);
    assertTrue(bar.contains("G4.eighth "), bar);
  }

  /** A flute has two bars of the line, and lands where its part has something already. */
  private static String landingBefore(String notes, int length) throws Exception {
    String flute =
        "<part id=\"P2\"><measure number=\"1\">%s%s</measure><measure number=\"2\">%s</measure>"
            + "<measure number=\"3\">%s%s</measure></part></score-partwise>";
    String text =
        page(3, "")
            .origin()
            .text()
            .replace(
                "</part-list>",
                "<score-part id=\"P2\"><part-name>Flute 1</part-name></score-part></part-list>")
            .replace(
                "</score-partwise>",
                flute.formatted(ATTRIBUTES, REST, REST, notes, Xml.rest(16 - length)));
    Document page = MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
    byte[] written = relayed(page, 2, WrittenAs.plain(SourceTreatment.KEEP));
    assertEquals(List.of(), OfficialSchema.errors(written));
    return BarsAsText.of(written, "Flute 1").get(2);
  }

  private static String beamed(String step, int duration, String type, String beam) {
    return "<note><pitch><step>%s</step><octave>4</octave></pitch><duration>%d</duration><type>%s</type><beam number=\"1\">%s</beam></note>"
        .formatted(step, duration, type, beam);
  }

  private static List<String> pianoAfterRemoving(String bars) throws Exception {
    String marks =
        "<direction><direction-type><dynamics><p/></dynamics></direction-type></direction>"
            + "<direction><direction-type><words>sempre stacc.</words></direction-type></direction>"
            + "<direction><direction-type><words>Agitato</words></direction-type></direction>";
    Document page = page(6, marks);
    Line line = ByHand.line(page.score(), "P1", bars);
    WrittenAs removing = WrittenAs.plain(SourceTreatment.REMOVE);
    return BarsAsText.of(write(page, line, flutes(page), 8, removing), "Piano");
  }

  @Test
  void shaded_joins_leave_the_accent_to_who_leaves() throws Exception {
    WrittenAs shaded = new WrittenAs(SourceTreatment.KEEP, Joins.SHADED, false, true);
    byte[] written = relayed(4, 2, "", shaded);
    assertTrue(BarsAsText.of(written, "Flute 1").get(2).contains("A4.eighth>"));
    String enters = BarsAsText.of(written, "Flute 2").get(2);
    assertTrue(enters.contains("<mp> <from Flute 1> A4.16th[ <mf> A4.16th"), enters);
  }

  @Test
  void louder_instruments_are_marked_softer_where_balance_is_wished() throws Exception {
    Document page = page(4, "");
    Line line = ByHand.line(page.score(), "P1", "1-4");
    List<Player> players =
        List.of(
            ByHand.player("Flute 1", "flute", page.score()),
            ByHand.player("Trumpet 1", "trumpet in C", page.score()));
    WrittenAs balanced = new WrittenAs(SourceTreatment.KEEP, Joins.AS_WRITTEN, true, true);
    byte[] written = write(page, line, players, 2 * 16, balanced);
    assertTrue(BarsAsText.of(written, "Flute 1").get(0).contains("<mf>"));
    String trumpet = BarsAsText.of(written, "Trumpet 1").get(2);
    assertTrue(trumpet.contains("<mp>") || trumpet.contains("<p>"), trumpet);
  }

  @Test
  void short_names_are_those_of_the_score() throws Exception {
    String text =
        new String(page(4, "").container().bytes(), StandardCharsets.UTF_8)
            .replace(
                "<part-name>Piano</part-name>",
                "<part-name>Piano</part-name><part-abbreviation>Pno.</part-abbreviation>");
    Document page = MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
    byte[] written = relayed(page, 2, WrittenAs.plain(SourceTreatment.KEEP));
    assertTrue(BarsAsText.of(written, "Flute 1").get(2).contains("<to Fl. 2>"));
    assertTrue(
        new String(written, StandardCharsets.UTF_8)
            .contains("<part-abbreviation>Fl. 2</part-abbreviation>"));
  }

  @Test
  void who_has_several_turns_is_told_once_with_whom() throws Exception {
    Document page = page(8, "");
    Line line = ByHand.line(page.score(), "P1", "1-8");
    Plan plan =
        new Plan(
            new Brief(line, flutes(page), Invented.rules()),
            List.of(
                new Segment(0, 0, 0, 32),
                new Segment(1, 0, 32, 64),
                new Segment(0, 0, 64, 96),
                new Segment(1, 0, 96, 127)));
    byte[] written =
        ScoreWriter.write(page, plan, SourceTreatment.KEEP, player -> Optional.empty()).bytes();
    String first = String.join("\n", BarsAsText.of(written, "Flute 1"));
    assertEquals(2, first.split("alternating with Flute 2", -1).length, first);
    assertFalse(first.contains("<to ") || first.contains("<from "), first);
  }

  @Test
  void an_accidental_that_was_another_before_is_shown_at_the_entry() throws Exception {
    String sharp = "<pitch><step>A</step><alter>1</alter><octave>4</octave></pitch>";
    String plain = "<pitch><step>A</step><octave>4</octave></pitch>";
    String text = new String(page(8, "").container().bytes(), StandardCharsets.UTF_8);
    int second = text.indexOf("<measure number=\"2\">");
    int third = text.indexOf("<measure number=\"3\">");
    text =
        text.substring(0, second)
            + text.substring(second, third).replace(plain, sharp)
            + text.substring(third);
    Document page = MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
    Line line = ByHand.line(page.score(), "P1", "1-8");
    Plan plan =
        new Plan(
            new Brief(line, flutes(page), Invented.rules()),
            List.of(
                new Segment(0, 0, 0, 31), new Segment(1, 0, 32, 64), new Segment(0, 0, 64, 127)));
    byte[] written =
        ScoreWriter.write(page, plan, SourceTreatment.KEEP, player -> Optional.empty()).bytes();
    String entry = BarsAsText.of(written, "Flute 1").get(4);
    assertTrue(entry.contains("A4(natural).16th"), entry);
    assertFalse(BarsAsText.of(written, "Flute 2").get(2).contains("natural"));
  }

  @Test
  void own_notes_after_the_relay_go_on_in_their_own_character() throws Exception {
    String words =
        "<direction><direction-type><words>sempre stacc.</words></direction-type></direction>";
    String own =
        "<note><pitch><step>C</step><octave>5</octave></pitch><duration>16</duration><type>whole"
            + "</type></note>";
    String text =
        "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Piano"
            + "</part-name></score-part><score-part id=\"P2\"><part-name>Flute 1</part-name>"
            + "</score-part></part-list><part id=\"P1\"><measure number=\"1\">"
            + ATTRIBUTES
            + words
            + sixteenths()
            + "</measure><measure number=\"2\">"
            + REST
            + "</measure></part><part id=\"P2\"><measure number=\"1\">"
            + ATTRIBUTES
            + REST
            + "</measure><measure number=\"2\">"
            + own
            + "</measure></part></score-partwise>";
    Document page = MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
    Line line = ByHand.line(page.score(), "P1", "1");
    List<Player> players = List.of(ByHand.player("Flute 1", "flute", page.score()));
    Plan plan =
        new Plan(new Brief(line, players, Invented.rules()), List.of(new Segment(0, 0, 0, 15)));
    byte[] once =
        ScoreWriter.write(page, plan, SourceTreatment.KEEP, player -> Optional.empty()).bytes();
    List<String> flute = BarsAsText.of(once, "Flute 1");
    assertTrue(flute.get(0).contains("<sempre stacc.>"), flute.get(0));
    assertEquals("2: <come prima> C5.whole", flute.get(1));
    Document after = MusicXmlReader.read(once);
    assertEquals(
        List.of(),
        ScoreWriter.write(after, plan, SourceTreatment.KEEP, player -> Optional.empty())
            .replacements());
  }

  private static List<Player> flutes(Document page) {
    return List.of(
        ByHand.player("Flute 1", "flute", page.score()),
        ByHand.player("Flute 2", "flute", page.score()));
  }

  /** Two flutes, the second of which enters after so many bars. */
  private static byte[] relayed(int bars, int entersAfter, String more, WrittenAs how)
      throws Exception {
    return relayed(page(bars, more), entersAfter, how);
  }

  private static byte[] relayed(Document page, int entersAfter, WrittenAs how) throws Exception {
    Line line = ByHand.line(page.score(), "P1", "1-" + page.score().bars().count());
    return write(page, line, flutes(page), entersAfter * 16, how);
  }

  private static byte[] write(
      Document page, Line line, List<Player> players, int join, WrittenAs how) throws Exception {
    Plan plan =
        new Plan(
            new Brief(line, players, Invented.rules()),
            List.of(new Segment(0, 0, 0, join), new Segment(1, 0, join, line.count() - 1)));
    return ScoreWriter.write(page, Optional.of(plan), List.of(), how, player -> Optional.empty())
        .bytes();
  }

  /** Bars of sixteenths, the first of each accented; something before the fifth. */
  private static Document page(int bars, String more) throws Exception {
    StringBuilder text =
        new StringBuilder(
            "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Piano"
                + "</part-name></score-part></part-list><part id=\"P1\">");
    for (int bar = 1; bar <= bars; bar++) {
      text.append("<measure number=\"").append(bar).append("\">");
      text.append(bar == 1 ? ATTRIBUTES + "<sound tempo=\"120\"/>" : "")
          .append(bar == 5 ? more : "");
      text.append(sixteenths()).append("</measure>\n");
    }
    text.append("</part></score-partwise>");
    return MusicXmlReader.read(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String sixteenths() {
    String note =
        "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration><type>16th"
            + "</type></note>";
    String accented =
        note.replace(
            "</note>", "<notations><articulations><accent/></articulations></notations></note>");
    return accented + String.join("", Collections.nCopies(15, note));
  }
}
