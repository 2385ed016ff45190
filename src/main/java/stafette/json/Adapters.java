package stafette.json;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import com.google.gson.TypeAdapter;
import com.google.gson.TypeAdapterFactory;
import com.google.gson.reflect.TypeToken;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What our documents have that the library doesn't bind by itself: plain numbers with up to six
 * decimals, values that may be null or missing, values with a {@link Form}, objects whose members
 * stand among another's.
 */
final class Adapters implements TypeAdapterFactory {
  private static final int DECIMALS = 6;

  @Override
  @SuppressWarnings("unchecked")
  public <T> @Nullable TypeAdapter<T> create(Gson gson, TypeToken<T> type) {
    Class<?> raw = type.getRawType();
    Optional<Form<?>> form = Form.of(raw);
    if (raw == double.class || raw == Double.class) {
      TypeAdapter<Double> numbers = through(gson, Adapters::number, JsonElement::getAsDouble);
      return (TypeAdapter<T>) numbers;
    }
    if (raw == Optional.class) {
      return optional(gson, gson.getAdapter(TypeToken.get(Member.inside(type.getType()))));
    }
    if (form.isPresent()) {
      Form<T> own = (Form<T>) form.get();
      return through(gson, own.write(), found -> own.read().apply(found).orElseThrow());
    }
    List<Member> moved = raw.isRecord() ? Member.of(raw) : List.of();
    return moved.stream().anyMatch(Adapters::isMoved)
        ? arranging(gson, gson.getDelegateAdapter(this, type), moved)
        : null;
  }

  @SuppressWarnings("unchecked")
  private static <T, V> TypeAdapter<T> optional(Gson gson, TypeAdapter<V> inside) {
    return through(
        gson,
        value -> ((Optional<V>) value).map(inside::toJsonTree).orElse(JsonNull.INSTANCE),
        found ->
            (T) (found.isJsonNull() ? Optional.empty() : Optional.of(inside.fromJsonTree(found))));
  }

  private static <T> TypeAdapter<T> arranging(
      Gson gson, TypeAdapter<T> plain, List<Member> members) {
    return through(
        gson,
        value -> arranged(plain.toJsonTree(value).getAsJsonObject(), members),
        plain::fromJsonTree);
  }

  private static boolean isMoved(Member member) {
    return member.is(Means.Missing.class) || member.is(Means.Flat.class);
  }

  /** Without what is missing, and with the members of flat objects in their place. */
  private static JsonElement arranged(JsonObject bound, List<Member> members) {
    JsonObject arranged = new JsonObject();
    for (Member member : members) {
      JsonElement value = bound.get(member.name());
      if (member.is(Means.Flat.class) && value instanceof JsonObject flat) {
        flat.asMap().forEach(arranged::add);
      } else if (!isMoved(member) || !value.isJsonNull()) {
        arranged.add(member.name(), value);
      }
    }
    return arranged;
  }

  /** Null where it is infinite. */
  static JsonElement number(double value) {
    if (!Double.isFinite(value)) {
      return JsonNull.INSTANCE;
    }
    BigDecimal plain =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return new JsonPrimitive(plain.scale() < 0 ? plain.setScale(0) : plain);
  }

  private static <T> TypeAdapter<T> through(
      Gson gson, Function<T, JsonElement> write, Function<JsonElement, T> read) {
    TypeAdapter<JsonElement> trees = gson.getAdapter(JsonElement.class);
    return new TypeAdapter<>() {
      @Override
      public void write(JsonWriter out, T value) throws IOException {
        trees.write(out, write.apply(value));
      }

      @Override
      public T read(JsonReader in) throws IOException {
        return read.apply(trees.read(in));
      }
    };
  }
}
