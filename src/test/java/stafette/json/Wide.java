package stafette.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** JSON for people to read: what fits into a line stands in one. */
final class Wide {
  private static final int WIDTH = 160;

  private Wide() {}

  static String text(JsonElement json) {
    return text(json, "\n", 0) + "\n";
  }

  /**
   * @param newLine a line's end and the blanks before the next one
   * @param before how much stands in the line already
   */
  private static String text(JsonElement json, String newLine, int before) {
    String flat = flat(json);
    String deeper = newLine + "  ";
    if (json instanceof JsonPrimitive || before + flat.length() < WIDTH) {
      return flat;
    }
    if (json instanceof JsonObject object) {
      return object.asMap().entrySet().stream()
          .map(
              member -> {
                String name = new JsonPrimitive(member.getKey()) + ": ";
                return name + text(member.getValue(), deeper, deeper.length() + name.length());
              })
          .collect(Collectors.joining("," + deeper, "{" + deeper, newLine + "}"));
    }
    return "[" + deeper + items((JsonArray) json, deeper) + newLine + "]";
  }

  /** As many short ones in a line as it takes. */
  private static String items(JsonArray items, String newLine) {
    StringBuilder text = new StringBuilder();
    int before = newLine.length();
    for (JsonElement item : items) {
      String next = text(item, newLine, newLine.length());
      boolean fits = item instanceof JsonPrimitive && before + next.length() < WIDTH;
      text.append(text.isEmpty() ? "" : fits ? ", " : "," + newLine).append(next);
      before = (fits ? before + 2 : newLine.length()) + next.length();
    }
    return text.toString();
  }

  private static String flat(JsonElement json) {
    if (json instanceof JsonObject object) {
      return object.asMap().entrySet().stream()
          .map(member -> new JsonPrimitive(member.getKey()) + ": " + flat(member.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return json instanceof JsonArray array
        ? StreamSupport.stream(array.spliterator(), false)
            .map(Wide::flat)
            .collect(Collectors.joining(", ", "[", "]"))
        : json.toString();
  }
}
