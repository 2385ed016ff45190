package stafette.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The JSON Schema of a document, made from what its records declare. */
final class SchemaOf {
  private final Map<String, JsonObject> parts = new LinkedHashMap<>();

  private SchemaOf() {}

  static JsonObject document(Class<? extends Record> document) {
    return new SchemaOf().whole(document);
  }

  private JsonObject whole(Class<? extends Record> document) {
    Edition edition = Objects.requireNonNull(document.getAnnotation(Edition.class));
    JsonObject own = object(document);
    JsonObject members = new JsonObject();
    members.add("format", constant(new JsonPrimitive(edition.format())));
    members.add("version", constant(new JsonPrimitive(edition.version())));
    own.getAsJsonObject("properties").asMap().forEach(members::add);
    JsonArray required = list(List.of("format", "version"));
    required.addAll(own.getAsJsonArray("required"));
    own.add("properties", members);
    own.add("required", required);
    JsonObject schema = new JsonObject();
    schema.addProperty("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.addProperty("title", edition.format().replace("stafette-", "Stafette "));
    own.asMap().forEach(schema::add);
    JsonObject defs = new JsonObject();
    parts.forEach(defs::add);
    schema.add("$defs", defs);
    return schema;
  }

  private JsonObject object(Class<?> record) {
    JsonArray required = new JsonArray();
    JsonObject members = new JsonObject();
    addMembers(record, true, required, members);
    JsonObject object = typed("object");
    object.addProperty("description", record.getAnnotation(Means.class).value());
    object.addProperty("additionalProperties", false);
    object.add("required", required);
    object.add("properties", members);
    return object;
  }

  private void addMembers(
      Class<?> record, boolean demanded, JsonArray required, JsonObject members) {
    for (Member member : Member.of(record)) {
      boolean always = demanded && !member.is(Means.Missing.class);
      if (member.is(Means.Flat.class)) {
        addMembers((Class<?>) member.type(), always && !member.isOptional(), required, members);
      } else {
        members.add(member.name(), member(member));
        if (always) {
          required.add(member.name());
        }
      }
    }
  }

  private JsonObject member(Member member) {
    boolean mayBeNull = member.isOptional() && !member.is(Means.Missing.class);
    JsonObject value = value(member.type(), member);
    JsonObject schema = mayBeNull ? orNull(value) : value;
    schema.addProperty("description", member.get(Means.class).orElseThrow().value());
    return schema;
  }

  private static JsonObject orNull(JsonObject value) {
    JsonObject either = new JsonObject();
    if (!value.has("type")) {
      either.add("anyOf", array(value, typed("null")));
      return either;
    }
    either.add("type", list(List.of(value.get("type").getAsString(), "null")));
    value.remove("type");
    value.asMap().forEach(either::add);
    return either;
  }

  private JsonObject value(Type type, Member member) {
    Class<?> raw = Member.raw(type);
    if (raw == List.class) {
      return array(value(Member.inside(type), member), member.get(Means.Items.class));
    }
    if (raw == Map.class) {
      JsonObject table = typed("object");
      table.add("additionalProperties", value(Member.inside(type), member));
      return table;
    }
    if (member.is(Means.Only.class)) {
      return only(raw, member.get(Means.Only.class).orElseThrow().value());
    }
    return Form.of(raw).isPresent() || !raw.isRecord() ? plain(raw, member) : part(raw);
  }

  private static JsonObject only(Class<?> raw, String[] words) {
    boolean text = raw == String.class || raw.isEnum();
    List<JsonElement> values =
        List.of(words).stream()
            .map(word -> text ? new JsonPrimitive(word) : JsonParser.parseString(word))
            .toList();
    return values.size() == 1 ? constant(values.get(0)) : choice("enum", values);
  }

  private JsonObject part(Class<?> record) {
    String name = record.getSimpleName().replaceFirst("(Json|File)$", "");
    String key = name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    if (!parts.containsKey(key)) {
      parts.put(key, new JsonObject());
      parts.put(key, object(record));
    }
    JsonObject reference = new JsonObject();
    reference.addProperty("$ref", "#/$defs/" + key);
    return reference;
  }

  private static JsonObject plain(Class<?> raw, Member member) {
    if (raw.isEnum()) {
      return choice("enum", Form.wordsOf(raw).stream().map(JsonPrimitive::new).toList());
    }
    if (raw == SettingsJson.CountOrBeat.class) {
      return choice(
          "oneOf", List.of(number("integer", member), constant(new JsonPrimitive("beat"))));
    }
    if (raw == WayFiguresJson.FigureJson.class) {
      return orNull(number("number", member));
    }
    if (raw == PlayerJson.OneOrEach.class) {
      JsonObject each = array(number("number", member), Optional.empty());
      each.addProperty("minItems", 2);
      return choice("oneOf", List.of(number("number", member), each));
    }
    if (raw == boolean.class || raw == Boolean.class) {
      return typed("boolean");
    }
    if (raw == double.class || raw == Double.class) {
      return number("number", member);
    }
    return raw == int.class || raw == Integer.class ? number("integer", member) : text(member);
  }

  private static JsonObject text(Member member) {
    JsonObject text = typed("string");
    member.get(Means.Like.class).ifPresent(like -> text.addProperty("pattern", like.value()));
    return text;
  }

  private static JsonObject number(String type, Member member) {
    JsonObject number = typed(type);
    member.get(Means.Least.class).ifPresent(b -> number.add("minimum", bound(b.value())));
    member.get(Means.Above.class).ifPresent(b -> number.add("exclusiveMinimum", bound(b.value())));
    member.get(Means.Most.class).ifPresent(b -> number.add("maximum", bound(b.value())));
    member.get(Means.Below.class).ifPresent(b -> number.add("exclusiveMaximum", bound(b.value())));
    return number;
  }

  private static JsonElement bound(double value) {
    return Adapters.number(value);
  }

  private static JsonObject array(JsonObject items, Optional<Means.Items> size) {
    JsonObject array = typed("array");
    array.add("items", items);
    size.ifPresent(wanted -> array.addProperty("minItems", wanted.least()));
    size.filter(wanted -> wanted.most() < Integer.MAX_VALUE)
        .ifPresent(wanted -> array.addProperty("maxItems", wanted.most()));
    return array;
  }

  private static JsonObject typed(String type) {
    JsonObject object = new JsonObject();
    object.addProperty("type", type);
    return object;
  }

  private static JsonObject constant(JsonElement value) {
    JsonObject object = new JsonObject();
    object.add("const", value);
    return object;
  }

  private static JsonObject choice(String keyword, List<? extends JsonElement> values) {
    JsonObject object = new JsonObject();
    object.add(keyword, array(values.toArray(JsonElement[]::new)));
    return object;
  }

  private static JsonArray array(JsonElement... values) {
    JsonArray array = new JsonArray();
    List.of(values).forEach(array::add);
    return array;
  }

  private static JsonArray list(List<String> words) {
    return array(words.stream().map(JsonPrimitive::new).toArray(JsonElement[]::new));
  }
}
