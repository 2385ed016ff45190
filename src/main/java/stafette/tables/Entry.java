package stafette.tables;

import stafette.words.UnreadableFile;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonPrimitive;
import com.google.gson.Strictness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stafette.limits.Spelling;
import stafette.words.Sentence;

/**
 * One object of a JSON file that people may have written. What a member can't give becomes a
 * problem and a stand-in value, so that reading goes on; nothing read is used once there are
 * problems.
 */
final class Entry {
  private static final Gson PARSER = new GsonBuilder().setStrictness(Strictness.STRICT).create();
  private static final double LARGEST = 1e6;

  private final String place;
  private final JsonObject object;
  private final Problems problems;

  private Entry(String place, JsonObject object, Problems problems) {
    this.place = place;
    this.object = object;
    this.problems = problems;
  }

  /**
   * The whole file; it must say that it is of this format, version 1.
   *
   * @throws UnreadableFile if it is no JSON, or of another format
   */
  static Entry document(String file, String text, String format, Problems problems)
      throws UnreadableFile {
    JsonElement element = parsed(file, text);
    if (!element.isJsonObject()) {
      throw new UnreadableFile(List.of(Sentence.of("{0}: must be one object in braces", file)));
    }
    Entry entry = new Entry(file, element.getAsJsonObject(), problems);
    if (!entry.optionalText("format").equals(Optional.of(format))) {
      throw new UnreadableFile(List.of(Sentence.of("{0}: format must be \"{1}\"", file, format)));
    }
    if (entry.whole("version", 1) != 1) {
      throw new UnreadableFile(
          List.of(
              Sentence.of(
                  "{0}: is of a later version; open it with a newer release of this program",
                  file)));
    }
    return entry;
  }

  private static JsonElement parsed(String file, String text) throws UnreadableFile {
    try {
      JsonElement element = PARSER.fromJson(text, JsonElement.class);
      if (element == null) {
        throw new UnreadableFile(List.of(Sentence.of("{0}: is empty", file)));
      }
      return element;
    } catch (JsonParseException e) {
      throw new UnreadableFile(
          List.of(Sentence.of("{0}: is not JSON: {1}", file, String.valueOf(e.getMessage()))));
    }
  }

  String place() {
    return place;
  }

  void problem(String what) {
    problems.add(place, what);
  }

  void problem(Sentence what) {
    problems.add(place, what);
  }

  /** Whether there is such a member and it is not null. */
  boolean has(String name) {
    return object.has(name) && !object.get(name).isJsonNull();
  }

  /** Whether a member is just that text. */
  boolean isText(String name, String text) {
    return primitive(name)
        .filter(value -> value.isString() && value.getAsString().equals(text))
        .isPresent();
  }

  /** Whether a member is there and true. */
  boolean isTrue(String name) {
    return primitive(name).filter(JsonPrimitive::isBoolean).isPresent()
        && object.get(name).getAsBoolean();
  }

  /** Tells members that nobody asks for, with what may have been meant. */
  void refuseOthers(List<String> names) {
    for (String name : object.keySet()) {
      if (!names.contains(name)) {
        List<String> near = Spelling.nearest(name, names);
        problem(
            Sentence.of(
                "'{0}' is not known here; use {1}",
                name, Sentence.list(near.isEmpty() ? names : near)));
      }
    }
  }

  String text(String name) {
    Optional<String> text = optionalText(name);
    if (text.isEmpty() && !has(name)) {
      problem(Sentence.of("{0} is missing; add it", name));
    }
    return text.orElse("");
  }

  Optional<String> optionalText(String name) {
    if (!has(name)) {
      return Optional.empty();
    }
    if (primitive(name).filter(JsonPrimitive::isString).isEmpty()) {
      refuse(name, Sentence.of("a text in quotes"));
      return Optional.empty();
    }
    return primitive(name).map(JsonPrimitive::getAsString);
  }

  /** A number above zero; empty if there is none. */
  OptionalDouble positive(String name) {
    return number(name, Double.MIN_VALUE, LARGEST, Sentence.of("a number above 0"));
  }

  /** Zero or a number above; empty if there is none. */
  OptionalDouble notNegative(String name) {
    return number(name, 0, LARGEST, Sentence.of("0 or above"));
  }

  OptionalDouble number(String name) {
    return number(name, -LARGEST, LARGEST, Sentence.of("a number"));
  }

  /** The value, or a problem if the member is missing. */
  double demanded(String name, OptionalDouble value) {
    if (!has(name)) {
      problem(Sentence.of("{0} is missing; add it", name));
    }
    return value.orElse(1);
  }

  int whole(String name, int least) {
    Sentence wanted = Sentence.of("a whole number from {0}", least);
    double value = demanded(name, number(name, least, Integer.MAX_VALUE, wanted));
    if (value != Math.rint(value)) {
      refuse(name, wanted);
    }
    return (int) value;
  }

  /** An object within this one; a problem and an empty one if it is missing. */
  Entry entry(String name) {
    if (object.get(name) instanceof JsonObject inner) {
      return inside(name, inner);
    }
    problem(Sentence.of("{0} must be an object in braces", name));
    return inside(name, new JsonObject());
  }

  Optional<Entry> optionalEntry(String name) {
    return has(name) ? Optional.of(entry(name)) : Optional.empty();
  }

  /**
   * The objects of a list.
   *
   * @param one what to call one of them in messages
   */
  List<Entry> entries(String name, String one) {
    List<Entry> result = new ArrayList<>();
    for (JsonElement element : array(name)) {
      String label = one + " " + (result.size() + 1);
      if (element instanceof JsonObject inner) {
        result.add(inside(label, inner));
      } else {
        problem(Sentence.of("{0} must be an object in braces", label));
      }
    }
    return result;
  }

  List<Double> numbers(String name) {
    List<Double> result = new ArrayList<>();
    for (JsonElement element : array(name)) {
      if (element instanceof JsonPrimitive primitive && primitive.isNumber()) {
        result.add(primitive.getAsDouble());
      } else {
        problem(Sentence.of("{0} must hold numbers only, found {1}", name, element));
      }
    }
    return result;
  }

  /** The names of all members, in their order. */
  List<String> names() {
    return List.copyOf(object.keySet());
  }

  void refuse(String name, Sentence wanted) {
    problem(
        Sentence.of("{0} must be {1}, found {2}", name, wanted, String.valueOf(object.get(name))));
  }

  private OptionalDouble number(String name, double least, double most, Sentence wanted) {
    if (!has(name)) {
      return OptionalDouble.empty();
    }
    Optional<Double> value =
        primitive(name)
            .filter(JsonPrimitive::isNumber)
            .map(JsonPrimitive::getAsDouble)
            .filter(number -> least <= number && number <= most);
    if (value.isEmpty()) {
      refuse(name, wanted);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value.get());
  }

  private Optional<JsonPrimitive> primitive(String name) {
    return object.get(name) instanceof JsonPrimitive primitive
        ? Optional.of(primitive)
        : Optional.empty();
  }

  private JsonArray array(String name) {
    if (object.get(name) instanceof JsonArray array) {
      return array;
    }
    problem(Sentence.of("{0} must be a list in brackets", name));
    return new JsonArray();
  }

  private Entry inside(String label, JsonObject inner) {
    return new Entry(place + ", " + label, inner, problems);
  }
}
