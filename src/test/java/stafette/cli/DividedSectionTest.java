package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.time.Position;

/** A violin line at quarter = 156, shared by the divided first violins and the second ones. */
class DividedSectionTest {
  private static final int BARS = 12;

  @TempDir private Path folder = Path.of("");

  @Test
  void outside_and_inside_players_read_from_the_sections_own_staff_which_says_who_plays()
      throws Exception {
    Path out = folder.resolve("out.musicxml");
    Ran ran =
        Ran.command(
            "split",
            score().toString(),
            "--part",
            "Violins I",
            "--players",
            "Violins I div. a 2, Violins II",
            "--lock",
            "Violins I inside: 5.1-6.4",
            "--lock",
            "Violins II: 9.1-10.4",
            "-o",
            out.toString());
    assertEquals(0, ran.exitCode(), ran.err() + ran.out());
    assertTrue(ran.out().contains("Violins I: plays in"), ran.out());
    String text = Files.readString(out);
    for (String label : List.of(">div. a 2, outside<", ">inside<", ">unis.<")) {
      assertTrue(text.contains(label), label + " is not in " + text);
    }
    Score written = MusicXmlReader.read(Files.readAllBytes(out)).score();
    assertEquals(
        List.of("Violins I", "Violins II"), written.parts().stream().map(Part::name).toList());
    assertEquals(
        16 * BARS,
        new TreeSet<>(written.parts().stream().flatMap(DividedSectionTest::onsets).toList())
            .size());
    assertTrue(written.parts().stream().allMatch(part -> onsets(part).count() < 16 * BARS));
  }

  private static Stream<Position> onsets(Part part) {
    return part.voices().stream().flatMap(voice -> voice.strokes().stream()).map(Stroke::onset);
  }

  private Path score() throws IOException {
    String tempo = "<sound tempo=\"156\"/>";
    String line = (Xml.note("A", 4, 3, "").repeat(2) + Xml.note("B", 4, 3, "").repeat(2)).repeat(4);
    String text =
        "<score-partwise version=\"4.0\">\n  <part-list>\n"
            + "    <score-part id=\"P1\"><part-name>Violins I</part-name></score-part>\n"
            + "    <score-part id=\"P2\"><part-name>Violins II</part-name></score-part>\n"
            + "  </part-list>\n"
            + part("P1", tempo, line)
            + part("P2", "", Xml.rest(48))
            + "</score-partwise>\n";
    return Files.writeString(folder.resolve("strings.musicxml"), text);
  }

  private static String part(String id, String first, String bar) {
    StringBuilder text = new StringBuilder("  <part id=\"" + id + "\">\n");
    for (int i = 1; i <= BARS; i++) {
      text.append("    <measure number=\"" + i + "\">" + (i == 1 ? Xml.ATTRIBUTES + first : ""));
      text.append(bar + "</measure>\n");
    }
    return text.append("  </part>\n").toString();
  }
}
