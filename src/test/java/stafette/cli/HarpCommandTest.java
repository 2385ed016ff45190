package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.Xml;

/** Fast repeated notes for two harps, as the command line writes them. */
class HarpCommandTest {
  @TempDir private Path folder = Path.of("");

  private Ran split(Path written, String... more) throws IOException {
    String bar = Xml.note("B", 4, 3, "").repeat(16);
    String text =
        Xml.scoreOf(
            "<part-name>Piano</part-name>",
            Xml.ATTRIBUTES + "<sound tempo=\"132\"/>" + bar,
            bar,
            bar,
            bar);
    Path score = Files.writeString(folder.resolve("repeated.musicxml"), text);
    List<String> words = new ArrayList<>(List.of("split", score.toString(), "--part", "P1"));
    words.addAll(List.of("--bars", "1-4", "--players", "Harp 1, Harp 2"));
    words.addAll(List.of("--force", "-o", written.toString()));
    words.addAll(Arrays.asList(more));
    return Ran.command(words.toArray(String[]::new));
  }

  private static int count(String text, String part) {
    return text.split(part, -1).length - 1;
  }

  @Test
  void each_harp_has_its_twins_spelled_and_its_pedals_drawn_once() throws IOException {
    Path written = folder.resolve("written.musicxml");
    Ran ran = split(written);
    assertEquals(Commands.FINE, ran.exitCode(), ran.err() + ran.out());
    String text = Files.readString(written);
    assertEquals(2, count(text, "<harp-pedals>"), text);
    assertTrue(count(text, "<step>C</step>") >= 24, text);
  }

  @Test
  void pedals_are_left_out_where_that_is_asked() throws IOException {
    Path written = folder.resolve("written.musicxml");
    assertEquals(Commands.FINE, split(written, "--pedals", "no").exitCode());
    assertEquals(0, count(Files.readString(written), "<harp-pedals>"));
    assertEquals(Commands.FINE, split(written, "--pedals", "yes").exitCode());
    assertEquals(2, count(Files.readString(written), "<harp-pedals>"));
  }

  @Test
  void what_is_neither_yes_nor_no_is_said_with_what_to_write() throws IOException {
    Ran ran = split(folder.resolve("written.musicxml"), "--pedals", "maybe");
    assertEquals(Commands.WRONG_USE, ran.exitCode());
    assertTrue(ran.err().contains("--pedals \"maybe\": write yes or no"), ran.err());
  }
}
