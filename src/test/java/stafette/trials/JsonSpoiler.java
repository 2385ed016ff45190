package stafette.trials;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.List;

/** Spoils JSON: values of another kind, members that are gone, numbers that can't be. */
final class JsonSpoiler {
  private static final List<String> LITERALS =
      List.of(
          "0",
          "-1",
          "1",
          "0.5",
          "1e400",
          "-1e400",
          "1e308",
          "1E-400",
          "2147483647",
          "2147483648",
          "9007199254740993",
          "99999999999999999999",
          "true",
          "null",
          "[]",
          "{}",
          "\"\"",
          "\"x\"",
          "NaN",
          "[[[[]]]]");

  private final Dice dice;
  private final List<JsonElement> holders = new ArrayList<>();

  private JsonSpoiler(Dice dice) {
    this.dice = dice;
  }

  static String spoilt(String text, int places, Dice dice) {
    JsonElement root = JsonParser.parseString(text);
    for (int i = 0; i < places; i++) {
      new JsonSpoiler(dice).once(root);
    }
    String whole = root.toString();
    return dice.in100(85) ? whole : cut(whole, dice);
  }

  private static String cut(String text, Dice dice) {
    int at = dice.between(0, text.length());
    return switch (dice.between(0, 4)) {
      case 0 -> text.substring(0, at);
      case 1 -> text.substring(0, at) + Odd.any(dice) + text.substring(at);
      case 2 -> "{" + "\"a\":[".repeat(dice.of(10, 3000)) + text;
      case 3 -> text + text;
      default -> text.substring(0, at) + text.substring(Math.min(text.length(), at + 3));
    };
  }

  private void once(JsonElement root) {
    collect(root);
    if (holders.isEmpty()) {
      return;
    }
    JsonElement holder = dice.of(holders);
    if (holder instanceof JsonObject object) {
      member(object);
    } else if (holder instanceof JsonArray array) {
      item(array);
    }
  }

  private void collect(JsonElement element) {
    if (element instanceof JsonObject object) {
      holders.add(object);
      object.entrySet().forEach(entry -> collect(entry.getValue()));
    } else if (element instanceof JsonArray array) {
      holders.add(array);
      array.forEach(this::collect);
    }
  }

  private void member(JsonObject object) {
    List<String> names = new ArrayList<>(object.keySet());
    if (names.isEmpty()) {
      return;
    }
    String name = dice.of(names);
    switch (dice.between(0, 5)) {
      case 0 -> object.remove(name);
      case 1 -> object.add(Odd.text(dice), object.get(name));
      case 2 -> object.add(name, object.get(dice.of(names)).deepCopy());
      default -> object.add(name, other(object.get(name)));
    }
  }

  private void item(JsonArray array) {
    int at = array.isEmpty() ? 0 : dice.between(0, array.size() - 1);
    switch (array.isEmpty() ? 0 : dice.between(0, 3)) {
      case 0 -> array.add(other(JsonNull.INSTANCE));
      case 1 -> array.remove(at);
      case 2 -> array.add(array.get(at).deepCopy());
      default -> array.set(at, other(array.get(at)));
    }
  }

  private JsonElement other(JsonElement old) {
    if (old instanceof JsonPrimitive primitive && primitive.isNumber() && dice.in100(50)) {
      double value = primitive.getAsDouble();
      return new JsonPrimitive(dice.of(-value, value * 1000, value + 1, value - 1, value / 3, 0.0));
    }
    if (old instanceof JsonPrimitive primitive && primitive.isString() && dice.in100(50)) {
      return new JsonPrimitive(Odd.any(dice));
    }
    return JsonParser.parseString(dice.of(LITERALS));
  }
}
