package stafette.json;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.Strictness;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/**
 * Documents as text. The library binds them to records; what is read is compared with the record
 * beforehand, so that what is wrong is told in our words, all at once.
 */
final class Documents {
  private static final Gson GSON =
      new GsonBuilder()
          .setStrictness(Strictness.STRICT)
          .setPrettyPrinting()
          .serializeNulls()
          .disableHtmlEscaping()
          .registerTypeAdapterFactory(new Adapters())
          .create();

  /** Those that the printer leaves as they are. */
  private static final Pattern CONTROL =
      Pattern.compile("[\\x7f-\\x9f\\u202a-\\u202e\\u2066-\\u2069]");

  private Documents() {}

  /**
   * A document, two blanks a level, with a line end after its last line; the same in every run and
   * locale. All control characters are written by their numbers, so that no terminal takes them for
   * orders.
   *
   * @param document a record that is an {@link Edition}
   */
  static String text(Record document) {
    Edition edition = edition(document.getClass());
    JsonObject json = new JsonObject();
    json.addProperty("format", edition.format());
    json.addProperty("version", edition.version());
    GSON.toJsonTree(document).getAsJsonObject().asMap().forEach(json::add);
    return CONTROL
            .matcher(GSON.toJson(json))
            .replaceAll(found -> "\\\\u%04x".formatted((int) found.group().charAt(0)))
        + "\n";
  }

  /**
   * The text of a file.
   *
   * @throws UnreadableFile if it is not in UTF-8
   */
  static String text(String file, byte[] bytes) throws UnreadableFile {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new UnreadableFile(
          List.of(Sentence.of("{0}: {1}", file, Sentence.of("is not in UTF-8; save it as UTF-8"))));
    }
  }

  /**
   * Reads a document that people may have written or damaged.
   *
   * @param file what to call it in messages
   * @param record of the present version
   * @param earlier what makes a document of an earlier version one of this
   * @throws UnreadableFile if it is no JSON, of another format or a later version, or with all that
   *     does not fit the record
   */
  static <T> T read(
      String file, String text, Class<T> record, Map<Integer, UnaryOperator<JsonObject>> earlier)
      throws UnreadableFile {
    Spot spot = Spot.of(file);
    Edition edition = edition(record);
    JsonObject found = opened(file, text, edition.format());
    int version = version(found, spot);
    if (version != edition.version() && !earlier.containsKey(version)) {
      throw later(file);
    }
    JsonObject present = earlier.getOrDefault(version, same -> same).apply(found);
    JsonObject fitted = new Fitting(edition.byHand()).object(present, record, spot);
    spot.throwIfAny();
    return GSON.fromJson(fitted, record);
  }

  /** What follows the format. */
  private static JsonObject opened(String file, String text, String format) throws UnreadableFile {
    if (!(JsonText.parsed(file, text) instanceof JsonObject found)) {
      throw new UnreadableFile(List.of(Sentence.of("{0}: must be one object in braces", file)));
    }
    if (!Optional.ofNullable(found.remove("format"))
        .flatMap(Form::text)
        .equals(Optional.of(format))) {
      throw new UnreadableFile(List.of(Sentence.of("{0}: format must be \"{1}\"", file, format)));
    }
    return found;
  }

  /** The version that a text says it has; 1 if it says nothing that can be read. */
  static int version(String file, String text) throws UnreadableFile {
    return JsonText.parsed(file, text) instanceof JsonObject found
        ? version(found, Spot.of(file))
        : 1;
  }

  private static int version(JsonObject document, Spot spot) {
    JsonElement version = document.remove("version");
    if (version == null) {
      spot.tell(Sentence.of("{0} is missing; add it", "version"));
      return 1;
    }
    if (!Wanted.isWhole(version, 1)) {
      spot.refuse("version", Wanted.whole(1), version);
      return 1;
    }
    return version.getAsInt();
  }

  private static UnreadableFile later(String file) {
    return new UnreadableFile(
        List.of(
            Sentence.of(
                "{0}: is of a later version; open it with a newer release of this program", file)));
  }

  private static Edition edition(Class<?> record) {
    return Objects.requireNonNull(record.getAnnotation(Edition.class));
  }
}
