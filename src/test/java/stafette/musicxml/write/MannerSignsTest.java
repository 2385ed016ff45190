package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Attack;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Part;
import stafette.score.Stroke;

/**
 * Parts say how the line is played that is written into them, and how their own notes go on. The
 * line stands in a part called Viola; a player has some of it in a part of its own, or in a new
 * one.
 */
class MannerSignsTest {
  private static final Pattern WORDS = Pattern.compile("<words[^>]*>([^<]*)</words>");
  private static final String QUARTERS = note("A", 4, 12, "").repeat(4);
  private static final String OWN = note("C", 5, 48, "");

  private static String words(String text) {
    return "<direction><direction-type><words>" + text + "</words></direction-type></direction>";
  }

  private static Document score(List<String> line, List<String> own) throws Exception {
    List<String> first = new ArrayList<>(line);
    List<String> second = new ArrayList<>(own);
    first.set(0, ATTRIBUTES + first.get(0));
    second.set(0, ATTRIBUTES + second.get(0));
    return TwoParts.read(
        TwoParts.of(first, second)
            .replace("<part-name>Piano", "<part-name>Viola")
            .replace("<part-name>Flute", "<part-name>Own"));
  }

  /** The plan in which one player has strokes of the line: from, to, from, to … */
  private static Plan plan(
      Document document, Line line, String name, String instrument, int... at) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < at.length; i += 2) {
      segments.add(new Segment(0, 0, at[i], at[i + 1]));
    }
    return new Plan(
        new Brief(
            line, List.of(ByHand.player(name, instrument, document.score())), Invented.rules()),
        segments);
  }

  /** What was written, which must be the same if it is written once more. */
  private static Document written(Document before, String name, String instrument, int... at)
      throws Exception {
    Line line = ByHand.line(before.score(), "P1", "#1-#" + before.score().bars().count());
    WrittenScore written = TwoParts.write(before, plan(before, line, name, instrument, at));
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
    Document after = MusicXmlReader.read(written.bytes());
    Plan again = plan(after, line, name, instrument, at);
    assertEquals(List.of(), TwoParts.write(after, again).replacements());
    return after;
  }

  /** The words of a part, and the onset in quarters of the note before which each stands. */
  private static List<String> said(Document document, String name) {
    String id = document.score().part(name).map(Part::id).orElseThrow();
    List<String> said = new ArrayList<>();
    document.origin().parts().stream()
        .filter(part -> part.id().equals(id))
        .flatMap(part -> part.measures().stream())
        .flatMap(measure -> measure.elements().stream())
        .filter(element -> element.name().equals("direction"))
        .forEach(
            element -> {
              Matcher words = WORDS.matcher(element.span().in(document.origin().text()));
              if (words.find()) {
                said.add(element.onset().quarters() + " " + words.group(1));
              }
            });
    return said;
  }

  private static List<Manner> manners(Document document, String part) {
    return document.score().part(part).orElseThrow().voices().stream()
        .flatMap(voice -> voice.strokes().stream())
        .map(Stroke::manner)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "violin, pizz., arco",
    "violin, col legno, arco",
    "violin, col legno tratto, arco",
    "cello, con sord., senza sord.",
    "cello, sul pont., ord.",
    "cello, sul tasto, ord.",
    "trumpet in C, con sord., senza sord.",
    "flute, frull., ord."
  })
  void a_new_part_says_it_at_its_entry_and_takes_it_back(
      String instrument, String begin, String end) throws Exception {
    Document before =
        score(
            List.of(words(begin) + QUARTERS, QUARTERS, words(end) + QUARTERS),
            List.of(OWN, OWN, OWN));
    assertEquals(
        List.of("2 " + begin, "8 " + end), said(written(before, "New", instrument, 2, 9), "New"));
  }

  @Test
  void it_is_taken_back_at_a_later_turn_if_the_line_has_gone_on() throws Exception {
    Document before =
        score(
            List.of(words("pizz.") + QUARTERS, words("arco") + QUARTERS, QUARTERS),
            List.of(OWN, OWN, OWN));
    Document after = written(before, "New", "violin", 0, 2, 9, 11);
    assertEquals(List.of("0 pizz.", "9 arco"), said(after, "New"));
  }

  @ParameterizedTest
  @CsvSource({
    "flute, pizz.",
    "flute, con sord.",
    "piano, sul pont.",
    "violin, frull.",
    "harp, pizz."
  })
  void what_an_instrument_can_not_do_is_not_said(String instrument, String text) throws Exception {
    Document before = score(List.of(words(text) + QUARTERS), List.of(OWN));
    assertEquals(List.of(), said(written(before, "New", instrument, 0, 3), "New"));
  }

  @ParameterizedTest
  @CsvSource({
    "pizz., arco",
    "col legno, arco",
    "con sord., senza sord.",
    "sul pont., ord.",
    "pizz. con sord., arco senza sord."
  })
  void a_part_that_is_there_is_told_at_the_entry_and_at_its_next_own_note(String begin, String end)
      throws Exception {
    Document before =
        score(
            List.of(QUARTERS, words(begin) + QUARTERS, QUARTERS),
            List.of(OWN, rest(48), rest(24) + note("C", 5, 24, "")));
    Document after = written(before, "Own", "violin", 5, 8);
    assertEquals(List.of("5 " + begin, "10 " + end), said(after, "Own"));
    assertEquals(
        manners(before, "Own"),
        List.of(manners(after, "Own").get(0), manners(after, "Own").get(5)));
  }

  @Test
  void a_plucked_part_takes_up_the_bow_and_puts_it_down_again() throws Exception {
    Document before =
        score(List.of(QUARTERS, QUARTERS, QUARTERS), List.of(words("pizz.") + OWN, rest(48), OWN));
    Document after = written(before, "Own", "violin", 4, 6);
    assertEquals(List.of("0 pizz.", "4 arco", "8 pizz."), said(after, "Own"));
  }

  @Test
  void nothing_is_said_where_the_part_is_played_like_the_line() throws Exception {
    Document before =
        score(
            List.of(words("pizz.") + QUARTERS, QUARTERS, words("arco") + QUARTERS),
            List.of(words("pizz.") + OWN, rest(48), words("arco") + OWN));
    Document after = written(before, "Own", "violin", 4, 6);
    assertEquals(List.of("0 pizz.", "8 arco"), said(after, "Own"));
  }

  @Test
  void what_the_part_says_itself_is_not_said_once_more() throws Exception {
    Document before =
        score(
            List.of(QUARTERS, words("pizz.") + QUARTERS, QUARTERS),
            List.of(OWN, rest(48), words("arco") + OWN));
    assertEquals(List.of("4 pizz.", "8 arco"), said(written(before, "Own", "violin", 4, 6), "Own"));
  }

  @Test
  void what_stands_at_the_entry_in_another_form_is_not_said_once_more() throws Exception {
    String arco = words("arco").replace("<words>", "<words font-style=\"italic\">");
    Document before =
        score(
            List.of(QUARTERS, QUARTERS, QUARTERS),
            List.of(words("pizz.") + OWN, arco + rest(48), OWN));
    assertEquals(List.of("0 pizz.", "4 arco"), said(written(before, "Own", "violin", 4, 6), "Own"));
  }

  @Test
  void two_turns_between_own_notes_are_told_once() throws Exception {
    Document before =
        score(
            List.of(words("pizz.") + QUARTERS, QUARTERS, QUARTERS),
            List.of(rest(48), rest(48), OWN));
    assertEquals(
        List.of("0 pizz.", "8 arco"), said(written(before, "Own", "violin", 0, 1, 4, 6), "Own"));
  }

  @Test
  void a_trill_that_is_written_out_keeps_its_sign_in_a_new_part() throws Exception {
    String sign = "<notations><ornaments>%s</ornaments></notations>";
    String trill =
        note("D", 5, 3, sign.formatted("<trill-mark/><wavy-line type=\"start\"/>"))
            + note("E", 5, 3, "")
            + note("D", 5, 3, "")
            + note("E", 5, 3, sign.formatted("<wavy-line type=\"stop\"/>"));
    Document before = score(List.of(trill + note("C", 5, 36, "")), List.of(OWN));
    Document after = written(before, "New", "clarinet in B-flat", 0, 4);
    assertEquals(
        List.of(Attack.PLAIN, Attack.TRILLED, Attack.TRILLED, Attack.TRILLED, Attack.PLAIN),
        manners(after, "New").stream().map(Manner::attack).toList());
    assertFalse(after.origin().text().contains("<tremolo"));
  }

  @Test
  void flutter_tonguing_keeps_its_slashes_and_its_word_in_a_new_part() throws Exception {
    String slashes =
        "<type>quarter</type><notations><ornaments>"
            + "<tremolo type=\"single\">3</tremolo></ornaments></notations>";
    Document before =
        score(List.of(words("Flzg.") + note("A", 4, 12, slashes) + rest(36)), List.of(OWN));
    Document wind =
        TwoParts.read(before.origin().text().replace("<part-name>Viola", "<part-name>Oboe"));
    Document after = written(wind, "New", "flute", 0, 0);
    assertEquals(List.of("0 frull."), said(after, "New"));
    assertEquals(TwoParts.strokes(wind, "P1"), TwoParts.strokes(after, "New"));
  }
}
