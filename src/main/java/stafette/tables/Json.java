package stafette.tables;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import stafette.limits.Range;
import stafette.time.BarBeat;

/** The small parts of which our JSON is made: plain numbers, members in a fixed order. */
final class Json {
  private static final Gson PRINTER =
      new GsonBuilder().setPrettyPrinting().serializeNulls().disableHtmlEscaping().create();
  private static final int DECIMALS = 6;

  /** Those that the printer leaves as they are. */
  private static final Pattern CONTROL =
      Pattern.compile("[\\x7f-\\x9f\\u202a-\\u202e\\u2066-\\u2069]");

  private Json() {}

  /**
   * The text of a document, two blanks a level, with a line end after its last line. Characters
   * that a terminal would take for orders are written by their numbers.
   */
  static String text(JsonElement document) {
    return CONTROL
            .matcher(PRINTER.toJson(document))
            .replaceAll(found -> "\\\\u%04x".formatted((int) found.group().charAt(0)))
        + "\n";
  }

  /** A number with up to six decimals; null where it is infinite. */
  static JsonElement number(double value) {
    return Double.isFinite(value)
        ? number(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP))
        : JsonNull.INSTANCE;
  }

  /** Thousandths as a number of ones. */
  static JsonElement milli(long thousandths) {
    return number(BigDecimal.valueOf(thousandths, 3));
  }

  /** Microseconds as seconds. */
  static JsonElement seconds(long micros) {
    return number(BigDecimal.valueOf(micros, DECIMALS));
  }

  static <T> JsonArray array(Collection<T> items, Function<T, JsonElement> translation) {
    JsonArray array = new JsonArray();
    items.forEach(item -> array.add(translation.apply(item)));
    return array;
  }

  static JsonArray words(Collection<String> words) {
    return array(words, JsonPrimitive::new);
  }

  static JsonArray numbers(Collection<Integer> numbers) {
    return array(numbers, JsonPrimitive::new);
  }

  /** What is there, or null. */
  static <T> JsonElement orNull(Optional<T> value, Function<T, JsonElement> translation) {
    return value.map(translation).orElse(JsonNull.INSTANCE);
  }

  static JsonElement range(Range range) {
    JsonArray ends = new JsonArray();
    ends.add(range.low());
    ends.add(range.high());
    return ends;
  }

  /** A bar and a beat as people name them. */
  static JsonObject place(BarBeat at) {
    JsonObject place = new JsonObject();
    addPlace(place, at);
    return place;
  }

  static void addPlace(JsonObject to, BarBeat at) {
    to.addProperty("bar", at.bar());
    to.addProperty("beat", at.beatText());
  }

  private static JsonElement number(BigDecimal value) {
    BigDecimal plain = value.stripTrailingZeros();
    return new JsonPrimitive(plain.scale() < 0 ? plain.setScale(0) : plain);
  }
}
