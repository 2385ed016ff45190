package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;
import static stafette.musicxml.read.Xml.score;
import static stafette.musicxml.read.Xml.strokes;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Articulation;
import stafette.score.Drum;
import stafette.score.Dynamic;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.score.Tremolo;
import stafette.score.Tuplet;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

class StrokesTest {
  @Test
  void a_tie_over_the_barline_is_one_stroke_with_two_values() throws UnreadableScore {
    List<Stroke> strokes =
        strokes(
            score(
                ATTRIBUTES + rest(36) + note("A", 4, 12, "<tie type=\"start\"/>"),
                note("A", 4, 6, "<tie type=\"stop\"/>") + note("A", 4, 42, "")));
    assertEquals(2, strokes.size());
    assertEquals(Length.ofQuarters(3, 2), strokes.get(0).length());
    assertEquals(2, strokes.get(0).values().size());
    assertEquals(Position.ofQuarters(9, 2), strokes.get(1).onset());
  }

  @Test
  void notes_of_a_chord_are_one_stroke_from_low_to_high() throws UnreadableScore {
    String upper =
        "<note><chord/><pitch><step>C</step><octave>4</octave></pitch><duration>48</duration></note>";
    List<Stroke> strokes = strokes(score(ATTRIBUTES + note("E", 4, 48, "") + upper));
    assertEquals(
        List.<Tone>of(new Pitch(Step.C, 0, 4), new Pitch(Step.E, 0, 4)), strokes.get(0).tones());
  }

  @Test
  void under_a_slur_all_but_the_first_note_are_slurred() throws UnreadableScore {
    List<Stroke> strokes =
        strokes(
            score(
                ATTRIBUTES
                    + note("A", 4, 12, notations("<slur type=\"start\" number=\"1\"/>"))
                    + note("B", 4, 12, "")
                    + note("C", 5, 12, notations("<slur type=\"stop\" number=\"1\"/>"))
                    + note("D", 5, 12, "")));
    assertEquals(List.of(false, true, true, false), strokes.stream().map(Stroke::slurred).toList());
    assertEquals(
        List.of(true, true, false, false), strokes.stream().map(Stroke::slurContinues).toList());
  }

  @Test
  void grace_notes_hang_on_the_stroke_they_lead_to() throws UnreadableScore {
    String grace =
        "<note><grace slash=\"yes\"/><pitch><step>G</step><octave>5</octave></pitch></note>";
    List<Stroke> strokes = strokes(score(ATTRIBUTES + grace + note("A", 5, 48, "")));
    assertEquals(1, strokes.size());
    assertEquals(1, strokes.get(0).graces().size());
    assertTrue(strokes.get(0).graces().get(0).slashed());
  }

  @Test
  void cue_notes_are_no_strokes_unless_asked_for() throws UnreadableScore {
    String cue =
        "<note><cue/><pitch><step>G</step><octave>5</octave></pitch><duration>24</duration></note>";
    String text = score(ATTRIBUTES + cue + note("A", 5, 24, ""));
    assertEquals(1, strokes(text).size());
    Document withCues =
        MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8), Tremolo.AS_WRITTEN, true);
    assertEquals(2, withCues.score().parts().get(0).voices().get(0).strokes().size());
  }

  /**
   * Slashes add to the note's own beams: common practice, as MusicXML 4.0 describes the tremolo
   * element.
   */
  @Test
  void slashes_add_to_the_beams_of_the_note() throws UnreadableScore {
    String three = "<type>quarter</type>" + notations(tremolo("single", 3));
    String two = "<type>eighth</type>" + notations(tremolo("single", 2));
    List<Stroke> strokes =
        strokes(score(ATTRIBUTES + note("A", 4, 12, three) + note("A", 4, 6, two)));
    assertEquals(12, strokes.size());
    assertTrue(strokes.stream().allMatch(s -> s.length().equals(Length.ofQuarters(1, 8))));
  }

  @Test
  void three_slashes_on_a_violin_are_unmeasured_unless_the_user_says_otherwise()
      throws UnreadableScore {
    String text =
        Xml.scoreOf(
            "<part-name>Violin I</part-name>",
            ATTRIBUTES + note("A", 4, 48, "<type>whole</type>" + notations(tremolo("single", 3))));
    assertEquals(1, strokes(text).size());
    assertFalse(strokes(text).get(0).measured());
    Document measured =
        MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8), Tremolo.MEASURED, false);
    assertEquals(32, measured.score().parts().get(0).voices().get(0).strokes().size());
  }

  @Test
  void a_tremolo_of_two_notes_alternates_them() throws UnreadableScore {
    String time =
        "<type>half</type><time-modification><actual-notes>2</actual-notes><normal-notes>1</normal-notes></time-modification>";
    List<Stroke> strokes =
        strokes(
            score(
                ATTRIBUTES
                    + note("A", 4, 12, time + notations(tremolo("start", 1)))
                    + note("C", 5, 12, time + notations(tremolo("stop", 1)))
                    + rest(24)));
    assertEquals(4, strokes.size());
    assertEquals(
        List.of(69, 72, 69, 72), strokes.stream().map(s -> s.tones().get(0).key()).toList());
  }

  @Test
  void a_transposing_part_is_read_at_sounding_pitch() throws UnreadableScore {
    String transpose =
        "<attributes><transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>";
    assertEquals(
        List.<Tone>of(new Pitch(Step.B, -1, 4)),
        strokes(score(ATTRIBUTES + transpose + note("C", 5, 48, ""))).get(0).tones());
  }

  @Test
  void an_instrument_without_pitch_is_a_drum() throws UnreadableScore {
    String drum =
        "<note><unpitched><display-step>C</display-step><display-octave>5</display-octave></unpitched><duration>48</duration></note>";
    assertTrue(strokes(score(ATTRIBUTES + drum)).get(0).tones().get(0) instanceof Drum);
  }

  @Test
  void tuplets_know_the_span_of_their_group() throws UnreadableScore {
    String third =
        "<type>eighth</type><time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>";
    List<Stroke> strokes =
        strokes(
            score(
                ATTRIBUTES
                    + note("A", 4, 4, third)
                    + note("A", 4, 4, third)
                    + note("A", 4, 4, third)
                    + rest(36)));
    Tuplet group = new Tuplet(3, 2, Span.of(Position.START, Length.QUARTER));
    assertTrue(
        strokes.stream().allMatch(s -> s.values().get(0).tuplet().orElseThrow().equals(group)),
        strokes.toString());
  }

  @Test
  void dynamics_stay_in_force_and_articulations_belong_to_their_note() throws UnreadableScore {
    String forte =
        "<direction><direction-type><dynamics><f/></dynamics></direction-type></direction>";
    List<Stroke> strokes =
        strokes(
            score(
                ATTRIBUTES
                    + note(
                        "A",
                        4,
                        12,
                        notations("<articulations><accent/><staccato/></articulations>"))
                    + forte
                    + note("A", 4, 12, "")
                    + note("A", 4, 24, "")));
    assertEquals(
        List.of(Dynamic.MF, Dynamic.F, Dynamic.F), strokes.stream().map(Stroke::dynamic).toList());
    assertEquals(
        Set.of(Articulation.ACCENT, Articulation.STACCATO), strokes.get(0).articulations());
  }

  @Test
  void voices_and_staves_are_kept_apart() throws UnreadableScore {
    String second = "<voice>2</voice><staff>2</staff>";
    Document document =
        Xml.read(
            score(
                ATTRIBUTES
                    + note("A", 5, 48, "<voice>1</voice><staff>1</staff>")
                    + "<backup><duration>48</duration></backup>"
                    + "<forward><duration>24</duration></forward>"
                    + note("C", 3, 24, second)));
    var voices = document.score().parts().get(0).voices();
    assertEquals(2, voices.size());
    assertEquals(Position.ofQuarters(2, 1), voices.get(1).strokes().get(0).onset());
    assertEquals(2, voices.get(1).staff());
  }

  private static String notations(String inner) {
    return "<notations>" + inner + "</notations>";
  }

  private static String tremolo(String type, int slashes) {
    return "<ornaments><tremolo type=\"" + type + "\">" + slashes + "</tremolo></ornaments>";
  }
}
