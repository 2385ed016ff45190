package stafette.json;

import com.google.gson.JsonElement;
import com.google.gson.JsonPrimitive;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stafette.limits.Grade;
import stafette.limits.TypedNames;
import stafette.score.ToneChoice;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.words.Sentence;

/**
 * How a value that is no object stands in a document: as a text, a number, or either.
 *
 * @param wanted what to write, in words
 * @param any one that will do
 */
record Form<T>(
    Function<T, JsonElement> write,
    Function<JsonElement, Optional<T>> read,
    Sentence wanted,
    JsonElement any) {
  private static final Map<Class<?>, Form<?>> OWN =
      Map.of(
          ToneChoice.class,
          text(
              ToneChoice::text,
              ToneChoice::parse,
              Sentence.of("top, bottom, all or a number"),
              "all"),
          BeatUnit.class,
          text(
              BeatUnit::name,
              BeatUnit::parse,
              Sentence.of("a note value such as dotted quarter"),
              "quarter"),
          Rational.class,
          text(
              Rational::toString,
              Form::fraction,
              Sentence.of("a number or fraction above 0, as text"),
              "1"),
          SettingsJson.CountOrBeat.class,
          SettingsJson.CountOrBeat.form(),
          PlayerJson.OneOrEach.class,
          PlayerJson.OneOrEach.form(),
          WayFiguresJson.FigureJson.class,
          WayFiguresJson.FigureJson.form());

  /** The form of a type, if its values are not bound in the usual way. */
  static Optional<Form<?>> of(Class<?> type) {
    return type.isEnum() ? Optional.of(words(type)) : Optional.ofNullable(OWN.get(type));
  }

  /** The words of an enumeration, in its order. */
  static List<String> wordsOf(Class<?> type) {
    return Arrays.stream(type.getEnumConstants()).map(Form::word).toList();
  }

  private static Form<Object> words(Class<?> type) {
    return text(
        Form::word,
        text ->
            Arrays.<Object>stream(type.getEnumConstants())
                .filter(value -> TypedNames.same(word(value), text))
                .findFirst(),
        Sentence.list(wordsOf(type)),
        wordsOf(type).get(0));
  }

  private static String word(Object value) {
    return value instanceof Grade grade
        ? grade.name()
        : ((Enum<?>) value).name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static <T> Form<T> text(
      Function<T, String> write, Function<String, Optional<T>> read, Sentence wanted, String any) {
    return new Form<>(
        value -> new JsonPrimitive(write.apply(value)),
        found -> text(found).flatMap(read),
        wanted,
        new JsonPrimitive(any));
  }

  /** What a text says; empty if it is none. */
  static Optional<String> text(JsonElement found) {
    return found instanceof JsonPrimitive primitive && primitive.isString()
        ? Optional.of(primitive.getAsString())
        : Optional.empty();
  }

  private static Optional<Rational> fraction(String text) {
    try {
      return Optional.of(Rational.parse(text)).filter(value -> value.signum() > 0);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
