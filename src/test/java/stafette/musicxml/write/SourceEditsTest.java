package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.plan.Brief;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;

/** What becomes of the line in the part that it was taken from. */
class SourceEditsTest {
  private static final String EMPTY = ATTRIBUTES + rest(48);

  private static Document piano(String... measures) throws UnreadableScore {
    List<String> flute = new ArrayList<>();
    for (int i = 0; i < measures.length; i++) {
      flute.add(i == 0 ? EMPTY : rest(48));
    }
    return TwoParts.read(TwoParts.of(List.of(measures), flute));
  }

  /** The score once a flute has all of the line in these bars. */
  private static Document after(
      Document before, String bars, Optional<ToneChoice> tone, SourceTreatment treatment)
      throws Exception {
    Line line = ByHand.line(before.score(), "P1", bars, tone);
    Plan plan = TwoParts.plan(before, line, "Flute", 0, line.count() - 1);
    WrittenScore written = TwoParts.write(before, plan, treatment);
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
    Document after = MusicXmlReader.read(written.bytes());
    balanced(pianoText(after));
    assertEquals(before.score().bars().get(0), after.score().bars().get(0));
    return after;
  }

  private static String pianoText(Document document) {
    return document.origin().parts().get(0).whole().in(document.origin().text());
  }

  /** Every slur, tie, curve, tuplet and beam that begins in a part ends there. */
  private static void balanced(String part) {
    for (String sign : List.of("slur", "tie", "tied", "tuplet")) {
      assertEquals(
          count(part, "<" + sign + " [^>]*type=\"start\""),
          count(part, "<" + sign + " [^>]*type=\"stop\""),
          sign + " in " + part);
    }
    Map<String, Boolean> open = new HashMap<>();
    Matcher notes = java.util.regex.Pattern.compile("(?s)<note.*?</note>").matcher(part);
    while (notes.find()) {
      Matcher beam =
          java.util.regex.Pattern.compile("<beam number=\"(\\d)\">([^<]*)</beam>")
              .matcher(notes.group());
      boolean any = false;
      while (beam.find()) {
        any = true;
        boolean is = open.getOrDefault(beam.group(1), false);
        assertEquals(
            beam.group(2).equals("end") || beam.group(2).equals("continue"),
            is,
            notes.group() + " in " + part);
        open.put(beam.group(1), beam.group(2).equals("begin") || beam.group(2).equals("continue"));
      }
      assertTrue(
          any || notes.group().contains("<chord/>") || !open.containsValue(true),
          "a beam over " + notes.group());
    }
    assertTrue(!open.containsValue(true), part);
  }

  private static int count(String text, String pattern) {
    return (int) java.util.regex.Pattern.compile(pattern).matcher(text).results().count();
  }

  private static String notations(String inner) {
    return "<notations>" + inner + "</notations>";
  }

  private static String slur(String type) {
    return notations("<slur type=\"" + type + "\" number=\"1\"/>");
  }

  private static String tied(String type) {
    return "<tie type=\"" + type + "\"/>";
  }

  @Test
  void removed_notes_become_rests() throws Exception {
    Document before = piano(ATTRIBUTES + note("A", 4, 12, "").repeat(4));
    Document after = after(before, "1", Optional.empty(), SourceTreatment.REMOVE);
    assertEquals(List.of(), TwoParts.strokes(after, "P1"));
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, "P2"));
  }

  @Test
  void cued_notes_are_still_there_to_be_read() throws Exception {
    Document before =
        piano(
            ATTRIBUTES
                + "<note><grace/><pitch><step>B</step><octave>4</octave></pitch></note>"
                + note("A", 4, 12, "").repeat(3)
                + note("A", 4, 12, tied("start") + notations("<tied type=\"start\"/>")),
            note("A", 4, 12, tied("stop") + notations("<tied type=\"stop\"/>")) + rest(36));
    Document after = after(before, "1", Optional.empty(), SourceTreatment.CUE);
    assertEquals(List.of(), TwoParts.strokes(after, "P1"));
    Document withCues = MusicXmlReader.read(after.container().bytes(), Tremolo.AS_WRITTEN, true);
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(withCues, "P1"));
    assertEquals(6, count(pianoText(after), "<cue/>"));
  }

  @TestFactory
  Stream<DynamicTest> of_a_chord_only_the_chosen_tone_goes() {
    return Stream.of("bottom", "top", "2")
        .map(
            tone ->
                DynamicTest.dynamicTest(
                    tone, () -> onlyTheToneGoes(ToneChoice.parse(tone).orElseThrow())));
  }

  private static void onlyTheToneGoes(ToneChoice tone) throws Exception {
    Document before = piano(ATTRIBUTES + triad(36, "", "", "") + triad(12, "", "", ""), rest(48));
    Document after = after(before, "1", Optional.of(tone), SourceTreatment.REMOVE);
    Line line = ByHand.line(before.score(), "P1", "1", Optional.of(tone));
    int gone = line.stroke(0).tones().get(0).key();
    List<Integer> left = Stream.of(60, 64, 67).filter(key -> key != gone).toList();
    assertEquals(List.of("0 " + left + " 3", "3 " + left + " 1"), TwoParts.strokes(after, "P1"));
  }

  private static String triad(int duration, String c, String e, String g) {
    return note("C", 4, duration, c)
        + note("E", 4, duration, e).replace("<note>", "<note><chord/>")
        + note("G", 4, duration, g).replace("<note>", "<note><chord/>");
  }

  @Test
  void where_each_tone_has_its_players_all_tones_go() throws Exception {
    Document before = piano(ATTRIBUTES + triad(24, "", "", "") + note("A", 4, 24, ""));
    Document removed = eachTone(before, "Flute", SourceTreatment.REMOVE);
    assertEquals(List.of(), TwoParts.strokes(removed, "P1"));
    assertEquals(1, count(pianoText(removed), "<rest measure"));
    Document cued = eachTone(before, "Flute", SourceTreatment.CUE);
    assertEquals(List.of(), TwoParts.strokes(cued, "P1"));
    assertEquals(4, count(pianoText(cued), "<cue/>"));
  }

  @Test
  void where_each_tone_has_its_players_the_tone_of_its_own_player_stays() throws Exception {
    Document before = piano(ATTRIBUTES + triad(24, "", "", "") + note("A", 4, 24, ""));
    Document removed = eachTone(before, "Piano", SourceTreatment.REMOVE);
    assertEquals(List.of("0 [67] 2", "2 [69] 2"), TwoParts.strokes(removed, "P1"));
  }

  /** One player has the top tone, others have the tones below. */
  private static Document eachTone(Document before, String top, SourceTreatment treatment)
      throws Exception {
    List<Line> lines = new ArrayList<>();
    List<Player> players = new ArrayList<>();
    List<Segment> segments = new ArrayList<>();
    for (int tone = 1; tone <= 3; tone++) {
      Line line = ByHand.line(before.score(), "P1", "1", ToneChoice.parse(String.valueOf(tone)));
      lines.add(line);
      players.add(ByHand.player(tone == 1 ? top : "Oboe " + tone, "flute", before.score()));
      segments.add(new Segment(tone - 1, tone - 1, 0, 0, line.count() - 1, Pattern.ALL));
    }
    Plan plan = new Plan(new Brief(lines, players, Invented.rules()), segments);
    WrittenScore written = TwoParts.write(before, plan, treatment);
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
    return MusicXmlReader.read(written.bytes());
  }

  @Test
  void the_ties_of_the_tones_that_stay_stay() throws Exception {
    String on = tied("start") + notations("<tied type=\"start\"/>");
    String from = tied("stop") + notations("<tied type=\"stop\"/>");
    Document before =
        piano(ATTRIBUTES + rest(36) + triad(12, "", on, on), triad(12, "", from, from) + rest(36));
    Document after =
        after(before, "1-2", Optional.of(new ToneChoice.Bottom()), SourceTreatment.REMOVE);
    assertEquals(List.of("3 [64, 67] 2"), TwoParts.strokes(after, "P1"));
  }

  @Test
  void the_ties_of_the_tone_that_goes_go_with_it() throws Exception {
    String on = tied("start") + notations("<tied type=\"start\"/>");
    String from = tied("stop") + notations("<tied type=\"stop\"/>");
    Document before =
        piano(ATTRIBUTES + rest(36) + triad(12, on, "", ""), note("C", 4, 12, from) + rest(36));
    Document after =
        after(before, "1", Optional.of(new ToneChoice.Bottom()), SourceTreatment.REMOVE);
    assertEquals(List.of("3 [64, 67] 1"), TwoParts.strokes(after, "P1"));
  }

  @Test
  void slurs_over_the_edges_are_taken_away_at_both_ends() throws Exception {
    String quarters = note("B", 4, 12, "");
    Document into =
        piano(
            ATTRIBUTES + quarters.repeat(3) + note("A", 4, 12, slur("start")),
            note("B", 4, 12, slur("stop")) + quarters.repeat(2) + note("A", 4, 12, slur("start")),
            note("B", 4, 12, slur("stop")) + quarters.repeat(3));
    Document after = after(into, "2", Optional.empty(), SourceTreatment.REMOVE);
    assertEquals(0, count(pianoText(after), "<slur"));
    assertEquals(8, TwoParts.strokes(after, "P1").size());
  }

  @Test
  void a_slur_whose_first_note_goes_begins_on_the_next_only_if_it_stays_whole() throws Exception {
    Document before =
        piano(
            ATTRIBUTES + note("B", 4, 12, "").repeat(3) + note("A", 4, 12, slur("start")),
            note("B", 4, 12, "") + note("C", 5, 12, slur("stop")) + rest(24));
    Document after = after(before, "1", Optional.empty(), SourceTreatment.REMOVE);
    assertEquals(0, count(pianoText(after), "<slur"));
  }

  @Test
  void a_bar_of_tuplets_that_go_becomes_one_rest() throws Exception {
    String three =
        "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>";
    String type = "<type>eighth</type>" + three;
    String triplet =
        note("A", 4, 4, type + notations("<tuplet type=\"start\" number=\"1\"/>"))
            + note("B", 4, 4, type)
            + note("C", 5, 4, type + notations("<tuplet type=\"stop\" number=\"1\"/>"));
    Document before = piano(ATTRIBUTES + triplet.repeat(4));
    Document after = after(before, "1", Optional.empty(), SourceTreatment.REMOVE);
    assertEquals(0, count(pianoText(after), "<tuplet "));
    assertEquals(1, count(pianoText(after), "<rest measure"));
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, "P2"));
  }

  @Test
  void a_bar_with_a_tremolo_that_goes_becomes_one_rest() throws Exception {
    String slashes = notations("<ornaments><tremolo type=\"single\">2</tremolo></ornaments>");
    Document before =
        piano(ATTRIBUTES + note("A", 4, 24, "<type>half</type>" + slashes) + rest(24));
    Document after = after(before, "1", Optional.empty(), SourceTreatment.REMOVE);
    assertEquals(List.of(), TwoParts.strokes(after, "P1"));
    assertEquals(8, TwoParts.strokes(after, "P2").size());
    assertEquals(1, count(pianoText(after), "<rest measure"));
  }

  /** The piano keeps strokes 0 to {@code last}, the flute takes over with that one. */
  private static Document shared(Document before, int last, SourceTreatment treatment)
      throws Exception {
    Line line = ByHand.line(before.score(), "P1", "1");
    List<Player> players =
        List.of(
            ByHand.player("Piano", "piano", before.score()),
            ByHand.player("Flute", "flute", before.score()));
    Plan plan =
        new Plan(
            new Brief(line, players, Invented.rules()),
            List.of(new Segment(0, 0, 0, last), new Segment(1, 0, last, line.count() - 1)));
    WrittenScore written = TwoParts.write(before, plan, treatment);
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
    Document after = MusicXmlReader.read(written.bytes());
    balanced(pianoText(after));
    assertEquals(1, count(pianoText(after), ">to Flute</words>"));
    assertEquals(1, count(after.origin().text(), ">from Piano</words>"), after.origin().text());
    return after;
  }

  @Test
  void a_player_who_is_the_source_keeps_its_own_notes() throws Exception {
    Document before = piano(ATTRIBUTES + TwoParts.SIXTEENTHS);
    for (SourceTreatment treatment : SourceTreatment.values()) {
      Document after = shared(before, 8, treatment);
      assertEquals(9, TwoParts.strokes(after, "P1").size(), treatment.name());
      assertEquals(8, TwoParts.strokes(after, "P2").size(), treatment.name());
    }
  }

  @Test
  void beams_end_where_the_notes_end() throws Exception {
    String type = "<type>16th</type>";
    String beamed =
        note("A", 4, 3, type + beams("begin"))
            + note("A", 4, 3, type + beams("continue"))
            + note("A", 4, 3, type + beams("continue"))
            + note("A", 4, 3, type + beams("end"));
    Document before = piano(ATTRIBUTES + beamed.repeat(4));
    for (int last = 4; last < 8; last++) {
      Document after = shared(before, last, SourceTreatment.REMOVE);
      assertEquals(last + 1, TwoParts.strokes(after, "P1").size());
    }
  }

  private static String beams(String value) {
    return "<beam number=\"1\">" + value + "</beam><beam number=\"2\">" + value + "</beam>";
  }
}
