package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.Xml;

/** What a score has plucked is judged, shared out and written as plucked. */
class PluckedTest {
  private static final String PLUCKED =
      "<direction><direction-type><words>pizz.</words></direction-type>"
          + "<sound tempo=\"90\"/></direction>";
  private static final String BOWED =
      "<direction><direction-type><words>arco</words></direction-type>"
          + "<sound tempo=\"160\"/></direction>";

  @TempDir private Path folder = Path.of("");

  private Path score() throws IOException {
    String bar = (Xml.note("A", 4, 3, "") + Xml.note("B", 4, 3, "")).repeat(8);
    String text =
        Xml.scoreOf(
            "<part-name>Violin</part-name>", Xml.ATTRIBUTES + PLUCKED + bar, bar, BOWED + bar, bar);
    return Files.writeString(folder.resolve("plucked.musicxml"), text);
  }

  @Test
  void a_plucked_passage_is_held_against_plucking_and_a_bowed_one_against_the_bow()
      throws IOException {
    String said = Ran.command("check", score().toString()).out();
    String plucked = passage(said, "bars 1-2");
    String bowed = passage(said, "bars 3-4");
    assertTrue(plucked.contains("pizzicato"), said);
    assertFalse(plucked.contains("sautillé"), said);
    assertTrue(bowed.contains("sautillé"), said);
    assertFalse(bowed.contains("pizzicato"), said);
  }

  private static String passage(String said, String bars) {
    return Arrays.stream(said.split("\n\n"))
        .filter(each -> each.contains(bars))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_plucked_line_is_shared_by_players_who_pluck_and_their_parts_say_so() throws IOException {
    Path written = folder.resolve("written.musicxml");
    Ran run =
        Ran.command(
            "split",
            score().toString(),
            "--part",
            "Violin",
            "--bars",
            "1-2",
            "--players",
            "Violin 2, Viola",
            "-o",
            written.toString());
    assertEquals(0, run.exitCode(), run.out() + run.err());
    assertTrue(run.out().contains("pizzicato two fingers"), run.out());
    String part = Files.readString(written);
    assertTrue(part.substring(part.indexOf("<part id=\"P2\"")).contains("pizz."), part);
  }
}
