package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.Xml;
import stafette.musicxml.share.Background;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;

/**
 * How each pattern looks on paper: round brackets are beams, square ones tuplets, an apostrophe is
 * a dot above, a tilde a slur that begins or ends.
 */
class ThinnedNotationTest {
  private static final Pattern NOTE = Pattern.compile("<note[ >].*?</note>", Pattern.DOTALL);
  private static final Pattern DIVISIONS = Pattern.compile("<divisions>12<");
  private static final Pattern TUPLET_STARTS = Pattern.compile("<tuplet[^>]*\"start\"");
  private static final Pattern TUPLET_STOPS = Pattern.compile("<tuplet[^>]*\"stop\"");
  private static final String TRIPLET =
      "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>";
  private static final String SEXTUPLET = TRIPLET.replace(">3<", ">6<").replace(">2<", ">4<");

  private static String simple(String first, String rest) {
    return attributes(4, 4) + first + rest;
  }

  private static String attributes(int beats, int type) {
    return "<attributes><divisions>12</divisions><time><beats>"
        + beats
        + "</beats><beat-type>"
        + type
        + "</beat-type></time></attributes>";
  }

  private static String notes(String step, int count, int duration, String more) {
    return Xml.note(step, 4, duration, more).repeat(count);
  }

  private static final String TRIPLETS = simple(notes("A", 12, 4, TRIPLET), "");
  private static final String SIXTEENTHS = simple(notes("A", 16, 3, ""), "");
  private static final String SEXTUPLETS = simple(notes("A", 24, 2, SEXTUPLET), "");
  private static final String EIGHTHS_OF_6_8 = attributes(6, 8) + notes("A", 6, 6, "");
  private static final String SIXTEENTHS_OF_6_8 = attributes(6, 8) + notes("A", 12, 3, "");

  @Test
  void without_the_middle_a_triplet_has_its_rest() throws Exception {
    assertEquals(
        "[A4 eighth r eighth A4 eighth] ".repeat(4).strip(),
        written(TRIPLETS, Thinning.WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET, true));
    assertEquals(
        "A4 eighth r eighth A4 eighth A4 eighth r eighth A4 eighth",
        written(EIGHTHS_OF_6_8, Thinning.WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET, true));
  }

  @Test
  void two_for_three_is_a_rhythm_of_its_own() throws Exception {
    assertEquals(
        "(A4 eighth A4 eighth) ".repeat(4).strip(),
        written(TRIPLETS, Thinning.TWO_FOR_THREE, true));
    assertEquals(
        "(A4 16th A4 16th A4 16th A4 16th) ".repeat(4).strip(),
        written(SEXTUPLETS, Thinning.TWO_FOR_THREE, true));
    assertEquals(
        "(A4 eighth. A4 eighth.) ".repeat(2).strip(),
        written(EIGHTHS_OF_6_8, Thinning.TWO_FOR_THREE, true));
  }

  @Test
  void nine_to_a_beat_become_a_sextuplet() throws Exception {
    String nines = TRIPLET.replace(">3<", ">9<").replace(">2<", ">8<");
    String bar =
        DIVISIONS.matcher(simple(notes("A", 36, 1, nines), "")).replaceAll("<divisions>9<");
    assertEquals(
        "[(A4 16th A4 16th A4 16th A4 16th A4 16th A4 16th)] ".repeat(4).strip(),
        written(bar, Thinning.TWO_FOR_THREE, true));
  }

  @Test
  void half_sounds_on_with_a_dot_or_rests_in_between() throws Exception {
    assertEquals(
        "(A4 eighth' A4 eighth') ".repeat(4).strip(), written(SIXTEENTHS, Thinning.HALF, true));
    assertEquals(
        "A4 16th r 16th A4 16th r 16th ".repeat(4).strip(),
        written(SIXTEENTHS, Thinning.HALF, false));
    assertEquals(
        "[(A4 eighth' A4 eighth' A4 eighth')] ".repeat(4).strip(),
        written(SEXTUPLETS, Thinning.HALF, true));
    assertEquals(
        "(A4 eighth' A4 eighth' A4 eighth') ".repeat(2).strip(),
        written(SIXTEENTHS_OF_6_8, Thinning.HALF, true));
  }

  @Test
  void beats_are_notes_of_a_beat_or_short_ones_with_rests() throws Exception {
    assertEquals("A4 quarter' ".repeat(4).strip(), written(TRIPLETS, Thinning.BEATS, true));
    assertEquals(
        "[A4 eighth r eighth r eighth] ".repeat(4).strip(),
        written(TRIPLETS, Thinning.BEATS, false));
    assertEquals(
        "A4 16th r 16th r eighth ".repeat(4).strip(), written(SIXTEENTHS, Thinning.BEATS, false));
    assertEquals("A4 quarter.' A4 quarter.'", written(SIXTEENTHS_OF_6_8, Thinning.BEATS, true));
  }

  @Test
  void a_new_harmony_within_a_beat_is_kept_and_the_note_before_lasts_up_to_it() throws Exception {
    String bar = simple(notes("A", 10, 3, ""), notes("B", 6, 3, ""));
    assertEquals(
        "A4 quarter' A4 quarter' (A4 eighth' B4 eighth') B4 quarter'",
        written(bar, Thinning.BEATS, true));
    String odd = simple(notes("A", 9, 3, ""), notes("B", 7, 3, ""));
    assertEquals(
        "(A4 eighth' A4 eighth') (A4 eighth' A4 eighth') (A4 16th B4 eighth' B4 16th)"
            + " (B4 eighth' B4 eighth')",
        written(odd, Thinning.HALF, true));
    String triplet =
        simple(notes("A", 9, 4, TRIPLET) + notes("A", 1, 4, TRIPLET), notes("B", 2, 4, TRIPLET));
    assertEquals(
        "[A4 eighth r eighth A4 eighth] ".repeat(3) + "[(A4 eighth B4 eighth) r eighth]",
        written(triplet, Thinning.WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET, true));
  }

  @Test
  void in_figuration_every_note_is_new_and_none_is_a_new_harmony() throws Exception {
    StringBuilder bar = new StringBuilder(attributes(4, 4));
    for (String step : List.of("A", "B", "C", "D")) {
      bar.append(notes(step, 1, 3, ""))
          .append(notes("E", 1, 3, ""))
          .append(notes("F", 1, 3, ""))
          .append(notes("G", 1, 3, ""));
    }
    assertEquals(
        "A4 quarter' B4 quarter' C4 quarter' D4 quarter'",
        written(bar.toString(), Thinning.BEATS, true));
  }

  @Test
  void where_the_line_rests_a_note_does_not_sound_on() throws Exception {
    String bar = simple(notes("A", 2, 3, "") + Xml.rest(6), notes("A", 12, 3, ""));
    assertEquals(
        "A4 16th r 16th r eighth A4 quarter' A4 quarter' A4 quarter'",
        written(bar, Thinning.BEATS, true));
  }

  @Test
  void marks_stay_and_say_enough_where_they_are_about_length() throws Exception {
    String tenuto = "<notations><articulations><tenuto/></articulations></notations>";
    String dots = tenuto.replace("tenuto", "staccato");
    assertEquals(
        "A4 quarter ".repeat(4).strip(),
        written(simple(notes("A", 16, 3, tenuto), ""), Thinning.BEATS, true));
    assertEquals(
        "A4 quarter' ".repeat(4).strip(),
        written(simple(notes("A", 16, 3, dots), ""), Thinning.BEATS, true));
  }

  @Test
  void a_slur_stays_over_notes_that_sound_on_and_goes_where_silence_parts_them() throws Exception {
    String from = "<notations><slur type=\"start\" number=\"1\"/></notations>";
    String to = from.replace("start", "stop");
    String slurred =
        notes("A", 1, 3, from) + notes("B", 1, 3, "") + notes("C", 1, 3, "") + notes("D", 1, 3, to);
    String bar = simple(slurred.repeat(4), "");
    assertEquals("(A4 eighth~ C4 eighth~) ".repeat(4).strip(), written(bar, Thinning.HALF, true));
    assertEquals(
        "A4 16th r 16th C4 16th r 16th ".repeat(4).strip(), written(bar, Thinning.HALF, false));
  }

  @Test
  void each_player_of_a_hocket_has_rests_where_the_other_plays() throws Exception {
    Document document = TwoParts.read(TwoParts.of(List.of(TRIPLETS), List.of(attributes(4, 4))));
    Line line = ByHand.line(document.score(), "P1", "1");
    Player one = ByHand.player("Piccolo 1", "flute", document.score());
    Player two = ByHand.player("Piccolo 2", "flute", document.score());
    Brief brief = new Brief(line, List.of(one, two), Invented.rules().with(Hocket.STROKE));
    Plan plan =
        new Plan(
            brief,
            List.of(
                new Segment(0, 0, 0, 0, 11, stafette.plan.Pattern.ODD),
                new Segment(0, 1, 0, 0, 11, stafette.plan.Pattern.EVEN)));
    String text = new String(TwoParts.write(document, plan).bytes(), StandardCharsets.UTF_8);
    String first = "[A4 eighth r eighth A4 eighth] [r eighth A4 eighth r eighth] ";
    String second = "[r eighth A4 eighth r eighth] [A4 eighth r eighth A4 eighth] ";
    assertEquals(first.repeat(2).strip(), compact(text, "P3"));
    assertEquals(second.repeat(2).strip(), compact(text, "P4"));
  }

  private static String written(String bar, Thinning pattern, boolean sounding) throws Exception {
    Document document = TwoParts.read(TwoParts.of(List.of(bar), List.of(attributes(4, 4))));
    Line line = ByHand.line(document.score(), "P1", "1");
    List<ThinnedStroke> kept = ThinnedStroke.of(line, 0, line.count() - 1, pattern, sounding);
    Line left = ThinnedStroke.line(line, kept);
    Player player = ByHand.player("Piccolo", "flute", document.score());
    Plan plan =
        new Plan(
            new Brief(left, List.of(player), Invented.rules()),
            List.of(new Segment(0, 0, 0, left.count() - 1)));
    WrittenScore written =
        ScoreWriter.write(
            document,
            Optional.empty(),
            List.of(new Background(plan, ThinnedStroke.everything(line))),
            WrittenAs.plain(SourceTreatment.KEEP),
            own -> Optional.empty());
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
    return compact(new String(written.bytes(), StandardCharsets.UTF_8), "P3");
  }

  private static String compact(String text, String part) {
    String own = text.substring(text.indexOf("<part id=\"" + part + "\""));
    Matcher note = NOTE.matcher(own.substring(0, own.indexOf("</part>")));
    List<String> words = new ArrayList<>();
    while (note.find()) {
      words.add(word(note.group()));
    }
    return String.join(" ", words);
  }

  private static String word(String note) {
    String pitch = note.contains("<rest") ? "r" : inner(note, "step") + inner(note, "octave");
    boolean beam = note.contains("<beam number=\"1\">begin");
    boolean beamEnds = note.contains("<beam number=\"1\">end");
    return (TUPLET_STARTS.matcher(note).find() ? "[" : "")
        + (beam ? "(" : "")
        + pitch
        + " "
        + inner(note, "type")
        + (note.contains("<dot") ? "." : "")
        + (note.contains("<staccato") ? "'" : "")
        + (note.contains("<slur") ? "~" : "")
        + (beamEnds ? ")" : "")
        + (TUPLET_STOPS.matcher(note).find() ? "]" : "");
  }

  private static String inner(String note, String element) {
    Matcher found = Pattern.compile("<" + element + ">([^<]*)<").matcher(note);
    return found.find() ? found.group(1) : "";
  }
}
