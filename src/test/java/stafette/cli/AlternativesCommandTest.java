package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.plan.Favour;

/** The choices that {@code split} offers, from the command line to the written score. */
class AlternativesCommandTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void the_table_has_a_column_for_each_alternative_and_says_what_differs() {
    Ran ran = split("--alternatives", "5");
    assertEquals(0, ran.exitCode(), ran.err());
    String table = ran.out().substring(ran.out().indexOf("Side by side"));
    assertTrue(table.contains("favours                balance        fewest handoffs"), table);
    assertTrue(table.contains("least strain"), table);
    assertTrue(table.contains("1  fewest handoffs: 1 handoff fewer"), table);
    assertTrue(table.contains("-  closest blend: nearly the same as the plan"), table);
  }

  @Test
  void without_the_option_nothing_is_said_of_alternatives() {
    Ran ran = split();
    assertFalse(ran.out().contains("Side by side"), ran.out());
    assertFalse(split("--json").out().contains("alternatives"));
  }

  @Test
  void an_alternative_that_is_taken_is_written_as_if_it_had_been_asked_for() throws IOException {
    Path taken = folder.resolve("taken.musicxml");
    Path asked = folder.resolve("asked.musicxml");
    Path takenPlan = folder.resolve("taken.json");
    Path askedPlan = folder.resolve("asked.json");
    Ran ran = split("--take", "1", "-o", taken.toString(), "--plan", takenPlan.toString());
    assertEquals(0, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("Taken      alternative 1, fewest handoffs"), ran.out());
    split("--favour", "handoffs", "-o", asked.toString(), "--plan", askedPlan.toString());
    assertArrayEquals(Files.readAllBytes(asked), Files.readAllBytes(taken));
    JsonObject kept = JsonParser.parseString(Files.readString(takenPlan)).getAsJsonObject();
    JsonObject wanted = JsonParser.parseString(Files.readString(askedPlan)).getAsJsonObject();
    kept.remove("searchSeconds");
    wanted.remove("searchSeconds");
    assertEquals(wanted, kept);
  }

  @Test
  void the_json_has_alternatives_with_costs_that_add_up() {
    Ran ran = split("--alternatives", "2", "--take", "2", "--json");
    JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
    JsonArray alternatives = json.getAsJsonArray("alternatives");
    assertEquals(2, alternatives.size());
    assertEquals(2, json.get("taken").getAsInt());
    for (JsonElement one : alternatives) {
      JsonObject alternative = one.getAsJsonObject();
      int cost =
          alternative.getAsJsonObject("weights").get("used").getAsInt()
              * alternative.getAsJsonArray("players").size();
      cost += parts(alternative.getAsJsonArray("segments"));
      cost += parts(alternative.getAsJsonArray("handoffs"));
      assertEquals(alternative.get("cost").getAsInt(), cost);
      assertEquals("optimal", alternative.get("result").getAsString());
      assertTrue(alternative.get("costByPlan").getAsInt() >= json.get("cost").getAsInt());
    }
  }

  private static int parts(JsonArray entries) {
    int sum = 0;
    for (JsonElement entry : entries) {
      for (var part : entry.getAsJsonObject().getAsJsonObject("cost").entrySet()) {
        sum += part.getValue().getAsInt();
      }
    }
    return sum;
  }

  @Test
  void an_alternative_that_is_not_there_is_refused_and_nothing_is_written() {
    Path out = folder.resolve("none.musicxml");
    Ran ran = split("--take", "5", "-o", out.toString());
    assertEquals(2, ran.exitCode());
    assertTrue(ran.err().contains("there is no alternative 5: only 2 found"), ran.err());
    assertFalse(Files.exists(out));
    Ran json = split("--take", "5", "--json");
    assertFalse(JsonParser.parseString(json.out()).getAsJsonObject().has("taken"));
  }

  @Test
  void numbers_that_name_no_alternative_are_wrong_use() {
    assertEquals(2, split("--take", "3", "--alternatives", "2").exitCode());
    assertEquals(2, split("--take", "6").exitCode());
    assertEquals(2, split("--take", "-1").exitCode());
    assertEquals(2, split("--alternatives", "-1").exitCode());
  }

  @Test
  void every_favour_has_its_plan_and_the_json_says_which() {
    for (Favour favour : Favour.values()) {
      String name = favour.name().toLowerCase(Locale.ROOT);
      Ran ran = split("--favour", name, "--json");
      assertEquals(0, ran.exitCode(), ran.err());
      JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
      assertEquals(name, json.getAsJsonObject("settings").get("favour").getAsString());
      assertEquals("optimal", json.get("result").getAsString());
    }
  }

  @Test
  void a_regular_rotation_is_opened_again_as_it_was() {
    Path plan = folder.resolve("regular.json");
    split("--favour", "regular", "--plan", plan.toString());
    Ran shown = Ran.command("preview", plan.toString());
    assertEquals(0, shown.exitCode(), shown.err());
    assertTrue(shown.out().contains("double tonguing  15.1  16.4"), shown.out());
  }

  /** At a tempo at which two alternatives differ from the plan. */
  private static Ran split(String... more) {
    return LanternRun.run(
        "split",
        Stream.concat(Stream.of("--tempo", "102"), Stream.of(more)).toArray(String[]::new));
  }
}
