package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.Thinning;
import stafette.limits.Range;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Tremolo;
import stafette.split.thin.Thinner;

/** Background parts written down. */
class ThinningJsonTest {
  private static final Line LINE = Invented.line(2, 4, 120);
  private static final Player SLOW =
      Invented.player("Slow", Invented.instrument("reed"), 5, 5, 10, 8);
  private static final Player LOW =
      Invented.player(
          "Low", Invented.instrument("tube", new Range(20, 50), Optional.empty()), 12, 10, 10, 8);

  @Test
  void a_thinning_is_valid_by_its_schema() {
    Schemas.assertValid("thinning", json(SLOW, LOW));
    Schemas.assertValid("thinning", json());
  }

  @Test
  void a_stretch_tells_its_pattern_and_its_places() {
    JsonObject player = player(SLOW);
    assertEquals("tonguing", player.get("technique").getAsString());
    assertEquals(16, player.get("kept").getAsInt());
    assertEquals(0.8, player.get("use").getAsDouble());
    JsonArray stretches = player.getAsJsonArray("stretches");
    assertEquals(1, stretches.size());
    JsonObject only = stretches.get(0).getAsJsonObject();
    assertEquals(Thinning.HALF.text(), only.get("pattern").getAsString());
    assertEquals("4+3/4", only.getAsJsonObject("to").get("beat").getAsString());
  }

  @Test
  void who_keeps_nothing_has_no_technique() {
    JsonObject player = player(LOW);
    assertTrue(player.get("technique").isJsonNull());
    assertEquals(0, player.get("kept").getAsInt());
  }

  private static JsonObject player(Player player) {
    return JsonParser.parseString(json(player))
        .getAsJsonObject()
        .getAsJsonArray("players")
        .get(0)
        .getAsJsonObject();
  }

  private static String json(Player... players) {
    List<ThinnedPart> parts =
        List.of(players).stream().map(p -> Thinner.thin(LINE, p, Invented.rules())).toList();
    return ThinningJson.of(
            ScoreFile.of("hill.musicxml", "0".repeat(64), Tremolo.AS_WRITTEN, false), LINE, parts)
        .text();
  }
}
