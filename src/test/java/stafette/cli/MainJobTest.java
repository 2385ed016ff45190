package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The main job on every sample, from the command line to the written score. */
class MainJobTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void every_sample_has_its_job_here() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("samples"))) {
      assertEquals(
          SampleJobs.ALL.stream().map(job -> job.get(0) + ".musicxml").sorted().toList(),
          files
              .map(file -> String.valueOf(file.getFileName()))
              .filter(n -> n.endsWith(".musicxml"))
              .sorted()
              .toList());
    }
  }

  @TestFactory
  Stream<DynamicTest> each_sample_is_checked_split_and_written_and_a_second_run_changes_nothing() {
    return SampleJobs.ALL.stream().map(job -> DynamicTest.dynamicTest(job.get(0), () -> run(job)));
  }

  private void run(List<String> job) throws IOException {
    Path sample = Path.of("samples", job.get(0) + ".musicxml");
    byte[] before = Files.readAllBytes(sample);
    Path once = folder.resolve(job.get(0) + "-1.musicxml");
    Path twice = folder.resolve(job.get(0) + "-2.musicxml");
    Ran first = split(sample, job, "-o", once.toString());
    assertEquals(0, first.exitCode(), first.err() + first.out());
    assertTrue(first.out().contains("no plan costs less"), first.out());
    assertTrue(first.out().contains("new part") || first.out().contains("plays in"), first.out());
    Ran second = split(once, job, "-o", twice.toString());
    assertEquals(0, second.exitCode(), second.err() + second.out());
    assertTrue(second.out().contains("nothing changed"), second.out());
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
    assertArrayEquals(before, Files.readAllBytes(sample));
  }

  @Test
  void a_line_that_was_taken_out_is_no_longer_there_to_split() throws IOException {
    Path sample = Path.of("samples/lantern-run.musicxml");
    Path once = folder.resolve("removed.musicxml");
    assertEquals(
        0,
        split(sample, SampleJobs.ALL.get(0), "--source", "remove", "-o", once.toString())
            .exitCode());
    Ran again =
        split(
            once,
            SampleJobs.ALL.get(0),
            "--source",
            "remove",
            "-o",
            folder.resolve("x.musicxml").toString());
    assertEquals(2, again.exitCode());
    assertTrue(again.err().contains("there is no line to take"), again.err());
  }

  @Test
  void a_line_that_was_cued_can_be_split_again_and_nothing_changes() throws IOException {
    Path sample = Path.of("samples/lantern-run.musicxml");
    Path once = folder.resolve("cued.musicxml");
    Path twice = folder.resolve("cued-2.musicxml");
    assertEquals(
        0,
        split(sample, SampleJobs.ALL.get(0), "--source", "cue", "-o", once.toString()).exitCode());
    assertEquals(
        0,
        split(once, SampleJobs.ALL.get(0), "--source", "cue", "-o", twice.toString()).exitCode());
    assertTrue(Files.readString(once).contains("<cue/>"));
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
  }

  @Test
  void a_plan_kept_in_a_file_is_shown_again_as_it_was() throws IOException {
    Path sample = folder.resolve("hill.musicxml");
    Files.copy(Path.of("samples/signal-hill.musicxml"), sample);
    Path plan = folder.resolve("hill.json");
    Ran ran = split(sample, SampleJobs.ALL.get(1), "--plan", plan.toString());
    assertEquals(0, ran.exitCode(), ran.err());
    Ran shown = Ran.command("preview", plan.toString());
    assertEquals(0, shown.exitCode(), shown.err() + shown.out());
    assertEquals(timeline(ran.out()), timeline(shown.out()));
    assertEquals("", shown.err());
  }

  @Test
  void a_plan_whose_score_has_changed_says_so() throws IOException {
    Path sample = folder.resolve("hill.musicxml");
    Files.copy(Path.of("samples/signal-hill.musicxml"), sample);
    Path plan = folder.resolve("hill.json");
    assertEquals(0, split(sample, SampleJobs.ALL.get(1), "--plan", plan.toString()).exitCode());
    Files.writeString(sample, Files.readString(sample) + "\n");
    assertTrue(
        Ran.command("preview", plan.toString())
            .err()
            .contains("has changed since the plan was made"));
  }

  @Test
  void the_preview_of_a_score_writes_nothing() throws IOException {
    Ran ran = command("preview", Path.of("samples/lantern-run.musicxml"), SampleJobs.ALL.get(0));
    assertEquals(0, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("Flute 1") && ran.out().contains("Tempo"), ran.out());
  }

  @Test
  void the_json_of_a_split_names_the_plan_and_nothing_else_stands_on_standard_output() {
    Ran ran = split(Path.of("samples/lantern-run.musicxml"), SampleJobs.ALL.get(0), "--json");
    JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
    assertEquals("stafette-plan", json.get("format").getAsString());
    assertEquals("optimal", json.get("result").getAsString());
    assertEquals(json.get("cost"), json.get("bound"));
    assertEquals(283, json.getAsJsonObject("line").getAsJsonArray("strokes").size());
  }

  @Test
  void a_measured_player_is_planned_with_the_figures_of_its_own() throws IOException {
    Path players = folder.resolve("players.json");
    Files.writeString(
        players,
        """
        {"format": "stafette-players", "version": 1, "players": [
          {"name": "Ada", "instrument": "flute", "techniques": [{"name": "double tonguing", "peak": 15, "sustained": 14}]},
          {"name": "Bo", "instrument": "flute", "techniques": [{"name": "double tonguing", "peak": 11.5, "sustained": 9}]}]}
        """);
    Ran ran =
        Ran.command(
            "split",
            "samples/lantern-run.musicxml",
            "--part",
            "Piano",
            "--staff",
            "1",
            "--bars",
            "5-16",
            "--players-file",
            players.toString(),
            "--json");
    assertEquals(0, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("\"peak\": 15"), ran.out().substring(0, 400));
  }

  @Test
  void a_player_plays_alone_just_what_it_says_to_manage() throws IOException {
    Ran just = alone("sextuplets at 104 for 12 bars");
    assertEquals(0, just.exitCode(), just.err());
    Ran less = alone("sextuplets at 104 for 11 bars");
    assertEquals(1, less.exitCode(), less.out());
    Ran wrong = alone("sextuplets for 12 bars");
    assertEquals(3, wrong.exitCode(), wrong.out());
    assertTrue(
        wrong
            .err()
            .contains(
                "players.json, player 1, technique 1, says: say the tempo, as in \"sixteenths at 132"
                    + " for 4 bars\""),
        wrong.err());
  }

  private Ran alone(String says) throws IOException {
    Path players = folder.resolve("players.json");
    Files.writeString(
        players,
        """
        {"format": "stafette-players", "version": 1, "players": [
          {"name": "Ada", "instrument": "flute", "breath": {"capacity": 60},
           "techniques": [{"name": "double tonguing", "says": "SAYS"}]}]}
        """
            .replace("SAYS", says));
    return Ran.command(
        "split",
        "samples/lantern-run.musicxml",
        "--part",
        "Piano",
        "--staff",
        "1",
        "--bars",
        "5-16",
        "--players-file",
        players.toString());
  }

  private static String timeline(String out) {
    return out.substring(out.indexOf("  player "), out.indexOf("Tempo "));
  }

  private static Ran split(Path score, List<String> job, String... more) {
    return command("split", score, job, more);
  }

  private static Ran command(String command, Path score, List<String> job, String... more) {
    List<String> args = new ArrayList<>(List.of(command, score.toString()));
    args.addAll(job.subList(1, job.size()));
    args.addAll(Arrays.asList(more));
    return Ran.command(args.toArray(String[]::new));
  }
}
