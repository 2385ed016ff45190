package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command preview, printing data. */
class PreviewJsonTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void the_json_of_a_preview_is_that_of_a_split() throws IOException {
    Path score = sample();
    assertEquals(json(line("split", score)), json(line("preview", score)));
  }

  @Test
  void a_plan_kept_in_a_file_gives_the_same_json_again() throws IOException {
    Path score = sample();
    Path plan = kept(score);
    JsonObject again = json("preview", plan.toString());
    assertEquals("optimal", again.get("result").getAsString());
    assertEquals(withoutPlace(json(line("split", score))), withoutPlace(again));
  }

  @Test
  void nothing_is_proven_for_a_kept_plan_whose_score_has_changed() throws IOException {
    Path score = sample();
    Path plan = kept(score);
    Files.writeString(score, Files.readString(score) + "\n");
    JsonObject again = json("preview", plan.toString());
    assertEquals("stopped", again.get("result").getAsString());
    assertEquals(0, again.get("bound").getAsInt());
  }

  @Test
  void a_picture_beside_json_is_told_on_the_error_stream() throws IOException {
    Path picture = folder.resolve("a.svg");
    Ran ran = Ran.command(line("preview", sample(), "--json", "--timeline", picture.toString()));
    assertTrue(JsonParser.parseString(ran.out()).isJsonObject());
    assertTrue(ran.err().contains("Drawn      " + picture), ran.err());
    assertTrue(Files.exists(picture));
  }

  private Path sample() throws IOException {
    Path score = folder.resolve("lantern.musicxml");
    return Files.copy(Path.of("samples/lantern-run.musicxml"), score);
  }

  private Path kept(Path score) {
    Path plan = folder.resolve("plan.json");
    Ran ran = Ran.command(line("split", score, "--plan", plan.toString()));
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    return plan;
  }

  private static String[] line(String command, Path score, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of(command, score.toString(), "--part", "Piano", "--staff", "1", "--bars"));
    args.addAll(List.of("5-8", "--players", "Flute 1, Flute 2"));
    args.addAll(List.of(more));
    return args.toArray(String[]::new);
  }

  /** What a command prints, without how long the search took. */
  private static JsonObject json(String... command) {
    List<String> args = new ArrayList<>(List.of(command));
    args.add("--json");
    Ran ran = Ran.command(args.toArray(String[]::new));
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
    json.remove("searchSeconds");
    return json;
  }

  private static JsonObject withoutPlace(JsonObject json) {
    json.getAsJsonObject("score").remove("file");
    return json;
  }
}
