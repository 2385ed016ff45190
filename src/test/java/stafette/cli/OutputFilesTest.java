package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.text.ZippedScore;

/** What a command writes is tried before it searches, and replaces nothing that it reads. */
class OutputFilesTest {
  private static final String PLAYERS =
      """
      {"format": "stafette-players", "version": 1, "players": [
        {"name": "Flute 1", "techniques": [{"name": "double tonguing", "peak": 12}]}]}
      """;

  @TempDir private Path folder = Path.of("");
  private Path score = Path.of("");
  private Path players = Path.of("");
  private Path limits = Path.of("");

  @BeforeEach
  void copyFiles() throws IOException {
    score = Files.copy(LanternRun.FILE, folder.resolve("score.musicxml"));
    players = Files.writeString(folder.resolve("players.json"), PLAYERS);
    limits = Files.createDirectory(folder.resolve("limits"));
    Files.copy(Path.of("limits", "blend.csv"), limits.resolve("blend.csv"));
  }

  private Path at(String name) {
    return folder.resolve(name);
  }

  private Ran run(String command, String... more) {
    return LanternRun.run(command, score, "5-6", "Flute 1, Flute 2", more);
  }

  private void refused(String says, String command, String... more) throws IOException {
    List<byte[]> before = inputs();
    Ran ran = run(command, more);
    String told = String.join(" ", more) + ": " + ran.err();
    assertEquals(3, ran.exitCode(), told);
    assertTrue(ran.err().contains(says), told);
    assertEquals("", ran.out(), "nothing is searched for it");
    List<byte[]> after = inputs();
    for (int i = 0; i < before.size(); i++) {
      assertArrayEquals(before.get(i), after.get(i), told);
    }
  }

  private List<byte[]> inputs() throws IOException {
    List<byte[]> bytes = new ArrayList<>();
    for (Path input : List.of(score, players, limits.resolve("blend.csv"))) {
      bytes.add(Files.readAllBytes(input));
    }
    return bytes;
  }

  @Test
  void a_score_is_written_plain_or_compressed_as_its_name_says() throws IOException {
    Path packed = folder.resolve("lantern.mxl");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(packed))) {
      zip.putNextEntry(new ZipEntry("score.xml"));
      zip.write(Files.readAllBytes(LanternRun.FILE));
    }
    Path plain = folder.resolve("plain.musicxml");
    Path compressed = folder.resolve("compressed.mxl");
    Path fromPlain = folder.resolve("from-plain.musicxml");
    written(packed, plain);
    written(packed, compressed);
    written(LanternRun.FILE, fromPlain);
    assertArrayEquals(Files.readAllBytes(fromPlain), Files.readAllBytes(plain));
    Path packedAnew = folder.resolve("from-plain.mxl");
    written(LanternRun.FILE, packedAnew);
    for (Path each : List.of(compressed, packedAnew)) {
      assertTrue(ZippedScore.isZip(Files.readAllBytes(each)), each.toString());
      assertEquals(0, Ran.command("check", each.toString()).exitCode());
    }
  }

  private static void written(Path score, Path out) {
    Ran ran = LanternRun.run("split", score, "5-16", "Flute 1, Flute 2", "-o", out.toString());
    assertEquals(0, ran.exitCode(), ran.err());
  }

  @Test
  void no_output_of_a_split_is_its_score_its_players_or_its_tables() throws IOException {
    Path soft = Files.createSymbolicLink(at("soft"), Path.of("score.musicxml"));
    Path hard = Files.createLink(at("hard"), score);
    for (Path same : List.of(score, soft, hard, at("limits/../score.musicxml"))) {
      refused("must stay as it is", "split", "--force", "--plan", same.toString());
      refused("is the score itself", "split", "--force", "-o", same.toString());
      refused("is the score itself", "thin", "--force", "-o", same.toString());
    }
    for (Path input : List.of(players, limits.resolve("blend.csv"))) {
      for (String option : List.of("--plan", "-o")) {
        refused(
            "must stay as it is",
            "split",
            "--force",
            "--players-file",
            players.toString(),
            "--limits",
            limits.toString(),
            option,
            input.toString());
      }
    }
  }

  @Test
  void score_and_plan_go_into_two_files() throws IOException {
    Files.createSymbolicLink(at("link"), Path.of("both"));
    for (String other : List.of("both", "link", "limits/../both")) {
      refused(
          "is the same file as",
          "split",
          "--force",
          "-o",
          at("both").toString(),
          "--plan",
          at(other).toString());
    }
    refused("must stay as it is", "split", "--in-place", "--plan", score.toString());
  }

  @Test
  void timeline_sheet_and_sound_go_into_files_of_their_own() throws IOException {
    refused(
        "is the same file as",
        "preview",
        "--timeline",
        at("a.pdf").toString(),
        "--sheet",
        at("./a.pdf").toString());
    Path pdf = Files.createSymbolicLink(at("score.pdf"), Path.of("score.musicxml"));
    Path wav = Files.createLink(at("score.wav"), score);
    refused("must stay as it is", "preview", "--force", "--timeline", pdf.toString());
    refused("must stay as it is", "preview", "--force", "--sheet", pdf.toString());
    refused("must stay as it is", "preview", "--force", "--sound", wav.toString());
  }

  @Test
  void a_kept_plan_and_its_score_are_not_drawn_over() throws IOException {
    Path plan = at("plan.json");
    assertEquals(0, run("split", "--plan", plan.toString()).exitCode());
    for (Path input : List.of(plan, score)) {
      byte[] before = Files.readAllBytes(input);
      Path link = Files.createSymbolicLink(at(input.getFileName() + ".svg"), input);
      Ran ran = Ran.command("preview", plan.toString(), "--force", "--timeline", link.toString());
      assertEquals(3, ran.exitCode(), ran.err());
      assertTrue(ran.err().contains("must stay as it is"), ran.err());
      assertArrayEquals(before, Files.readAllBytes(input));
    }
  }

  @Test
  void a_place_that_cannot_be_written_is_told_before_the_search() throws IOException {
    refused("there is no folder", "split", "-o", at("no/x.musicxml").toString());
    refused("there is no folder", "split", "--plan", at("no/x.json").toString());
    refused("is no folder", "thin", "-o", score.resolve("x").toString());
    refused("is a folder", "split", "--force", "-o", folder.toString());
    refused("there is no folder", "preview", "--timeline", at("no/x.svg").toString());
    refused("there is no folder", "preview", "--sheet", at("no/x.pdf").toString());
    refused("there is no folder", "preview", "--sound", at("no/x.mid").toString());
    refused(
        "exists already; name another file (or replace it with --force)",
        "split",
        "--plan",
        Files.createFile(at("p")).toString());
  }

  @Test
  void a_link_is_followed_and_nothing_else_is_left_in_the_folder() throws IOException {
    Path target = Files.writeString(at("target.musicxml"), "old");
    Path link = Files.createSymbolicLink(at("link.musicxml"), Path.of("target.musicxml"));
    long before = count();
    assertEquals(0, run("split", "--force", "-o", link.toString()).exitCode());
    assertTrue(Files.isSymbolicLink(link));
    assertTrue(Files.readString(target).contains("Flute 1"));
    assertEquals(before, count());
  }

  private long count() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.count();
    }
  }
}
