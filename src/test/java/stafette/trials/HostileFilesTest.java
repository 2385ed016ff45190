package stafette.trials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Files that mean harm, or that are none: each is refused in words, at once, or read. */
class HostileFilesTest {
  private static final String SOUND =
      Node.of(
              "score-partwise",
              Node.of(
                  "part-list",
                  Node.of("score-part", Node.of("part-name", "Flute")).with("id", "P1")),
              Node.of("part", Node.of("measure", FastBar.note("A", 4, 4, 1, 1)).with("number", "1"))
                  .with("id", "P1"))
          .document();

  private static final int FILE = 3;

  /** What may be asked for in memory before a file is refused, in megabytes. */
  private static final long LITTLE_WORK = 600;

  @TempDir private Path folder = Path.of("");

  @TestFactory
  Stream<DynamicTest> what_is_no_sound_score_is_refused_in_words() {
    String secret = folder.resolve("secret.txt").toUri().toString();
    Map<String, String> hostile =
        Map.ofEntries(
            Map.entry("empty", ""),
            Map.entry("blanks", " \n".repeat(2_000_000)),
            Map.entry("a NUL", SOUND.replace("Flute", "Fl\u0000te")),
            Map.entry("NULs alone", "\u0000".repeat(1000)),
            Map.entry("an escape character", SOUND.replace("Flute", "\u001b[2J")),
            Map.entry("an escape character by number", SOUND.replace("Flute", "&#27;[2J")),
            Map.entry("deep nesting", SOUND.replace("<note>", "<x>".repeat(200_000) + "<note>")),
            Map.entry("a bomb of entities", declaring(bomb(), "&b9;")),
            Map.entry("a bomb in an attribute", declaring(bomb(), "x").replace("P1", "&b9;")),
            Map.entry(
                "an external entity", declaring("<!ENTITY e SYSTEM \"" + secret + "\">", "&e;")),
            Map.entry(
                "an external parameter",
                declaring("<!ENTITY % e SYSTEM \"" + secret + "\"> %e;", "Flute")));
    return hostile.entrySet().stream()
        .map(
            each ->
                DynamicTest.dynamicTest(
                    each.getKey(), () -> refused(written("x.musicxml", utf8(each.getValue())))));
  }

  @TestFactory
  Stream<DynamicTest> what_is_large_or_strange_but_sound_is_read() {
    Map<String, byte[]> strange =
        Map.ofEntries(
            Map.entry("UTF-16 without a mark", SOUND.getBytes(StandardCharsets.UTF_16LE)),
            Map.entry(
                "UTF-32 with a mark", ("\ufeff" + SOUND).getBytes(Charset.forName("UTF-32BE"))),
            Map.entry("a long name", utf8(SOUND.replace("Flute", "x".repeat(4_000_000)))),
            Map.entry(
                "many attributes", utf8(SOUND.replace("<measure", "<measure " + attributes(500)))),
            Map.entry(
                "a long comment",
                utf8(SOUND.replace("<note>", "<!--" + "-x".repeat(1_000_000) + "--><note>"))),
            Map.entry(
                "a document type elsewhere",
                utf8(
                    SOUND.replace(
                        "<score-partwise>",
                        "<!DOCTYPE score-partwise SYSTEM \"no/such/file.dtd\"><score-partwise>"))));
    return strange.entrySet().stream()
        .map(
            each ->
                DynamicTest.dynamicTest(
                    each.getKey(), () -> read(written("x.musicxml", each.getValue()))));
  }

  @Test
  void an_attribute_of_a_hundred_megabytes_is_refused_in_words() throws IOException {
    refused(
        written(
            "x.musicxml",
            utf8(SOUND.replace("number=", "x=\"" + "y".repeat(5_000_000) + "\" number="))));
  }

  @Test
  void an_archive_is_read() throws IOException {
    read(written("x.mxl", archive("score.xml").bytes()));
  }

  @Test
  void a_gigabyte_of_zeros_beside_the_score_is_left_packed() throws IOException {
    read(
        written(
            "x.mxl", new Swollen().zeros("zeros.xml").stored("score.xml", utf8(SOUND)).bytes()));
    read(written("x.mxl", archive("score.xml").zeros("zeros.xml").bytes()));
  }

  @Test
  void a_gigabyte_of_zeros_in_place_of_the_score_is_refused() throws IOException {
    refused(written("x.mxl", archive("zeros.xml").zeros("zeros.xml").bytes()));
  }

  @Test
  void names_that_lead_out_of_the_archive_lead_nowhere() throws IOException {
    Path inner = Files.createDirectories(folder.resolve("a/b"));
    Path packed = Files.write(inner.resolve("x.mxl"), archive("../../up.xml").bytes());
    assertEquals(0, Ended.of(List.of("check", packed.toString())).exitCode());
    assertFalse(Files.exists(folder.resolve("up.xml")));
  }

  @Test
  void a_folder_is_no_score() {
    refused(folder);
  }

  @Test
  void a_pipe_that_nobody_writes_into_is_no_score() throws Exception {
    Path pipe = folder.resolve("pipe");
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")));
    assertEquals(0, new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor());
    refused(pipe);
    assertEquals(FILE, Ended.of(List.of("preview", pipe.toString())).exitCode());
  }

  @TestFactory
  Stream<DynamicTest> a_device_is_no_score() {
    return Stream.of("/dev/zero", "/dev/null")
        .map(Path::of)
        .filter(Files::exists)
        .map(device -> DynamicTest.dynamicTest(device.toString(), () -> refused(device)));
  }

  @Test
  void a_device_is_no_list_of_players_and_no_table() throws IOException {
    Path device = Path.of("/dev/zero");
    assumeTrue(Files.exists(device));
    String score = written("x.musicxml", utf8(SOUND)).toString();
    Ended players =
        Ended.of(List.of("split", score, "--part", "P1", "--players-file", device.toString()));
    assertEquals(FILE, players.exitCode(), players.err() + players.thrown());
    Files.createSymbolicLink(folder.resolve("weights.csv"), device);
    Ended tables = Ended.of(List.of("limits", "--validate", folder.toString()));
    assertEquals(FILE, tables.exitCode(), tables.err() + tables.thrown());
  }

  private static void refused(Path file) {
    Ended ended = Ended.of(List.of("check", file.toString()));
    assertEquals(FILE, ended.exitCode(), ended.err() + ended.thrown());
    assertTrue(ended.err().contains(file.toString()), ended.err());
    assertTrue(ended.err().length() < 600, ended.err());
    assertFalse(ended.err().matches("(?s).*(Exception|[\\x00-\\x09\\x0b-\\x1f]).*"), ended.err());
    assertTrue(ended.megabytes() < LITTLE_WORK, "work: " + ended.megabytes());
  }

  private static void read(Path file) {
    Ended ended = Ended.of(List.of("check", file.toString()));
    assertEquals(0, ended.exitCode(), ended.err() + ended.thrown());
    assertTrue(ended.megabytes() < LITTLE_WORK, "work: " + ended.megabytes());
  }

  private Path written(String name, byte[] content) throws IOException {
    return Files.write(folder.resolve(name), content);
  }

  /** An archive whose container names one of its entries. */
  private static Swollen archive(String named) {
    return new Swollen()
        .stored(
            "META-INF/container.xml",
            utf8(
                "<container><rootfiles><rootfile full-path=\""
                    + named
                    + "\"/></rootfiles></container>"))
        .stored("score.xml", utf8(SOUND))
        .stored("../../up.xml", utf8(SOUND));
  }

  private static String attributes(int count) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < count; i++) {
      text.append("a").append(i).append("=\"x\" ");
    }
    return text.toString();
  }

  private static String declaring(String entities, String name) {
    return SOUND
        .replace("<score-partwise>", "<!DOCTYPE score-partwise [" + entities + "]><score-partwise>")
        .replace("Flute", name);
  }

  private static String bomb() {
    StringBuilder text = new StringBuilder("<!ENTITY b0 \"bombbomb\">");
    for (int i = 1; i < 10; i++) {
      text.append("<!ENTITY b").append(i).append(" \"").append(("&b" + (i - 1) + ";").repeat(10));
      text.append("\">");
    }
    return text.toString();
  }

  private static byte[] utf8(String text) {
    return BytesSpoiler.utf8(text);
  }
}
