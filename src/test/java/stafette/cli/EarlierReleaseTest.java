package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans that an earlier release kept, with one technique for each segment. */
class EarlierReleaseTest {
  private static final List<String> NEW_WEIGHTS =
      List.of("spent", "tiredKnee", "breathKnee", "phrase", "short");

  @TempDir private Path folder = Path.of("");

  /** The plan of the first sample as version 1 had it. */
  private Path kept() throws IOException {
    Path plan = folder.resolve("plan.json");
    assertEquals(Commands.FINE, LanternRun.run("split", "--plan", plan.toString()).exitCode());
    JsonObject json = JsonParser.parseString(Files.readString(plan)).getAsJsonObject();
    json.addProperty("version", 1);
    for (JsonElement each : json.getAsJsonArray("segments")) {
      each.getAsJsonObject().remove("way");
      each.getAsJsonObject().remove("techniques");
      each.getAsJsonObject().addProperty("technique", "double tonguing");
    }
    JsonObject weights = json.getAsJsonObject("settings").getAsJsonObject("weights");
    NEW_WEIGHTS.forEach(weights::remove);
    weights.addProperty("end", 40);
    return Files.writeString(plan, json.toString());
  }

  @Test
  void it_opens_with_its_turns_under_the_limits_and_weights_in_force() throws IOException {
    String turns = LanternRun.run("preview").out().replaceAll("(?s).*(  player .*?)\n\n.*", "$1");
    Ran ran = Ran.command("preview", kept().toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.err().contains("was kept by an earlier release"), ran.err());
    assertTrue(ran.out().contains(turns), ran.out());
  }

  @Test
  void what_was_proven_then_is_not_claimed_now() throws IOException {
    JsonObject json =
        JsonParser.parseString(Ran.command("preview", kept().toString(), "--json").out())
            .getAsJsonObject();
    assertEquals(2, json.get("version").getAsInt());
    assertEquals("stopped", json.get("result").getAsString());
    assertEquals(
        120, json.getAsJsonObject("settings").getAsJsonObject("weights").get("spent").getAsInt());
  }

  @Test
  void a_tempo_that_the_score_does_not_state_is_told_in_the_plan() throws IOException {
    String score = Files.readString(LanternRun.FILE);
    Path silent = folder.resolve("silent.musicxml");
    Files.writeString(
        silent,
        score
            .replaceAll("(?s)<metronome.*?</metronome>", "<words>Allegro</words>")
            .replaceAll("<sound tempo=\"[0-9.]*\"/>", ""));
    Ran stated = LanternRun.run("split", "--json");
    assertTrue(stated.out().contains("\"tempoAssumed\": false"), stated.out());
    Ran assumed = LanternRun.run("split", silent, "5-7", "Flute 1, Flute 2, Flute 3", "--json");
    assertTrue(assumed.out().contains("\"tempoAssumed\": true"), assumed.err());
  }
}
