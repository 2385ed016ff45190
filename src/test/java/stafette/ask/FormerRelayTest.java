package stafette.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.write.ScoreWriter;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.Reading;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.score.TremoloTrial;
import stafette.words.Refusal;
import stafette.work.OpenLine;

/** A line that was relayed before is seen as it was, or it is said that it is not. */
class FormerRelayTest {
  private static final Path FILE = Path.of("bells.musicxml");
  private static final String ATTRIBUTES =
      "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
          + "</attributes>";

  private static String note(String step, int duration, int voice) {
    return "<note><pitch><step>"
        + step
        + "</step><octave>5</octave></pitch><duration>"
        + duration
        + "</duration><voice>"
        + voice
        + "</voice></note>";
  }

  private static String notes(String step, int count, int duration, int voice) {
    return String.join("", Collections.nCopies(count, note(step, duration, voice)));
  }

  private static String back() {
    return "<backup><duration>16</duration></backup>";
  }

  /** A score of a Piano and a Flute. */
  private static OpenScore score(List<String> piano, List<String> flute) throws UnreadableScore {
    String text =
        "<score-partwise version=\"4.0\">\n<part-list>"
            + "<score-part id=\"P1\"><part-name>Piano</part-name></score-part>"
            + "<score-part id=\"P2\"><part-name>Flute</part-name></score-part></part-list>\n"
            + part("P1", piano)
            + part("P2", flute)
            + "</score-partwise>\n";
    return open(text.getBytes(StandardCharsets.UTF_8));
  }

  private static OpenScore open(byte[] bytes) throws UnreadableScore {
    return new OpenScore(
        FILE, MusicXmlReader.read(bytes), Tremolo.AS_WRITTEN, TremoloTrial.BY_SLASHES);
  }

  private static String part(String id, List<String> measures) {
    StringBuilder text = new StringBuilder("<part id=\"" + id + "\">\n");
    for (int i = 0; i < measures.size(); i++) {
      text.append("<measure number=\"" + (i + 1) + "\">" + (i == 0 ? ATTRIBUTES : ""));
      text.append(measures.get(i) + "</measure>\n");
    }
    return text.append("</part>\n").toString();
  }

  private static LineRequest request(String bars, Optional<ToneChoice> tone, boolean cues) {
    LineChoice choice =
        new LineChoice(
            "Piano", Optional.of(new BarChoice(bars)), OptionalInt.empty(), Optional.empty(), tone);
    return new LineRequest(FILE, choice, Optional.empty(), Tremolo.AS_WRITTEN, cues);
  }

  /**
   * The score with the line relayed: strokes of the piano by first and last, the flute the rest.
   */
  private static OpenScore relayed(
      OpenScore score, LineRequest asked, SourceTreatment treatment, int... piano)
      throws Exception {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    String players = piano.length == 0 ? "Flute" : "Piano, Flute";
    SplitRequest request = SplitRequest.usual(asked).with(PlayerWish.parse(players), List.of());
    OpenLine line = OpenLine.in(score, request, limits);
    int last = line.line().count() - 1;
    int flute = piano.length == 0 ? 0 : 1;
    List<Segment> segments =
        piano.length == 0
            ? List.of(new Segment(0, 0, 0, last))
            : List.of(new Segment(0, 0, piano[0], piano[1]), new Segment(flute, 0, piano[1], last));
    Plan plan = new Plan(line.brief(), segments);
    return open(
        ScoreWriter.write(score.document(), plan, treatment, player -> Optional.empty()).bytes());
  }

  private static List<String> said(OpenScore score, LineRequest request) throws Refusal {
    Line line = request.in(score).line();
    return LineRemarks.on(score, line, request).stream().map(Object::toString).toList();
  }

  @Test
  void a_line_of_which_its_own_player_kept_some_is_seen_whole_with_its_cues() throws Exception {
    OpenScore score = score(List.of(notes("A", 16, 1, 1), notes("B", 16, 1, 1)), List.of("", ""));
    LineRequest asked = request("1-2", Optional.empty(), true);
    OpenScore after = relayed(score, asked, SourceTreatment.CUE, 0, 8);
    assertEquals(asked.in(score).line().strokes(), asked.in(after).line().strokes());
    assertEquals(
        List.of(
            "bells.musicxml: Piano, staff 1, voice 1, bars 1-2: the line is read from the cue notes"
                + " that stand there"),
        said(after, asked));
    assertEquals(List.of(), said(score, asked));
  }

  @Test
  void a_line_that_was_cued_whole_is_seen_though_another_voice_sounds() throws Exception {
    OpenScore score =
        score(List.of(notes("A", 16, 1, 1) + back() + notes("C", 4, 4, 2)), List.of(""));
    LineRequest named =
        new LineRequest(
            FILE,
            new LineChoice(
                "Piano", Optional.empty(), OptionalInt.empty(), Optional.of("1"), Optional.empty()),
            Optional.empty(),
            Tremolo.AS_WRITTEN,
            true);
    OpenScore after = relayed(score, named, SourceTreatment.CUE);
    assertEquals(named.in(score).line().strokes(), named.in(after).line().strokes());
    LineRequest any = request("1", Optional.empty(), true);
    assertEquals(
        List.of(
            "bells.musicxml: Piano, staff 1, voice 2, bar 1: the cue notes that stand there are not"
                + " taken for the line, as no relay left them"),
        said(after, any));
  }

  @Test
  void a_line_that_was_cued_whole_is_told_though_another_staff_sounds() throws Exception {
    String low = notes("C", 4, 4, 5).replace("</note>", "<staff>2</staff></note>");
    OpenScore score = score(List.of(notes("A", 16, 1, 1) + back() + low), List.of(""));
    LineRequest any = request("1", Optional.empty(), true);
    assertEquals(16, any.in(score).line().count());
    OpenScore after = relayed(score, any, SourceTreatment.CUE);
    assertEquals(4, any.in(after).line().count());
    assertTrue(said(after, any).get(0).contains("not taken for the line"));
  }

  @Test
  void broken_octaves_that_were_read_as_their_upper_notes_are_read_so_again() throws Exception {
    String low = note("A", 1, 1).replace("<octave>5", "<octave>4");
    String octaves = String.join("", Collections.nCopies(8, note("A", 1, 1) + low));
    OpenScore score = score(List.of(octaves), List.of(""));
    LineRequest all = request("1", Optional.empty(), true);
    LineRequest asked = all.with(all.choice().with(Reading.UPPER));
    OpenScore after = relayed(score, asked, SourceTreatment.CUE);
    Line line = asked.in(after).line();
    assertEquals(asked.in(score).line().strokes(), line.strokes());
    assertEquals(Reading.UPPER, line.source().reading());
  }

  @Test
  void a_tone_of_chords_that_was_cued_is_the_line_again_and_not_the_next_one() throws Exception {
    String chord = note("C", 1, 1) + note("E", 1, 1).replace("<note>", "<note><chord/>");
    OpenScore score = score(List.of(String.join("", Collections.nCopies(16, chord))), List.of(""));
    LineRequest asked = request("1", Optional.of(new ToneChoice.FromTop(1)), true);
    OpenScore after = relayed(score, asked, SourceTreatment.CUE);
    assertEquals(
        asked.in(score).line().strokes().get(0).tones(),
        asked.in(after).line().strokes().get(0).tones());
    assertEquals(16, asked.in(after).line().count());
  }

  /** The flute is quoted before the piano enters. */
  @Test
  void cues_that_quote_another_part_are_not_taken_for_the_line_and_that_is_said() throws Exception {
    String quoted = notes("D", 16, 1, 1).replace("<note>", "<note><cue/>");
    OpenScore score =
        score(
            List.of(quoted, notes("A", 16, 1, 1)),
            List.of(notes("D", 16, 1, 1), notes("E", 4, 4, 1)));
    LineRequest asked = request("1-2", Optional.empty(), true);
    assertEquals(16, asked.in(score).line().count());
    assertTrue(said(score, asked).get(0).contains("not taken for the line"));
    assertEquals(List.of(), said(score, request("2", Optional.empty(), true)));
    assertEquals(List.of(), said(score, request("1-2", Optional.empty(), false)));
  }

  @Test
  void what_others_have_cover_stays_what_it_was() throws Exception {
    String quoted = notes("D", 16, 1, 1).replace("<note>", "<note><cue/>");
    OpenScore score =
        score(
            List.of(notes("A", 16, 1, 1), notes("B", 16, 1, 1)),
            List.of("<note><rest/><duration>16</duration></note>", ""));
    LineRequest asked = request("1-2", Optional.empty(), true);
    byte[] bytes = relayed(score, asked, SourceTreatment.CUE, 0, 8).document().container().bytes();
    String text = new String(bytes, StandardCharsets.UTF_8);
    int end = text.lastIndexOf("</measure>");
    OpenScore after =
        open(
            (text.substring(0, end)
                    + back()
                    + quoted.replace("<voice>1", "<voice>2")
                    + text.substring(end))
                .getBytes(StandardCharsets.UTF_8));
    Line before = asked.in(score).line();
    Line again = asked.in(after).line();
    for (int i = 0; i < before.count(); i++) {
      assertEquals(before.cover(i), again.cover(i));
    }
  }

  @Test
  void where_the_others_notes_are_gone_it_is_said_that_only_a_share_is_split() throws Exception {
    OpenScore score = score(List.of(notes("A", 16, 1, 1), notes("B", 16, 1, 1)), List.of("", ""));
    LineRequest asked = request("1-2", Optional.empty(), false);
    OpenScore after = relayed(score, asked, SourceTreatment.KEEP, 0, 8);
    assertEquals(
        List.of(
            "bells.musicxml: Piano, bar 1, beat 3: a relay was written here before (\"to Flute\"),"
                + " and only what Piano kept of the line is split now; all of the line is in the"
                + " score as it was before"),
        said(after, asked));
    assertEquals(List.of(), said(score, asked));
  }

  @Test
  void a_lock_on_a_note_that_is_gone_says_why() throws Exception {
    OpenScore score = score(List.of(notes("A", 16, 1, 1), notes("B", 16, 1, 1)), List.of("", ""));
    LineRequest asked = request("1-2", Optional.empty(), false);
    OpenScore after = relayed(score, asked, SourceTreatment.KEEP, 0, 8);
    SplitRequest request =
        SplitRequest.usual(asked)
            .with(PlayerWish.parse("Piano, Flute"), List.of())
            .with(Relaying.PLAIN.with(List.of(LockWish.parse("Flute: 2.1-2.2"))));
    Refusal refusal =
        assertThrows(
            Refusal.class, () -> OpenLine.in(after, request, LimitsInForce.load(Optional.empty())));
    assertTrue(
        String.valueOf(refusal.getMessage()).contains("a relay was written here before"),
        refusal.getMessage());
  }
}
