package stafette.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stafette.limits.TypedNames;
import stafette.words.Sentence;

/**
 * Compares what a file holds with a record, as its members are declared, and tells what doesn't
 * fit. What comes of it can be bound to the record: in the place of what is wrong, missing or never
 * read back stands something that will do.
 *
 * @param closed whether members that nobody asks for are refused
 */
record Fitting(boolean closed) {
  JsonObject object(JsonObject found, Class<?> record, Spot spot) {
    List<Member> members = Member.of(record);
    if (closed) {
      refuseOthers(found, members, spot);
    }
    JsonObject fitted = new JsonObject();
    members.forEach(one -> fitted.add(one.name(), fitted(found.get(one.name()), one, spot)));
    return fitted;
  }

  private static void refuseOthers(JsonObject found, List<Member> members, Spot spot) {
    List<String> names = members.stream().map(Member::name).toList();
    for (String name : found.keySet()) {
      if (!names.contains(name)) {
        List<String> near = TypedNames.nearest(name, names);
        spot.tell(
            Sentence.of(
                "'{0}' is not known here; use {1}",
                name, Sentence.list(near.isEmpty() ? names : near)));
      }
    }
  }

  private JsonElement fitted(@Nullable JsonElement found, Member member, Spot spot) {
    if (found == null || found.isJsonNull()) {
      if (member.isDemanded()) {
        spot.tell(Sentence.of("{0} is missing; add it", member.name()));
      }
      return nothing(member);
    }
    if (member.isTold()) {
      return nothing(member);
    }
    Class<?> type = Member.raw(member.type());
    return type == List.class
        ? list(found, member, spot)
        : type == Map.class
            ? table(found, member, spot)
            : value(found, member, type, member.name(), spot, spot.in(member.name()));
  }

  private static JsonElement nothing(Member member) {
    return member.isOptional() ? JsonNull.INSTANCE : anything(member.type());
  }

  private JsonElement list(JsonElement found, Member member, Spot spot) {
    JsonArray fitted = new JsonArray();
    if (!(found instanceof JsonArray items)) {
      spot.tell(Sentence.of("{0} must be a list in brackets", member.name()));
      return fitted;
    }
    member.get(Means.Items.class).ifPresent(wanted -> count(items, wanted, member.name(), spot));
    Class<?> type = Member.raw(Member.inside(member.type()));
    for (int i = 0; i < items.size(); i++) {
      String item = Spot.item(member.name(), i);
      fitted.add(value(items.get(i), member, type, item, spot, spot.in(item)));
    }
    return fitted;
  }

  private static void count(JsonArray items, Means.Items wanted, String name, Spot spot) {
    if (items.size() < wanted.least() || items.size() > wanted.most()) {
      if (wanted.least() == wanted.most()) {
        spot.refuse(name, Sentence.of("{0} numbers", wanted.least()), items);
      } else {
        spot.tell(Sentence.of("{0} needs one at least", name));
      }
    }
  }

  private JsonElement table(JsonElement found, Member member, Spot spot) {
    JsonObject fitted = new JsonObject();
    if (!(found instanceof JsonObject entries)) {
      spot.tell(Sentence.of("{0} must be an object in braces", member.name()));
      return fitted;
    }
    Class<?> type = Member.raw(Member.inside(member.type()));
    Spot inside = spot.in(member.name());
    entries
        .asMap()
        .forEach((key, value) -> fitted.add(key, value(value, member, type, key, inside, inside)));
    return fitted;
  }

  /**
   * @param outside where a value is told that is none
   * @param inside where the members of an object are told
   */
  private JsonElement value(
      JsonElement found, Member member, Class<?> type, String name, Spot outside, Spot inside) {
    if (type.isRecord() && Form.of(type).isEmpty()) {
      if (found instanceof JsonObject object) {
        return object(object, type, inside);
      }
      outside.tell(Sentence.of("{0} must be an object in braces", name));
      return anything(type);
    }
    Wanted wanted = Wanted.of(type, member);
    if (wanted.fits().test(found)) {
      return found;
    }
    outside.refuse(name, wanted.inWords(), found);
    return anything(type);
  }

  /** Something that can be bound to a type. */
  private static JsonElement anything(Type type) {
    Class<?> raw = Member.raw(type);
    if (raw == List.class) {
      return new JsonArray();
    }
    if (Form.of(raw).isPresent()) {
      return Form.of(raw).get().any();
    }
    if (raw == String.class) {
      return new JsonPrimitive("");
    }
    if (raw.isRecord() || raw == Map.class) {
      JsonObject object = new JsonObject();
      (raw.isRecord() ? Member.of(raw) : List.<Member>of())
          .forEach(
              one ->
                  object.add(
                      one.name(), one.isOptional() ? JsonNull.INSTANCE : anything(one.type())));
      return object;
    }
    return raw == boolean.class || raw == Boolean.class
        ? new JsonPrimitive(false)
        : new JsonPrimitive(0);
  }
}
