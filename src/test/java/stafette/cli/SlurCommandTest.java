package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line that is slurred where its pitch changes. */
class SlurCommandTest {
  private static final List<String> STAIRS =
      List.of(
          "split",
          "samples/mill-stairs.musicxml",
          "--part",
          "P1",
          "--staff",
          "1",
          "--bars",
          "1-8",
          "--players",
          "Bassoon 1, Bassoon 2, Clarinet 1, Clarinet 2");

  @TempDir private Path folder = Path.of("");

  @Test
  void it_is_told_written_kept_and_opened_again() throws IOException {
    Path written = folder.resolve("written.musicxml");
    Path plan = folder.resolve("plan.json");
    Ran ran = stairs("--slur", "pairs", "--out", written.toString(), "--plan", plan.toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err() + ran.out());
    assertTrue(ran.out().contains("changed: slurred in pairs"), ran.out());
    String text = Files.readString(written);
    assertEquals(piano(Files.readString(Path.of("samples/mill-stairs.musicxml"))), piano(text));
    assertTrue(text.split("<slur type=\"start\"", -1).length > 32, "slurs");
    assertEquals(
        "pairs",
        JsonParser.parseString(Files.readString(plan))
            .getAsJsonObject()
            .getAsJsonObject("line")
            .get("slurring")
            .getAsString());
    Ran again = Ran.command("preview", plan.toString());
    assertEquals(Commands.FINE, again.exitCode(), again.err() + again.out());
    assertTrue(again.out().contains("changed: slurred in pairs"), again.out());
  }

  private static String piano(String text) {
    int start = text.indexOf("<part id=\"P1\"");
    return text.substring(start, text.indexOf("</part>", start));
  }

  @Test
  void what_is_no_way_to_slur_is_said_with_those_that_are() {
    Ran ran = stairs("--slur", "threes");
    assertEquals(Commands.WRONG_USE, ran.exitCode());
    assertTrue(ran.err().contains("--slur \"threes\": write pairs, fours"), ran.err());
  }

  private static Ran stairs(String... more) {
    List<String> words = new ArrayList<>(STAIRS);
    words.addAll(Arrays.asList(more));
    return Ran.command(words.toArray(String[]::new));
  }
}
