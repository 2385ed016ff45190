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
  private static final Path HILL = Path.of("samples/signal-hill.musicxml");

  @TempDir private Path folder = Path.of("");

  @Test
  void a_line_is_thinned_and_written_and_a_second_run_changes_nothing() throws IOException {
    byte[] before = Files.readAllBytes(LanternRun.FILE);
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    Ran first = lantern(LanternRun.FILE, "Trumpet 1, Clarinet 1", "-o", once.toString());
    assertEquals(0, first.exitCode(), first.err());
    assertTrue(
        first.out().contains("Trumpet 1, double tonguing, single tonguing: keeps "), first.out());
    assertTrue(first.out().contains("two for three"), first.out());
    assertTrue(first.out().contains("Clarinet 1: new part"), first.out());
    Ran second = lantern(once, "Trumpet 1, Clarinet 1", "-o", twice.toString());
    assertTrue(second.out().contains("nothing changed"), second.out());
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
    assertArrayEquals(before, Files.readAllBytes(LanternRun.FILE));
  }

  @Test
  void patterns_change_at_phrases_and_no_single_bar_is_a_hole() {
    String out = lantern(LanternRun.FILE, "Clarinet 1", "--time", "600").out();
    assertTrue(
        out.contains(
            """
            Clarinet 1, single tonguing: keeps 165 of 283 notes; rate 81 %, tired 5 %, breath 95 %
              from  to                notes  kept  pattern
              5.1   13.4, last sixth  216    144   two for three
              14.1  15.4, last sixth  48     8     beats
              16.1  16.4              19     13    without the middle of each triplet
            """),
        out);
  }

  @Test
  void a_player_keeps_clear_of_what_its_own_part_has() throws IOException {
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    Ran first = hill("Clarinet 1", HILL, once);
    assertEquals(0, first.exitCode(), first.err());
    assertTrue(first.out().contains("Clarinet 1: plays in bars "), first.out());
    hill("Clarinet 1", once, twice);
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
  }

  @Test
  void a_part_that_can_be_played_as_it_is_stays_byte_for_byte() throws IOException {
    Path out = folder.resolve("same.musicxml");
    Ran ran = hill("Trumpet 1", HILL, out);
    assertEquals(0, ran.exitCode(), ran.err());
    assertArrayEquals(Files.readAllBytes(HILL), Files.readAllBytes(out));
  }

  @Test
  void the_json_tells_the_pattern_of_each_stretch() {
    Ran ran = lantern(LanternRun.FILE, "Trumpet 1", "--json");
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
    Ran ran = lantern(LanternRun.FILE, "Tuba", "--tone", "top", "-o", out.toString());
    assertEquals(1, ran.exitCode(), ran.out() + ran.err());
    assertTrue(ran.out().contains("Tuba can keep nothing of it"), ran.out());
    assertArrayEquals(Files.readAllBytes(LanternRun.FILE), Files.readAllBytes(out));
  }

  @Test
  void a_relay_is_coloured_in_the_same_run_and_a_second_one_changes_nothing() throws IOException {
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    Ran first = colour(LanternRun.FILE, "Trumpet 1", "-o", once.toString());
    assertEquals(0, first.exitCode(), first.err());
    assertTrue(
        first.out().contains("Trumpet 1, double tonguing, single tonguing: keeps "), first.out());
    assertTrue(first.out().contains("Trumpet 1: new part"), first.out());
    assertTrue(first.out().contains("Flute 2: new part"), first.out());
    Ran second = colour(once, "Trumpet 1", "-o", twice.toString());
    assertTrue(second.out().contains("nothing changed"), second.out());
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
  }

  @Test
  void beside_the_json_of_a_relay_its_colour_is_talk() {
    Ran ran = colour(LanternRun.FILE, "Trumpet 1", "--json");
    assertEquals(
        "stafette-plan",
        JsonParser.parseString(ran.out()).getAsJsonObject().get("format").getAsString());
    assertTrue(
        ran.err().contains("Trumpet 1, double tonguing, single tonguing: keeps "), ran.err());
  }

  @Test
  void players_of_the_relay_and_of_the_line_do_not_colour_it() {
    Path out = folder.resolve("none.musicxml");
    Ran twice = colour(LanternRun.FILE, "Flute 2", "-o", out.toString());
    assertEquals(2, twice.exitCode());
    assertTrue(
        twice
            .err()
            .contains(
                "Flute 2 is to colour the line (--colour) and is one of its players (--players)"),
        twice.err());
    Ran own = colour(LanternRun.FILE, "Piano", "-o", out.toString());
    assertEquals(2, own.exitCode());
    assertTrue(own.err().contains("it is Piano's own"), own.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void a_search_that_is_out_of_time_is_told_beside_data_too_and_claims_nothing() {
    Ran ran = lantern(LanternRun.FILE, "Trumpet 1", "--time", "0.001", "--json");
    assertTrue(ran.err().contains("Trumpet 1: the search was stopped"), ran.err());
    assertTrue(JsonParser.parseString(ran.out()).isJsonObject());
    Ran talk = lantern(LanternRun.FILE, "Trumpet 1", "--time", "0.001");
    assertFalse(talk.out().contains("can keep nothing"), talk.out());
  }

  @Test
  void players_who_are_alike_keep_the_same() {
    String out = lantern(LanternRun.FILE, "Flute 1, Flute 2", "--time", "600").out();
    int second = out.indexOf("Flute 2, ");
    String one = out.substring(out.indexOf("Flute 1, "), second);
    assertTrue(out.substring(second).startsWith(one.replace("Flute 1", "Flute 2").strip()), out);
  }

  @Test
  void without_players_it_asks_for_them() {
    Ran ran = Ran.command("thin", LanternRun.FILE.toString(), "--part", "Piano");
    assertEquals(2, ran.exitCode());
    assertTrue(ran.err().contains("--players"), ran.err());
  }

  private static Ran lantern(Path score, String players, String... more) {
    return LanternRun.run("thin", score, "5-16", players, more);
  }

  private static Ran colour(Path score, String colour, String... more) {
    List<String> all = new ArrayList<>(List.of("--colour", colour));
    all.addAll(Arrays.asList(more));
    return LanternRun.run("split", score, "5-16", "Flute 1, Flute 2", all.toArray(String[]::new));
  }

  private static Ran hill(String players, Path score, Path out) {
    return Ran.command(
        "thin",
        score.toString(),
        "--part",
        "Trumpet 1",
        "--bars",
        "9-20",
        "--players",
        players,
        "-o",
        out.toString());
  }
}
