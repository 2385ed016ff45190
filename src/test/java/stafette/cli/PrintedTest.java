package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.work.BellScore;

/** What reaches the terminal: all of it or words about it, and nothing that steers it. */
class PrintedTest {
  private static final Pattern CONTROL =
      Pattern.compile("[\\p{Cc}\\u202a-\\u202e\\u2066-\\u2069&&[^\\n]]");

  @TempDir private Path folder = Path.of("");

  /** Takes so many bytes, and then no more. */
  private static final class Ending extends OutputStream {
    private final String why;
    private int room = 100;

    Ending(String why) {
      this.why = why;
    }

    @Override
    public void write(int one) throws IOException {
      if (room-- <= 0) {
        throw new IOException(why);
      }
    }
  }

  private static Ran limitsTo(OutputStream out) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exitCode =
        Commands.run(out, err, StandardCharsets.UTF_8, file -> Optional.empty(), "limits");
    return new Ran(exitCode, "", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void a_full_disk_under_standard_output_is_told() {
    Ran ran = limitsTo(new Ending("No space left on device"));
    assertEquals(3, ran.exitCode());
    assertTrue(ran.err().contains("No space left on device"), ran.err());
    assertEquals(1, ran.err().lines().count(), ran.err());
  }

  @Test
  void a_device_that_is_full_is_told() throws IOException {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full));
    try (OutputStream out = new FileOutputStream(full.toFile())) {
      assertEquals(3, limitsTo(out).exitCode());
    }
  }

  @Test
  void a_reader_who_has_enough_ends_nothing_but_the_output() {
    assertEquals(new Ran(0, "", ""), limitsTo(new Ending("Broken pipe")));
  }

  @Test
  void help_on_a_full_disk_is_no_success_either() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Ending out = new Ending("No space left on device");
    assertEquals(
        3,
        Commands.run(
            out, err, StandardCharsets.UTF_8, file -> Optional.empty(), "split", "--help"));
  }

  /** XML 1.1 lets a name hold any control character but one. */
  private Path steering() throws IOException {
    Path score = BellScore.write(folder.resolve("steering.musicxml"), List.of("1", "2", "3", "4"));
    return Files.writeString(
        score,
        Files.readString(score)
            .replace("version=\"1.0\"", "version=\"1.1\"")
            .replace(">Piano<", ">Pia&#27;[2Jno&#155;31m&#13;&#8;&#7;&#x202e;&#9;x<"));
  }

  @Test
  void names_in_a_score_do_not_steer_the_terminal() throws IOException {
    String score = steering().toString();
    for (Ran ran :
        List.of(
            Ran.command("check", score),
            Ran.command("split", score, "--part", "P1", "--players", "x", "--tone", "top"),
            Ran.command("check", score, "--part", "Tuba"),
            Ran.command("preview", score, "--part", "P1", "--tone", "top", "--players", "Flute 1"),
            Ran.command("split", score, "--part", "Pia\u001b[2Jno", "--players", "\u009bx"))) {
      assertFalse(CONTROL.matcher(ran.out() + ran.err()).find(), ran.toString());
    }
    assertTrue(Ran.command("check", score).out().contains("Pia\uFFFD[2Jno\uFFFD31m"));
  }

  @Test
  void the_names_in_json_are_those_of_the_score_all_the_same() throws IOException {
    String out = Ran.command("check", steering().toString(), "--json").out();
    assertFalse(CONTROL.matcher(out).find(), out);
    String name =
        JsonParser.parseString(out)
            .getAsJsonObject()
            .getAsJsonArray("passages")
            .get(0)
            .getAsJsonObject()
            .get("name")
            .getAsString();
    assertEquals("Pia\u001b[2Jno\u009b31m", name.substring(0, 13));
  }

  @Test
  void line_ends_pass_in_either_form() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    CleanPrint out = new CleanPrint(new Sink(bytes), true, StandardCharsets.UTF_8);
    out.print("a\u202eb\nc\r\nd\re");
    out.printf(Locale.ROOT, "%s|", "\u001b");
    out.println((Object) "\u0000");
    assertEquals(
        "a\uFFFDb\nc\r\nd\uFFFDe\uFFFD|\uFFFD" + System.lineSeparator(),
        bytes.toString(StandardCharsets.UTF_8));
  }

  @Test
  void an_argument_that_begins_with_an_at_sign_is_itself() {
    Ran ran = Ran.command("check", "@pom.xml");
    assertEquals(3, ran.exitCode());
    assertTrue(ran.err().startsWith("@pom.xml: there is no such file"), ran.err());
  }
}
