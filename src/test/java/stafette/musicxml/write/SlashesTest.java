package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;
import stafette.score.Stroke;

/** Slashes of the line stay slashes in the parts, where a player has all of a note. */
class SlashesTest {
  private static final String ATTRIBUTES =
      "<attributes><divisions>8</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
          + "</attributes><sound tempo=\"120\"/>";
  private static final String QUARTER = slashed("A", 8, "quarter", "", "single", 2, "");
  private static final String PAIR = two("A", "start", "") + two("C", "stop", "");
  private static final String SLURRED =
      two("A", "start", "<slur type=\"start\"/>") + two("C", "stop", "<slur type=\"stop\"/>");

  @Test
  void a_repeated_note_keeps_its_slashes_and_who_lands_has_a_plain_note() throws Exception {
    byte[] written = written(QUARTER.repeat(4), 16, "flute");
    assertEquals("A4.quarter // ".repeat(4).strip(), notes(bar(written, "One", 1)));
    assertEquals("A4.eighth R.eighth R.quarter R.half", notes(bar(written, "One", 2)));
    assertEquals("A4.quarter // ".repeat(4).strip(), notes(bar(written, "Two", 2)));
  }

  @Test
  void a_note_that_two_share_is_written_out_for_both() throws Exception {
    byte[] written = written(QUARTER.repeat(4), 18, "flute");
    assertEquals("A4.16th[ A4.16th A4.eighth] R.quarter R.half", notes(bar(written, "One", 2)));
    assertEquals(
        "R.eighth A4.16th[ A4.16th] A4.quarter // A4.quarter // A4.quarter //",
        notes(bar(written, "Two", 2)));
  }

  @Test
  void two_notes_in_turn_stay_two_notes_on_strings() throws Exception {
    byte[] written = written(PAIR.repeat(2), 16, "violin");
    assertEquals(
        "A4.half/2 //> C5.half/2<// A4.half/2 //> C5.half/2<//", notes(bar(written, "One", 1)));
  }

  @Test
  void two_notes_in_turn_are_written_out_for_winds_unless_they_are_slurred() throws Exception {
    assertTrue(bar(written(PAIR.repeat(2), 16, "flute"), "One", 1).contains("A4.16th[ C5.16th"));
    String slurred = bar(written(SLURRED.repeat(2), 16, "flute"), "One", 1);
    assertTrue(slurred.contains("A4.half/2"), slurred);
  }

  @Test
  void three_slashes_on_bows_would_not_be_counted_and_are_written_out() throws Exception {
    String three = slashed("A", 8, "quarter", "", "single", 3, "");
    assertTrue(bar(written(three.repeat(4), 32, "violin"), "One", 1).contains("A4.32nd"));
    assertTrue(bar(written(three.repeat(4), 32, "flute"), "One", 1).contains("A4.quarter ///"));
  }

  private static String bar(byte[] written, String part, int bar) throws Exception {
    return BarsAsText.of(written, part).get(bar - 1);
  }

  private static String notes(String bar) {
    return bar.replaceAll("^\\d+: (?:\\{[^}]*} )?", "")
        .replaceAll("<(?:from|to|mf|f|p)[^>]*> ", "");
  }

  /** Two players of one instrument, the second from a stroke on; what is read back is the line. */
  private static byte[] written(String bar, int join, String instrument) throws Exception {
    String text =
        "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Piano"
            + "</part-name></score-part></part-list><part id=\"P1\"><measure number=\"1\">"
            + ATTRIBUTES
            + bar
            + "</measure><measure number=\"2\">"
            + bar
            + "</measure></part></score-partwise>";
    Document page = MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
    Line line = ByHand.line(page.score(), "P1", "1-2");
    List<Player> players =
        List.of(
            ByHand.player("One", instrument, page.score()),
            ByHand.player("Two", instrument, page.score()));
    Plan plan =
        new Plan(
            new Brief(line, players, Invented.rules()),
            List.of(new Segment(0, 0, 0, join), new Segment(1, 0, join, line.count() - 1)));
    byte[] written =
        ScoreWriter.write(
                page,
                Optional.of(plan),
                List.of(),
                WrittenAs.plain(SourceTreatment.KEEP),
                player -> Optional.empty())
            .bytes();
    assertEquals(List.of(), OfficialSchema.errors(written));
    Document after = MusicXmlReader.read(written);
    assertEquals(
        line.strokes().subList(join, line.count()).stream().map(SlashesTest::heard).toList(),
        after.score().part("Two").orElseThrow().voices().stream()
            .flatMap(voice -> voice.strokes().stream())
            .map(SlashesTest::heard)
            .toList());
    return written;
  }

  private static String heard(Stroke stroke) {
    return stroke.onset().quarters() + " " + stroke.keys() + " " + stroke.length().quarters();
  }

  private static String two(String step, String type, String slur) {
    String two =
        "<time-modification><actual-notes>2</actual-notes><normal-notes>1</normal-notes>"
            + "</time-modification>";
    return slashed(step, 8, "half", two, type, 2, slur);
  }

  private static String slashed(
      String step,
      int duration,
      String type,
      String more,
      String tremolo,
      int slashes,
      String slur) {
    return "<note><pitch><step>%s</step><octave>%d</octave></pitch><duration>%d</duration><type>%s</type>%s<notations>%s<ornaments><tremolo type=\"%s\">%d</tremolo></ornaments></notations></note>"
        .formatted(step, step.equals("A") ? 4 : 5, duration, type, more, slur, tremolo, slashes);
  }
}
