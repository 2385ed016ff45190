package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Twelve bars of sextuplets for two flutes, at tempi at which not all that is asked holds. */
class NearestPlanCommandTest {
  private static final String TOO_FAST_FOR_84 = "116";

  @TempDir private Path folder = Path.of("");

  @Test
  void where_no_plan_holds_for_the_share_asked_for_the_nearest_is_told_and_written() {
    Path out = folder.resolve("nearest.musicxml");
    Ran ran = split(TOO_FAST_FOR_84, "-o", out.toString());
    assertEquals(Commands.FINDINGS, ran.exitCode(), ran.err());
    assertTrue(
        ran.out()
            .contains("Nearest    no plan that 84 of 100 manage; this is the nearest: about 80"),
        ran.out());
    assertTrue(ran.out().contains("Turns      Flute 1, 2 in turn"), ran.out());
    assertTrue(ran.out().contains("No plan was found that 84 of 100 manage:"), ran.out());
    assertTrue(ran.out().contains("this plan does not leave 3 % of the tempo"), ran.out());
    assertTrue(ran.out().contains("  --tempo "), ran.out());
    assertTrue(Files.exists(out));
  }

  @Test
  void data_tell_what_was_asked_and_what_was_reached() {
    JsonObject json = json(split(TOO_FAST_FOR_84, "--json"));
    assertEquals("nearest", json.get("result").getAsString());
    assertEquals(84, json.get("share").getAsDouble());
    assertTrue(json.get("reached").getAsDouble() >= 80);
    assertEquals(3, json.get("marginAsked").getAsDouble());
    JsonObject settings = json.getAsJsonObject("settings");
    assertEquals(80, settings.get("assurance").getAsDouble());
    assertEquals(0, settings.get("margin").getAsDouble());
    assertFalse(json.getAsJsonArray("findings").isEmpty());
    assertFalse(json.getAsJsonArray("remedies").isEmpty());
  }

  @Test
  void a_plan_without_reserve_comes_before_one_for_a_lower_share_and_says_so() {
    String tight = "112";
    Ran ran = split(tight);
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertFalse(ran.out().contains("Nearest"), ran.out());
    assertTrue(ran.out().contains("this plan does not leave 3 % of the tempo"), ran.out());
    assertEquals(
        0, json(split(tight, "--json")).getAsJsonObject("settings").get("margin").getAsInt());
    Ran content = split(tight, "--margin", "1");
    assertFalse(content.out().contains("this plan does not leave"), content.out());
  }

  @Test
  void the_rotation_that_is_preferred_is_told_with_what_the_cheapest_would_cost() {
    JsonObject json = json(split("104", "--json"));
    JsonObject rotation = json.getAsJsonObject("rotation");
    assertEquals("2 bars", rotation.get("unit").getAsString());
    assertEquals(json.get("bound").getAsInt(), rotation.get("cheapest").getAsInt());
    assertTrue(
        json.get("cost").getAsInt()
            <= rotation.get("cheapest").getAsInt() + rotation.get("limit").getAsInt());
    assertEquals("optimal", json.get("result").getAsString());
  }

  @Test
  void a_kept_nearest_plan_is_opened_as_it_was() {
    Path plan = folder.resolve("nearest.json");
    split(TOO_FAST_FOR_84, "--plan", plan.toString());
    Ran opened = Ran.command("preview", plan.toString());
    assertEquals(Commands.FINE, opened.exitCode(), opened.err() + opened.out());
    assertTrue(opened.out().contains("about 80 of 100 manage the hardest part"), opened.out());
  }

  private static Ran split(String tempo, String... more) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "split",
                "samples/lantern-run.musicxml",
                "--part",
                "Piano",
                "--staff",
                "1",
                "--bars",
                "5-16",
                "--players",
                "Flute 1, Flute 2",
                "--tempo",
                tempo));
    words.addAll(Arrays.asList(more));
    return Ran.command(words.toArray(String[]::new));
  }

  private static JsonObject json(Ran ran) {
    return JsonParser.parseString(ran.out()).getAsJsonObject();
  }
}
