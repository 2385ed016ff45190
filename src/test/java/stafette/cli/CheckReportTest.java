package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.Xml;

/** What a check of a whole score tells first and last. */
class CheckReportTest {
  private static final String FAST = Xml.note("A", 4, 3, "").repeat(16);
  private static final String TEMPO = "<sound tempo=\"140\"/>";

  @TempDir private Path folder = Path.of("");

  private String check(String... parts) throws IOException {
    String bar = "<measure number=\"1\">" + Xml.ATTRIBUTES + TEMPO + FAST + "</measure>";
    String more =
        "<measure number=\"2\">"
            + Xml.rest(48)
            + "</measure>"
            + "<measure number=\"3\">"
            + FAST
            + "</measure>";
    StringBuilder list = new StringBuilder();
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < parts.length; i++) {
      String id = "P" + (i + 1);
      list.append(
          "<score-part id=\"" + id + "\"><part-name>" + parts[i] + "</part-name></score-part>");
      all.append("<part id=\"" + id + "\">" + bar + more + "</part>");
    }
    Path score = folder.resolve("report.musicxml");
    Files.writeString(
        score,
        "<score-partwise version=\"4.0\"><part-list>"
            + list
            + "</part-list>"
            + all
            + "</score-partwise>");
    return Ran.command("check", score.toString()).out();
  }

  @Test
  void how_many_there_are_of_each_kind_stands_above() throws IOException {
    String said = check("Flute", "Clarinet");
    assertEquals("4 fast passages: 2 for the few, 2 demanding", List.of(said.split("\n")).get(0));
  }

  @Test
  void a_part_that_nobody_knows_is_told_once_with_all_its_passages() throws IOException {
    String said = check("Flute", "Theramin of Glass");
    assertTrue(
        said.contains(
            "Theramin of Glass: its instrument is unknown, so nothing is said of bar 1, bar 3;"),
        said);
    assertEquals(2, said.split("Theramin", -1).length, said);
    assertTrue(said.startsWith("4 fast passages: 2 demanding\n"), said);
  }

  @Test
  void no_cell_is_left_with_a_dash_or_a_riddle() throws IOException {
    String said = check("Double Bass", "Clarinet", "Harp");
    for (String riddle : List.of(" 0.0 s", " nothing", " - ")) {
      assertFalse(said.contains(riddle), said);
    }
    assertTrue(said.contains("goes at no tempo; not thinned either"), said);
  }
}
