package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Harps;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.Part;

/** Twin strings as a harpist reads them: both are written, and both sound the line's note. */
class HarpNotesTest {
  private static Document page(int fifths, String step) throws Exception {
    String attributes =
        "<attributes><divisions>12</divisions><key><fifths>"
            + fifths
            + "</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";
    String sixteenths = note(step, 5, 3, "").repeat(16);
    return TwoParts.read(
        TwoParts.of(
                List.of(attributes + sixteenths, sixteenths),
                List.of(attributes + rest(48), rest(48)))
            .replace("<part-name>Flute", "<part-name>Harp"));
  }

  /** The line for a harp of that name on twin strings: the page's own one, or a new one. */
  private static byte[] written(Document page, String name) throws Exception {
    Line line = ByHand.line(page.score(), "P1", "1-2");
    Plan plan =
        new Plan(
            Invented.brief(line, Harps.player(name, page.score().part(name).map(Part::id))),
            List.of(new Segment(0, Harps.TWINS, 0, line.count() - 1)));
    return ScoreWriter.write(page, plan, SourceTreatment.KEEP, player -> Optional.of("P1")).bytes();
  }

  @Test
  void both_strings_are_written_with_one_accidental_in_each_bar() throws Exception {
    for (String name : List.of("Harp", "Harp 2")) {
      byte[] written = written(page(0, "C"), name);
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
    for (String name : List.of("Harp", "Harp 2")) {
      String bar = BarsAsText.of(written(page(-5, "C"), name), name).get(0);
      assertTrue(bar.contains("C5") && bar.contains("B#4"), bar);
    }
  }

  @Test
  void what_is_read_back_sounds_like_the_line_and_counts_as_one_note() throws Exception {
    Document page = page(0, "F");
    for (String name : List.of("Harp", "Harp 2")) {
      Document after = MusicXmlReader.read(written(page, name));
      assertEquals(TwoParts.strokes(page, "P1"), TwoParts.strokes(after, name));
      Line line = ByHand.line(after.score(), after.score().part(name).orElseThrow().id(), "1-2");
      assertTrue(
          IntStream.range(1, line.count())
              .allMatch(i -> line.stroke(i).isLike(line.stroke(i - 1))));
    }
  }

  @Test
  void writing_the_same_turn_again_changes_nothing() throws Exception {
    byte[] once = written(page(0, "C"), "Harp");
    assertArrayEquals(once, written(MusicXmlReader.read(once), "Harp"));
    byte[] anew = written(page(0, "C"), "Harp 2");
    assertArrayEquals(anew, written(MusicXmlReader.read(anew), "Harp 2"));
  }
}
