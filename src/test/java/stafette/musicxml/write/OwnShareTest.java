package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;

/** Where the line's own player takes part, its part becomes its share of the relay. */
class OwnShareTest {
  private static final String SLASHES =
      "<notations><ornaments><tremolo type=\"single\">2</tremolo></ornaments></notations>";

  private static Document piano(String... measures) throws UnreadableScore {
    List<String> flute = new ArrayList<>();
    for (int i = 0; i < measures.length; i++) {
      flute.add((i == 0 ? ATTRIBUTES : "") + rest(48));
    }
    return TwoParts.read(TwoParts.of(List.of(measures), flute));
  }

  /** Strokes for the piano, by first and last; the flute has what is left, and each landing. */
  private static Plan plan(Document score, Optional<ToneChoice> tone, int... piano)
      throws Exception {
    int bars = score.score().bars().count();
    Line line = ByHand.line(score.score(), "P1", "#1-#" + bars, tone);
    List<Segment> segments = new ArrayList<>();
    int next = 0;
    for (int i = 0; i < piano.length; i += 2) {
      if (piano[i] > 0) {
        segments.add(new Segment(1, 0, next, piano[i]));
      }
      segments.add(new Segment(0, 0, piano[i], piano[i + 1]));
      next = piano[i + 1];
    }
    if (next < line.count() - 1) {
      segments.add(new Segment(1, 0, next, line.count() - 1));
    }
    return new Plan(new Brief(line, players(score), Invented.rules()), segments);
  }

  private static List<Player> players(Document score) {
    return List.of(
        ByHand.player("Piano", "piano", score.score()),
        ByHand.player("Flute", "flute", score.score()));
  }

  private static Document written(Document before, Plan plan, SourceTreatment treatment)
      throws Exception {
    WrittenScore written = TwoParts.write(before, plan, treatment);
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()), before.origin().text());
    Document after = MusicXmlReader.read(written.bytes());
    RandomPlansTest.barsAddUp(after);
    assertEquals(before.score().bars().get(0), after.score().bars().get(0));
    assertEquals(List.of(), TwoParts.write(after, again(plan, after), treatment).replacements());
    return after;
  }

  /** The same plan for the score that was written. */
  private static Plan again(Plan plan, Document after) {
    return new Plan(
        new Brief(plan.brief().lines(), players(after), plan.brief().rules()), plan.segments());
  }

  private static String pianoText(Document document) {
    return document.origin().parts().get(0).whole().in(document.origin().text());
  }

  private static int count(String text, String what) {
    return (text.length() - text.replace(what, "").length()) / what.length();
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void what_others_play_sounds_no_more_in_the_lines_own_part(SourceTreatment treatment)
      throws Exception {
    Document before = piano(ATTRIBUTES + TwoParts.SIXTEENTHS, TwoParts.SIXTEENTHS);
    Document after = written(before, plan(before, Optional.empty(), 0, 4, 20, 31), treatment);
    List<String> all = TwoParts.strokes(before, "P1");
    List<String> own = new ArrayList<>(all.subList(0, 0));
    ByHand.line(before.score(), "P1", "1-2").strokes().stream()
        .map(TwoParts::heard)
        .toList()
        .forEach(own::add);
    List<String> share = new ArrayList<>(own.subList(0, 5));
    share.addAll(own.subList(20, 32));
    assertEquals(share.stream().sorted().toList(), TwoParts.strokes(after, "P1"));
    List<String> others = new ArrayList<>(own.subList(4, 20));
    others.add("5 [69] 1/2");
    assertEquals(others.stream().sorted().toList(), TwoParts.strokes(after, "P2"));
  }

  @Test
  void it_is_told_bar_by_bar() throws Exception {
    Document before = piano(ATTRIBUTES + TwoParts.SIXTEENTHS, TwoParts.SIXTEENTHS);
    Plan plan = plan(before, Optional.empty(), 0, 4, 20, 31);
    assertEquals(
        List.of(
            "Flute: plays in bars 1-2",
            "Piano: plays in bars 1-2, rests for the others' notes in bars 1-2"),
        said(TwoParts.write(before, plan, SourceTreatment.KEEP)));
    assertEquals(
        "Piano: plays in bars 1-2, has cues for the others' notes in bars 1-2",
        said(TwoParts.write(before, plan, SourceTreatment.CUE)).get(1));
    assertEquals(
        "Piano: plays in bar 1, rests for the others' notes in bars 1-2",
        said(TwoParts.write(before, plan(before, Optional.empty(), 0, 8), SourceTreatment.KEEP))
            .get(1));
  }

  private static List<String> said(WrittenScore written) {
    return written.changes().stream().map(Object::toString).toList();
  }

  @Test
  void a_player_who_is_asked_and_gets_nothing_rests() throws Exception {
    Document before = piano(ATTRIBUTES + TwoParts.SIXTEENTHS);
    Plan plan = plan(before, Optional.empty());
    assertEquals(List.of(), TwoParts.strokes(written(before, plan, SourceTreatment.KEEP), "P1"));
    assertEquals(
        "Piano: plays nothing of the line, rests in bar 1",
        said(TwoParts.write(before, plan, SourceTreatment.KEEP)).get(1));
    assertEquals(
        "Piano: plays nothing of the line, has cues in bar 1",
        said(TwoParts.write(before, plan, SourceTreatment.CUE)).get(1));
  }

  @Test
  void a_player_who_has_all_of_it_changes_nothing() throws Exception {
    Document before = piano(ATTRIBUTES + TwoParts.SIXTEENTHS);
    Plan plan = plan(before, Optional.empty(), 0, 15);
    for (SourceTreatment treatment : SourceTreatment.values()) {
      assertEquals(List.of(), TwoParts.write(before, plan, treatment).replacements());
    }
  }

  @Test
  void whoever_is_not_asked_keeps_the_line() throws Exception {
    Document before = piano(ATTRIBUTES + TwoParts.SIXTEENTHS);
    Document after =
        MusicXmlReader.read(
            TwoParts.write(before, TwoParts.plan(before, 0, 15), SourceTreatment.KEEP).bytes());
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, "P1"));
  }

  @Test
  void a_bar_of_others_becomes_one_rest_and_beats_become_rests_of_beats() throws Exception {
    Document before =
        piano(ATTRIBUTES + TwoParts.SIXTEENTHS, TwoParts.SIXTEENTHS, TwoParts.SIXTEENTHS);
    Document after =
        written(before, plan(before, Optional.empty(), 0, 4, 40, 47), SourceTreatment.KEEP);
    assertEquals(1, count(pianoText(after), "<rest measure=\"yes\"/>"));
    // after the landing on the second beat three sixteenths and a half bar, before beat three a
    // half
    assertEquals(1 + 3 + 1, count(pianoText(after), "<rest"), pianoText(after));
  }

  @Test
  void words_in_a_bar_that_becomes_one_rest_stay_meant_for_their_place() throws Exception {
    String dolce = "<direction><direction-type><words>dolce</words></direction-type></direction>";
    String half = note("A", 4, 3, "").repeat(8);
    Document before = piano(ATTRIBUTES + half + dolce + half, TwoParts.SIXTEENTHS);
    Document after = written(before, plan(before, Optional.empty(), 16, 31), SourceTreatment.KEEP);
    assertEquals(1, count(pianoText(after), "<rest"), pianoText(after));
    assertEquals(
        before.score().parts().get(0).marks().words(),
        after.score().parts().get(0).marks().words().stream()
            .filter(words -> words.text().equals("dolce"))
            .toList());
  }

  @Test
  void a_tuplet_with_a_note_that_stays_keeps_its_rests_and_bracket() throws Exception {
    String three =
        "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes>"
            + "</time-modification>";
    String type = "<type>eighth</type>" + three;
    String triplet =
        note("A", 4, 4, type + "<notations><tuplet type=\"start\" number=\"1\"/></notations>")
            + note("B", 4, 4, type)
            + note("C", 5, 4, type + "<notations><tuplet type=\"stop\" number=\"1\"/></notations>");
    Document before = piano(ATTRIBUTES + triplet.repeat(4));
    Document after = written(before, plan(before, Optional.empty(), 0, 3), SourceTreatment.KEEP);
    assertEquals(2, count(pianoText(after), "<tuplet type=\"start\""), pianoText(after));
    assertEquals(2, count(pianoText(after), "<tuplet type=\"stop\""), pianoText(after));
    assertEquals(2 + 1, count(pianoText(after), "<rest"), pianoText(after));
  }

  @Test
  void notes_that_stay_side_by_side_stay_slurred() throws Exception {
    String start = "<notations><slur type=\"start\" number=\"1\"/></notations>";
    String stop = "<notations><slur type=\"stop\" number=\"1\"/></notations>";
    String text =
        note("A", 4, 3, "")
            + note("A", 4, 3, start)
            + note("B", 4, 3, "").repeat(12)
            + note("C", 5, 3, stop)
            + note("A", 4, 3, "");
    Document before = piano(ATTRIBUTES + text);
    List<Boolean> slurred = slurred(before);
    List<Boolean> first =
        slurred(written(before, plan(before, Optional.empty(), 0, 8), SourceTreatment.KEEP));
    assertEquals(slurred.subList(0, 9), first);
    List<Boolean> edges =
        slurred(written(before, plan(before, Optional.empty(), 0, 4, 8, 15), SourceTreatment.KEEP));
    List<Boolean> expected = new ArrayList<>(slurred.subList(0, 5));
    expected.add(false);
    expected.addAll(slurred.subList(9, 16));
    assertEquals(expected, edges);
  }

  private static List<Boolean> slurred(Document document) {
    return document.score().part("P1").orElseThrow().voices().get(0).strokes().stream()
        .map(Stroke::slurred)
        .toList();
  }

  @Test
  void a_note_shows_the_accidental_that_one_before_it_showed() throws Exception {
    String sharp =
        "<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch>"
            + "<duration>3</duration></note>";
    String shown = sharp.replace("</note>", "<accidental>sharp</accidental></note>");
    Document before = piano(ATTRIBUTES + shown + sharp.repeat(15));
    String text =
        pianoText(written(before, plan(before, Optional.empty(), 8, 15), SourceTreatment.KEEP));
    assertEquals(1, count(text, "<accidental>sharp</accidental>"), text);
  }

  @Test
  void of_a_chord_the_tone_that_stays_shows_its_accidental() throws Exception {
    String chord =
        note("C", 4, 12, "")
            + "<note><chord/><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch>"
            + "<duration>12</duration><accidental>sharp</accidental></note>";
    Document before = piano(ATTRIBUTES + chord.repeat(4));
    Document after =
        written(
            before, plan(before, Optional.of(new ToneChoice.Bottom()), 2, 3), SourceTreatment.KEEP);
    assertEquals(
        List.of("0 [66] 1", "1 [66] 1", "2 [60, 66] 1", "3 [60, 66] 1"),
        TwoParts.strokes(after, "P1"));
    assertEquals(4, count(pianoText(after), "<accidental>sharp</accidental>"), pianoText(after));
  }

  @Test
  void a_tone_held_over_a_new_one_goes_with_its_beginning() throws Exception {
    String on = "<tie type=\"start\"/>";
    String from = "<tie type=\"stop\"/>";
    String held = note("C", 4, 12, on) + note("E", 4, 12, "").replace("<note>", "<note><chord/>");
    String over = note("C", 4, 12, from) + note("F", 4, 12, "").replace("<note>", "<note><chord/>");
    Document before = piano(ATTRIBUTES + held + over + note("G", 4, 12, "").repeat(2));
    Document after =
        written(
            before, plan(before, Optional.of(new ToneChoice.All()), 2, 3), SourceTreatment.KEEP);
    assertEquals(List.of("2 [67] 1", "3 [67] 1"), TwoParts.strokes(after, "P1"));
  }

  @Test
  void in_a_hocket_every_other_note_stays() throws Exception {
    Document before = piano(ATTRIBUTES + TwoParts.SIXTEENTHS);
    Line line = ByHand.line(before.score(), "P1", "1");
    Rules rules = Invented.rules();
    Rules hocket = rules.with(Hocket.STROKE);
    Plan plan =
        new Plan(
            new Brief(line, players(before), hocket),
            List.of(
                new Segment(0, 0, 0, 0, 15, Pattern.ODD),
                new Segment(0, 1, 0, 0, 15, Pattern.EVEN)));
    Document after = written(before, plan, SourceTreatment.KEEP);
    assertEquals(8, TwoParts.strokes(after, "P1").size());
    assertEquals(
        TwoParts.strokes(before, "P1"),
        java.util.stream.Stream.concat(
                TwoParts.strokes(after, "P1").stream(), TwoParts.strokes(after, "P2").stream())
            .sorted()
            .toList());
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void a_tremolo_of_which_its_own_player_keeps_a_part_is_written_out(SourceTreatment treatment)
      throws Exception {
    Document before =
        piano(
            ATTRIBUTES
                + note("A", 4, 24, "<type>half</type>" + SLASHES)
                + note("B", 4, 24, "<type>half</type>" + SLASHES));
    Plan plan = plan(before, Optional.empty(), 3, 11);
    Document after = written(before, plan, treatment);
    assertEquals(share(plan), TwoParts.strokes(after, "P1"), pianoText(after));
    assertEquals(1, count(pianoText(after), ">from Flute</words>"), pianoText(after));
    assertEquals(1, count(pianoText(after), ">to Flute</words>"), pianoText(after));
    if (treatment == SourceTreatment.CUE) {
      assertEquals(strokes(before), strokes(withCues(after)));
    }
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void a_tremolo_between_two_notes_is_taken_apart_as_a_whole(SourceTreatment treatment)
      throws Exception {
    String two =
        "<type>half</type><time-modification><actual-notes>2</actual-notes>"
            + "<normal-notes>1</normal-notes></time-modification><notations><ornaments>"
            + "<tremolo type=\"%s\">2</tremolo></ornaments></notations>";
    Document before =
        piano(
            ATTRIBUTES
                + note("A", 4, 12, String.format(two, "start"))
                + note("C", 5, 12, String.format(two, "stop"))
                + note("B", 4, 3, "").repeat(8));
    Plan plan = plan(before, Optional.empty(), 5, 15);
    Document after = written(before, plan, treatment);
    assertEquals(share(plan), TwoParts.strokes(after, "P1"), pianoText(after));
    if (treatment == SourceTreatment.CUE) {
      assertEquals(strokes(before), strokes(withCues(after)));
    }
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void slurs_within_a_tremolo_of_a_wind_keep_it_whole_only_where_others_notes_are_cues(
      SourceTreatment treatment) throws Exception {
    String two =
        "<type>half</type><time-modification><actual-notes>2</actual-notes>"
            + "<normal-notes>1</normal-notes></time-modification><notations><ornaments>"
            + "<tremolo type=\"%s\">2</tremolo></ornaments></notations>";
    String wind =
        "</part-name><score-instrument id=\"P1-I1\"><instrument-name>Oboe</instrument-name>"
            + "<instrument-sound>wind.reed.oboe</instrument-sound></score-instrument>";
    Document before =
        TwoParts.read(
            piano(
                    ATTRIBUTES
                        + note("A", 4, 12, String.format(two, "start"))
                        + note("C", 5, 12, String.format(two, "stop"))
                        + note("B", 4, 3, "").repeat(8))
                .origin()
                .text()
                .replaceFirst("</part-name>", wind));
    Plan plan = plan(before, Optional.empty(), 5, 15);
    assertTrue(plan.line().stroke(1).slurred());
    WrittenScore written = TwoParts.write(before, plan, treatment);
    boolean whole =
        written.changes().stream().anyMatch(change -> change.toString().contains("stays whole"));
    assertEquals(treatment == SourceTreatment.CUE, whole, written.changes().toString());
    if (!whole) {
      Document after = written(before, plan, treatment);
      assertEquals(share(plan), TwoParts.strokes(after, "P1"), pianoText(after));
    }
  }

  @Test
  void a_tremolo_with_tones_beside_the_line_stays_and_that_is_said() throws Exception {
    String chord =
        note("A", 4, 48, "<type>whole</type>" + SLASHES)
            + note("C", 5, 48, "<type>whole</type>").replace("<note>", "<note><chord/>");
    Document before = piano(ATTRIBUTES + chord);
    Plan plan = plan(before, Optional.of(new ToneChoice.FromTop(1)), 0, 8);
    WrittenScore written = TwoParts.write(before, plan, SourceTreatment.KEEP);
    assertEquals(
        List.of(
            "Flute: plays in bar 1",
            "Piano: plays in bar 1, rests for the others' notes in bar 1",
            "Piano, bar 1: the tremolo stays whole, though others play some of it; take it apart by"
                + " hand"),
        said(written));
    assertEquals(
        TwoParts.strokes(before, "P1"),
        TwoParts.strokes(MusicXmlReader.read(written.bytes()), "P1"));
  }

  private static List<String> share(Plan plan) {
    return plan.segmentsOf(0).stream()
        .flatMap(s -> plan.line().strokes().subList(s.first(), s.last() + 1).stream())
        .map(TwoParts::heard)
        .sorted()
        .toList();
  }

  private static Document withCues(Document document) throws UnreadableScore {
    return MusicXmlReader.read(document.container().bytes(), Tremolo.AS_WRITTEN, true);
  }

  private static List<Stroke> strokes(Document document) {
    return document.score().part("P1").orElseThrow().voices().stream()
        .flatMap(voice -> voice.strokes().stream())
        .sorted(Comparator.comparing(Stroke::onset))
        .toList();
  }

  @Test
  void a_cue_that_its_own_player_takes_back_sounds_again() throws Exception {
    String on = "<tie type=\"start\"/><notations><tied type=\"start\"/></notations>";
    String from = "<tie type=\"stop\"/><notations><tied type=\"stop\"/></notations>";
    Document before =
        piano(
            ATTRIBUTES + note("A", 4, 3, "").repeat(15) + note("A", 4, 3, on),
            note("A", 4, 3, from) + note("A", 4, 3, "").repeat(15));
    Document cued = written(before, plan(before, Optional.empty(), 0, 4), SourceTreatment.CUE);
    Plan other = plan(withCues(cued), Optional.empty(), 0, 20);
    Document after = written(cued, other, SourceTreatment.CUE);
    assertEquals(share(other), TwoParts.strokes(after, "P1"), pianoText(after));
    assertEquals(strokes(before), strokes(withCues(after)));
    assertFalse(said(TwoParts.write(cued, other, SourceTreatment.CUE)).isEmpty());
  }
}
