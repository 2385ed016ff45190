package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Harps;
import stafette.Invented;
import stafette.musicxml.newparts.PartPlace;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Joins;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;
import stafette.score.Part;

/** Twin strings as a harpist reads them: both are written, and both sound the line's note. */
class HarpNotesTest {
  private static final WrittenAs USUAL = WrittenAs.plain(SourceTreatment.KEEP);

  /** The page's own harp, and one that it doesn't have. */
  private static final List<String> HARPS = List.of("Harp", "Harp 2");

  /** A bar of sixteenths for each letter, all natural. */
  private static String page(int fifths, String... letters) {
    String attributes =
        "<attributes><divisions>12</divisions><key><fifths>"
            + fifths
            + "</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";
    List<String> line = new ArrayList<>();
    List<String> rests = new ArrayList<>();
    for (String letter : letters) {
      String start = line.isEmpty() ? attributes : "";
      line.add(start + note(letter, 5, 3, "").repeat(16));
      rests.add(start + rest(48));
    }
    return TwoParts.of(line, rests).replace("<part-name>Flute", "<part-name>Harp");
  }

  /** Each bar of the line is a turn of a harp on twin strings. */
  private static byte[] written(Document page, String name, WrittenAs how) throws Exception {
    int bars = page.score().bars().count();
    Line line = ByHand.line(page.score(), "P1", "1-" + bars);
    Player harp = Harps.player(name, page.score().part(name).map(Part::id));
    Plan plan =
        new Plan(
            Invented.brief(line, harp),
            IntStream.range(0, bars)
                .mapToObj(bar -> new Segment(0, Harps.TWINS, 16 * bar, 16 * bar + 15))
                .toList());
    return ScoreWriter.write(
            page, Optional.of(plan), List.of(), how, player -> Optional.of(PartPlace.below("P1")))
        .bytes();
  }

  private static byte[] written(String page, String name) throws Exception {
    return written(TwoParts.read(page), name, USUAL);
  }

  @Test
  void both_strings_are_written_with_one_accidental_in_each_bar() throws Exception {
    for (String name : HARPS) {
      byte[] written = written(page(0, "C", "C"), name);
      for (String bar : BarsAsText.of(written, name)) {
        assertEquals(9, bar.split("C5", -1).length, bar);
        assertEquals(9, bar.split("B#4", -1).length, bar);
        assertTrue(bar.indexOf("C5") < bar.indexOf("B#4"), bar);
      }
      List<List<String>> shown = accidentals(written, name);
      assertEquals(List.of(List.of("sharp"), List.of("sharp")), shown, name);
      assertEquals(List.of(), OfficialSchema.errors(written));
    }
  }

  private static List<List<String>> accidentals(byte[] score, String part) throws Exception {
    Document document = MusicXmlReader.read(score);
    String id = document.score().part(part).orElseThrow().id();
    return document.origin().parts().stream()
        .filter(each -> each.id().equals(id))
        .flatMap(each -> each.measures().stream())
        .map(
            measure ->
                Pattern.compile("<accidental>([a-z]+)</accidental>")
                    .matcher(measure.whole().in(document.origin().text()))
                    .results()
                    .map(found -> found.group(1))
                    .toList())
        .toList();
  }

  @Test
  void a_string_far_from_the_key_keeps_its_name() throws Exception {
    for (String name : HARPS) {
      String bar = BarsAsText.of(written(page(-5, "C"), name), name).get(0);
      assertTrue(bar.contains("C5") && bar.contains("B#4"), bar);
    }
  }

  @Test
  void what_is_read_back_sounds_like_the_line_and_counts_as_one_note() throws Exception {
    String page = page(0, "F", "F");
    for (String name : HARPS) {
      Document after = MusicXmlReader.read(written(page, name));
      assertEquals(TwoParts.strokes(TwoParts.read(page), "P1"), TwoParts.strokes(after, name));
      Line line = ByHand.line(after.score(), after.score().part(name).orElseThrow().id(), "1-2");
      assertTrue(
          IntStream.range(1, line.count())
              .allMatch(i -> line.stroke(i).isLike(line.stroke(i - 1))));
    }
  }

  /** In the order that MusicXML 4.0 has for harp-pedals: D, C, B, E, F, G, A. */
  @Test
  void pedals_are_drawn_before_the_first_turn_and_named_where_they_move() throws Exception {
    for (String name : HARPS) {
      byte[] written = written(page(0, "C", "F", "F", "B"), name);
      assertEquals(List.of(), OfficialSchema.errors(written));
      assertEquals(
          List.of("<pedals D C B# E F G A>", "<E♯>", "", "<C♭ B♮>"),
          BarsAsText.of(written, name).stream().map(HarpNotesTest::pedals).toList());
    }
  }

  private static String pedals(String bar) {
    return Pattern.compile("<(?:pedals.*?|[A-G][♭♮♯].*?)>")
        .matcher(bar)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.joining(" "));
  }

  @Test
  void where_it_is_not_wished_nothing_is_said_of_pedals() throws Exception {
    WrittenAs silent = new WrittenAs(SourceTreatment.KEEP, Joins.AS_WRITTEN, false, false);
    for (String name : HARPS) {
      byte[] written = written(TwoParts.read(page(0, "C", "F")), name, silent);
      for (String bar : BarsAsText.of(written, name)) {
        assertEquals("", pedals(bar));
      }
    }
  }

  @Test
  void writing_the_same_turns_again_changes_nothing() throws Exception {
    for (String name : HARPS) {
      for (String encoding : List.of("UTF-8", "ISO-8859-1")) {
        String page = page(0, "C", "F").replace("UTF-8", encoding);
        byte[] once = written(page, name);
        assertTrue(BarsAsText.of(once, name).get(1).contains("<E♯>"), encoding);
        assertArrayEquals(once, written(MusicXmlReader.read(once), name, USUAL));
      }
    }
  }

  @Test
  void what_another_program_has_set_otherwise_is_not_written_twice() throws Exception {
    String once = new String(written(page(0, "C", "F"), "Harp"), StandardCharsets.UTF_8);
    String other =
        once.replace("<harp-pedals>", "<harp-pedals default-y=\"20\">")
            .replace("<pedal-alter>1<", "<pedal-alter>1.0<")
            .replace("<words>E♯<", "<words font-size=\"9\">E♯<");
    assertNotEquals(once, other);
    List<String> bars = BarsAsText.of(written(other, "Harp"), "Harp");
    assertEquals("<pedals D C B# E F G A>", pedals(bars.get(0)));
    assertEquals("<E♯>", pedals(bars.get(1)));
  }

  @Test
  void a_harp_whose_own_part_the_line_is_has_its_pedals_there() throws Exception {
    byte[] written = written(page(0, "C", "F"), "Piano");
    List<String> bars = BarsAsText.of(written, "Piano");
    assertEquals("<pedals D C B# E F G A>", pedals(bars.get(0)));
    assertEquals("<E♯>", pedals(bars.get(1)));
    assertArrayEquals(written, written(MusicXmlReader.read(written), "Piano", USUAL));
  }
}
