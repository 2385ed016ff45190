package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Background parts, from the command line to the written score. */
class ThinCommandTest {
  private static final Path LANTERN = Path.of("samples/lantern-run.musicxml");
  private static final Path HILL = Path.of("samples/signal-hill.musicxml");

  @TempDir private Path folder = Path.of("");

  @Test
  void a_line_is_thinned_and_written_and_a_second_run_changes_nothing() throws IOException {
    byte[] before = Files.readAllBytes(LANTERN);
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    Ran first = lantern(LANTERN, "Trumpet 1, Clarinet 1", "-o", once.toString());
    assertEquals(0, first.exitCode(), first.err());
    assertTrue(first.out().contains("Trumpet 1, double tonguing: keeps "), first.out());
    assertTrue(first.out().contains("two for three"), first.out());
    assertTrue(first.out().contains("Clarinet 1: new part"), first.out());
    Ran second = lantern(once, "Trumpet 1, Clarinet 1", "-o", twice.toString());
    assertTrue(second.out().contains("nothing changed"), second.out());
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
    assertArrayEquals(before, Files.readAllBytes(LANTERN));
  }

  @Test
  void a_player_keeps_clear_of_what_its_own_part_has() throws IOException {
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    Ran first = hill(HILL, "Clarinet 1", "-o", once.toString());
    assertEquals(0, first.exitCode(), first.err());
    assertTrue(first.out().contains("Clarinet 1: plays in bars "), first.out());
    hill(once, "Clarinet 1", "-o", twice.toString());
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
  }

  @Test
  void a_part_that_can_be_played_as_it_is_stays_byte_for_byte() throws IOException {
    Path out = folder.resolve("same.musicxml");
    Ran ran = hill(HILL, "Trumpet 1", "-o", out.toString());
    assertEquals(0, ran.exitCode(), ran.err());
    assertArrayEquals(Files.readAllBytes(HILL), Files.readAllBytes(out));
  }

  @Test
  void the_json_tells_the_pattern_of_each_stretch() {
    Ran ran = lantern(LANTERN, "Trumpet 1", "--json");
    assertEquals(0, ran.exitCode(), ran.err());
    JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
    assertEquals("stafette-thinning", json.get("format").getAsString());
    JsonObject player = json.getAsJsonArray("players").get(0).getAsJsonObject();
    int kept = 0;
    int next = 0;
    for (JsonElement each : player.getAsJsonArray("stretches")) {
      JsonObject stretch = each.getAsJsonObject();
      assertEquals(next, stretch.get("first").getAsInt());
      next = stretch.get("last").getAsInt() + 1;
      kept += stretch.get("kept").getAsInt();
    }
    assertEquals(player.get("strokes").getAsInt(), next);
    assertEquals(player.get("kept").getAsInt(), kept);
  }

  @Test
  void who_can_keep_nothing_is_a_finding_and_is_left_as_it_is() throws IOException {
    Path out = folder.resolve("out.musicxml");
    Ran ran = lantern(LANTERN, "Tuba", "--tone", "top", "-o", out.toString());
    assertEquals(1, ran.exitCode(), ran.out() + ran.err());
    assertTrue(ran.out().contains("Tuba can keep nothing of it"), ran.out());
    assertArrayEquals(Files.readAllBytes(LANTERN), Files.readAllBytes(out));
  }

  @Test
  void a_relay_is_coloured_in_the_same_run_and_a_second_one_changes_nothing() throws IOException {
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    Ran first = colour(LANTERN, "Trumpet 1", "-o", once.toString());
    assertEquals(0, first.exitCode(), first.err());
    assertTrue(first.out().contains("Trumpet 1, double tonguing: keeps "), first.out());
    assertTrue(first.out().contains("Trumpet 1: new part"), first.out());
    assertTrue(first.out().contains("Flute 2: new part"), first.out());
    Ran second = colour(once, "Trumpet 1", "-o", twice.toString());
    assertTrue(second.out().contains("nothing changed"), second.out());
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
  }

  @Test
  void beside_the_json_of_a_relay_its_colour_is_talk() {
    Ran ran = colour(LANTERN, "Trumpet 1", "--json");
    assertEquals(
        "stafette-plan",
        JsonParser.parseString(ran.out()).getAsJsonObject().get("format").getAsString());
    assertTrue(ran.err().contains("Trumpet 1, double tonguing: keeps "), ran.err());
  }

  @Test
  void players_of_the_relay_and_of_the_line_do_not_colour_it() {
    Path out = folder.resolve("none.musicxml");
    Ran twice = colour(LANTERN, "Flute 2", "-o", out.toString());
    assertEquals(2, twice.exitCode());
    assertTrue(twice.err().contains("Flute 2 is one of --players already"), twice.err());
    Ran own = colour(LANTERN, "Piano", "-o", out.toString());
    assertEquals(2, own.exitCode());
    assertTrue(own.err().contains("the line is Piano's own"), own.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void without_players_it_asks_for_them() {
    Ran ran = Ran.command("thin", LANTERN.toString(), "--part", "Piano");
    assertEquals(2, ran.exitCode());
    assertTrue(ran.err().contains("--players"), ran.err());
  }

  private static Ran lantern(Path score, String players, String... more) {
    return run("thin", score, "Piano", "5-16", players, more);
  }

  private static Ran hill(Path score, String players, String... more) {
    return run("thin", score, "Trumpet 1", "9-20", players, more);
  }

  private static Ran colour(Path score, String colour, String... more) {
    List<String> all = new ArrayList<>(List.of("--colour", colour));
    all.addAll(Arrays.asList(more));
    return run("split", score, "Piano", "5-16", "Flute 1, Flute 2", all.toArray(String[]::new));
  }

  private static Ran run(
      String command, Path score, String part, String bars, String players, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of(
                command,
                score.toString(),
                "--part",
                part,
                "--staff",
                "1",
                "--bars",
                bars,
                "--players",
                players));
    args.addAll(Arrays.asList(more));
    return Ran.command(args.toArray(String[]::new));
  }
}
