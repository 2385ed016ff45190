package stafette.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/**
 * Makes a plan file of version 1 one of version 2. There a segment had one technique; now its way
 * of playing is kept. Weights that were not there are zero: whoever opens such a plan takes those
 * in force.
 */
final class FirstEdition {
  private FirstEdition() {}

  /** The same plan; what does not have its place is left as it is, for the reader to tell. */
  static JsonObject upgraded(JsonObject plan) {
    JsonObject upgraded = plan.deepCopy();
    Set<List<String>> twins = twins(upgraded);
    Stream.of("segments", "locks")
        .flatMap(name -> objects(upgraded.get(name)))
        .forEach(each -> giveWay(each, twins));
    objects(upgraded.get("players")).forEach(player -> player.addProperty("named", true));
    if (upgraded.get("settings") instanceof JsonObject settings
        && settings.get("weights") instanceof JsonObject weights) {
      settings.addProperty("margin", 0);
      List.of(
              "spent",
              "tiredKnee",
              "breathKnee",
              "short",
              "used",
              "idle",
              "rotation",
              "patternChange")
          .forEach(name -> weights.addProperty(name, 0));
      JsonArray phrase = new JsonArray();
      List.of(0, 0, 0, 0).forEach(phrase::add);
      weights.add("phrase", phrase);
    }
    return upgraded;
  }

  private static void giveWay(JsonObject each, Set<List<String>> twins) {
    JsonElement technique = each.remove("technique");
    if (technique != null) {
      boolean onTwins = twins.contains(List.of(text(each.get("player")), text(technique)));
      each.addProperty("way", onTwins ? "twins" : "plain");
    }
  }

  /** Players with those of their techniques that take twin strings. */
  private static Set<List<String>> twins(JsonObject plan) {
    Set<List<String>> twins = new HashSet<>();
    objects(plan.get("players"))
        .forEach(
            player ->
                objects(player.get("techniques"))
                    .filter(each -> new JsonPrimitive(true).equals(each.get("twinStrings")))
                    .forEach(
                        each ->
                            twins.add(List.of(text(player.get("name")), text(each.get("name"))))));
    return twins;
  }

  private static Stream<JsonObject> objects(@Nullable JsonElement list) {
    return list instanceof JsonArray items
        ? StreamSupport.stream(items.spliterator(), false)
            .filter(JsonObject.class::isInstance)
            .map(JsonObject.class::cast)
        : Stream.of();
  }

  private static String text(@Nullable JsonElement element) {
    return element == null ? "" : Form.text(element).orElse("");
  }
}
