package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.score;
import static stafette.musicxml.read.Xml.strokes;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Attack;
import stafette.score.Stroke;

/** An ornament whose sign stands in the score is one stroke, whether or not it is written out. */
class TrillsTest {
  /** Twelfths of a quarter. */
  private static final int SIXTEENTH = 3;

  private static final int FAST = 1;

  private static final String TRILL = ornament("<trill-mark/>");
  private static final String LINE = ornament("<trill-mark/><wavy-line type=\"start\"/>");
  private static final String LINE_ENDS = ornament("<wavy-line type=\"stop\"/>");

  private static String ornament(String sign) {
    return "<notations><ornaments>" + sign + "</ornaments></notations>";
  }

  /** Notes of one duration by their steps, with marks on the first and on the last. */
  private static String run(String steps, int duration, String first, String last) {
    int end = steps.length() - 1;
    return note(steps.substring(0, 1), 5, duration, first)
        + steps
            .substring(1, end)
            .chars()
            .mapToObj(step -> note(Character.toString(step), 5, duration, ""))
            .collect(Collectors.joining())
        + note(steps.substring(end), 5, duration, last);
  }

  /** A letter for each stroke of the first voice: t for those of a trill but its first. */
  private static String read(String... notes) throws UnreadableScore {
    List<Stroke> strokes = strokes(score(ATTRIBUTES + String.join("", notes)));
    strokes.forEach(
        stroke ->
            assertEquals(stroke.measured(), stroke.manner().attack() != Attack.TRILLED, "trilled"));
    assertTrue(strokes.stream().noneMatch(Stroke::isTremolo));
    return strokes.stream().map(s -> s.measured() ? "-" : "t").collect(Collectors.joining());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trill-mark",
        "turn",
        "inverted-turn",
        "delayed-turn",
        "vertical-turn",
        "shake",
        "mordent",
        "inverted-mordent",
        "schleifer",
        "haydn"
      })
  void a_sign_on_a_note_makes_no_more_strokes_of_it(String sign) throws UnreadableScore {
    assertEquals("--", read(note("D", 5, 12, ornament("<" + sign + "/>")), note("C", 5, 12, "")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"DEDE", "EDEDEDED", "DEDEDEDED"})
  void what_is_written_out_under_a_wavy_line_is_one_stroke(String steps) throws UnreadableScore {
    assertEquals(
        "-" + "t".repeat(steps.length() - 1) + "-",
        read(run(steps, SIXTEENTH, LINE, LINE_ENDS), note("C", 5, 12, "")));
  }

  @Test
  void what_is_written_out_from_a_trill_sign_on_is_one_stroke_as_far_as_it_alternates()
      throws UnreadableScore {
    assertEquals("-ttttt--", read(run("DEDEDECD", FAST, TRILL, "")));
  }

  @Test
  void a_second_trill_begins_with_its_own_sign() throws UnreadableScore {
    String trill = run("DEDE", FAST, LINE, LINE_ENDS);
    assertEquals("-ttt-ttt", read(trill, trill));
  }

  @Test
  void notes_that_are_no_trill_stay_strokes_under_a_wavy_line() throws UnreadableScore {
    assertEquals("-----", read(run("DEDEC", FAST, LINE, LINE_ENDS)), "leaves the two pitches");
    assertEquals("----", read(run("DFDF", FAST, LINE, LINE_ENDS)), "a third apart");
    assertEquals("---", read(run("DED", FAST, LINE, LINE_ENDS)), "three notes");
    assertEquals("----", read(run("DEFE", FAST, LINE, LINE_ENDS)), "three pitches");
    assertEquals("----", read(run("DEDE", 6, LINE, LINE_ENDS)), "eighths, each with its trill");
    assertEquals("----", read(run("DEDE", FAST, LINE, "")), "a line without an end");
    assertEquals("----", read(run("DDDD", FAST, LINE, LINE_ENDS)), "one pitch");
  }

  @Test
  void a_melody_to_and_fro_stays_one_without_a_sign_or_where_it_is_slow() throws UnreadableScore {
    assertEquals("-----", read(run("DEDED", FAST, "", "")));
    assertEquals("-----", read(run("DEDED", SIXTEENTH, TRILL, "")));
    assertEquals("----", read(run("DEDE", FAST, ornament("<turn/>"), "")));
  }

  @Test
  void another_voice_has_no_part_in_it() throws UnreadableScore {
    String other =
        run("GAGA", FAST, "", "")
            .replace("<octave>5", "<octave>4")
            .replace("</note>", "<voice>2</voice></note>");
    String back = "<backup><duration>4</duration></backup>";
    assertEquals("-ttt", read(run("DEDE", FAST, LINE, LINE_ENDS) + back, other));
    assertEquals("----", read(other + back, run("DEDE", FAST, LINE, LINE_ENDS)));
  }
}
