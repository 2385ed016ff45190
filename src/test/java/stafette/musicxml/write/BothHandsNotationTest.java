package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.Splice;
import stafette.musicxml.text.TextSpan;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.Part;
import stafette.score.Reading;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.score.TremoloReading;

/** What stands around the notes of a line that two hands share, on both of their staves. */
class BothHandsNotationTest {
  private static final Pattern SLUR = Pattern.compile("<slur number=\"(\\d)\" type=\"(\\w+)\"");
  private static final Pattern BEAM = Pattern.compile("<beam number=\"1\">(\\w+)</beam>");
  private static final String REPEAT =
      "<barline location=\"right\"><bar-style>light-heavy</bar-style><fermata type=\"upright\"/>"
          + "<repeat direction=\"backward\"/></barline>";
  private static final String OPENING =
      "<barline location=\"left\"><ending number=\"1\" type=\"start\"/></barline>";

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void all_but_the_notes_stays_as_it_is(SourceTreatment treatment) throws Exception {
    Document before = page();
    Document after = MusicXmlReader.read(written(before, treatment).bytes());
    for (int part = 0; part < 2; part++) {
      List<MeasureText> was = before.origin().parts().get(part).measures();
      List<MeasureText> is = after.origin().parts().get(part).measures();
      for (int bar = 0; bar < was.size(); bar++) {
        assertEquals(others(before, was.get(bar)), others(after, is.get(bar)));
      }
    }
  }

  /** Bar lines, directions, attributes and ways back. */
  private static List<String> others(Document document, MeasureText measure) {
    List<String> all = new ArrayList<>();
    for (ElementText element : measure.elements()) {
      String text = element.span().in(document.origin().text());
      boolean isOurs = element.name().equals("direction") && !text.contains("<rehearsal>");
      if (element.note().isEmpty() && !isOurs) {
        all.add(text);
      }
    }
    return all;
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void slurs_and_beams_of_each_hand_begin_and_end(SourceTreatment treatment) throws Exception {
    Document after = MusicXmlReader.read(written(page(), treatment).bytes());
    for (int part = 0; part < 2; part++) {
      Map<String, Integer> open = new HashMap<>();
      Map<String, String> beams = new HashMap<>();
      for (MeasureText measure : after.origin().parts().get(part).measures()) {
        for (ElementText element : measure.elements()) {
          if (element.note().isPresent()) {
            String text = element.span().in(after.origin().text());
            String voice = element.note().get().voice();
            slurs(text, voice, open);
            beam(text, voice, beams);
          }
        }
      }
      assertTrue(open.values().stream().allMatch(count -> count == 0), open.toString());
      assertTrue(beams.values().stream().allMatch("end"::equals), beams.toString());
    }
  }

  private static void slurs(String text, String voice, Map<String, Integer> open) {
    Matcher slur = SLUR.matcher(text);
    while (slur.find()) {
      open.merge(voice, slur.group(2).equals("start") ? 1 : -1, Integer::sum);
      assertTrue(open.getOrDefault(voice, 0) >= 0, text);
    }
  }

  private static void beam(String text, String voice, Map<String, String> beams) {
    Matcher beam = BEAM.matcher(text);
    if (beam.find()) {
      String before = beams.getOrDefault(voice, "end");
      assertEquals(before.equals("end"), beam.group(1).equals("begin"), text);
      beams.put(voice, beam.group(1));
    }
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void nothing_is_added_to_the_piano(SourceTreatment treatment) throws Exception {
    Document before = page();
    Document after = MusicXmlReader.read(written(before, treatment).bytes());
    Set<String> was = notes(before);
    assertTrue(was.containsAll(notes(after)));
    assertEquals(treatment == SourceTreatment.REMOVE ? 0 : was.size(), notes(after).size());
  }

  /** The notes of the piano, cue notes among them. */
  private static Set<String> notes(Document document) {
    Set<String> notes = new HashSet<>();
    for (MeasureText measure : document.origin().parts().get(0).measures()) {
      for (ElementText element : measure.elements()) {
        element
            .note()
            .filter(note -> !note.rest())
            .ifPresent(note -> notes.add(element.onset() + " " + note.staff() + " " + note.key()));
      }
    }
    return notes;
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void undoing_it_gives_the_page_back_byte_for_byte(SourceTreatment treatment) throws Exception {
    Document before = page();
    WrittenScore written = written(before, treatment);
    String text = before.origin().text();
    Splice splice = Splice.of(text, written.replacements());
    String changed = new String(written.bytes(), StandardCharsets.UTF_8);
    assertEquals(changed, splice.changed());
    List<Replacement> back = new ArrayList<>();
    int shift = 0;
    for (Replacement change : splice.replacements()) {
      int start = change.span().start() + shift;
      back.add(
          new Replacement(
              new TextSpan(start, start + change.text().length()), change.span().in(text)));
      shift += change.text().length() - (change.span().end() - change.span().start());
    }
    assertEquals(text, Splice.of(changed, back).changed());
  }

  @Test
  void where_the_source_is_kept_the_piano_stays_byte_for_byte() throws Exception {
    Document before = page();
    Document after = MusicXmlReader.read(written(before, SourceTreatment.KEEP).bytes());
    assertEquals(
        before.origin().parts().get(0).whole().in(before.origin().text()),
        after.origin().parts().get(0).whole().in(after.origin().text()));
  }

  @ParameterizedTest
  @EnumSource(
      value = SourceTreatment.class,
      names = {"KEEP", "CUE"})
  void a_line_that_is_kept_or_cued_can_be_read_again(SourceTreatment treatment) throws Exception {
    Document before = page();
    byte[] bytes = written(before, treatment).bytes();
    Document after =
        MusicXmlReader.read(
            bytes, Tremolo.AS_WRITTEN, (part, line, three) -> TremoloReading.MEASURED, true);
    assertEquals(
        line(before).strokes().stream().map(Stroke::keys).toList(),
        line(after).strokes().stream().map(Stroke::keys).toList());
  }

  private static WrittenScore written(Document page, SourceTreatment treatment) throws Exception {
    Line line = line(page);
    Player flute = ByHand.player("Flute", "flute", page.score());
    Plan plan =
        new Plan(
            new Brief(line, List.of(flute), Invented.rules()),
            List.of(new Segment(0, 0, 0, line.count() - 1)));
    return ScoreWriter.write(page, plan, treatment, player -> Optional.empty());
  }

  private static Line line(Document page) throws Exception {
    Part piano = page.score().parts().get(0);
    return new LineChoice(
            piano.name(),
            Optional.empty(),
            List.of(1, 2),
            List.of(),
            Optional.of(new ToneChoice.All()),
            Reading.ALL)
        .take(page.score());
  }

  /** Two bars of sixteenths, left and right by turns in pairs, slurred and beamed by hand. */
  private static Document page() throws Exception {
    String rest = "<note><rest measure=\"yes\"/><duration>16</duration></note>";
    String attributes =
        "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time>";
    String letter =
        "<direction><direction-type><rehearsal>A</rehearsal></direction-type></direction>";
    String text =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">\n<part-list>"
            + "<score-part id=\"P1\"><part-name>Piano</part-name></score-part>"
            + "<score-part id=\"P2\"><part-name>Flute</part-name></score-part></part-list>\n"
            + "<part id=\"P1\"><measure number=\"1\">"
            + attributes
            + "<staves>2</staves></attributes>"
            + letter
            + hands()
            + "</measure>\n<measure number=\"2\">"
            + OPENING
            + hands()
            + REPEAT
            + "</measure></part>\n<part id=\"P2\"><measure number=\"1\">"
            + attributes
            + "</attributes>"
            + rest
            + "</measure>\n<measure number=\"2\">"
            + OPENING
            + rest
            + REPEAT
            + "</measure></part>\n</score-partwise>\n";
    return MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String hands() {
    return hand(1, 5, OptionalInt.of(2))
        + "<backup><duration>16</duration></backup>"
        + hand(2, 4, OptionalInt.empty());
  }

  /** Four times two sixteenths of a beat, and a rest of an eighth before or after them. */
  private static String hand(int staff, int octave, OptionalInt restBefore) {
    String rest =
        "<note><rest/><duration>2</duration><voice>"
            + staff
            + "</voice><staff>"
            + staff
            + "</staff></note>";
    StringBuilder text = new StringBuilder();
    for (int beat = 0; beat < 4; beat++) {
      text.append(restBefore.isPresent() ? rest : "");
      text.append(note(staff, octave, "begin", "start")).append(note(staff, octave, "end", "stop"));
      text.append(restBefore.isPresent() ? "" : rest);
    }
    return text.toString();
  }

  private static String note(int staff, int octave, String beam, String slur) {
    return "<note><pitch><step>"
        + (beam.equals("begin") ? "A" : "G")
        + "</step><octave>"
        + octave
        + "</octave></pitch><duration>1</duration><voice>"
        + staff
        + "</voice><type>16th</type><staff>"
        + staff
        + "</staff><beam number=\"1\">"
        + beam
        + "</beam><beam number=\"2\">"
        + beam
        + "</beam><notations><slur number=\"1\" type=\""
        + slur
        + "\"/></notations></note>";
  }
}
