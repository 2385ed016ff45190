package stafette.json;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import com.google.gson.Strictness;
import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.EOFException;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/** The text of a JSON file that people may have written or damaged, taken apart. */
final class JsonText {
  private static final Gson GSON = new GsonBuilder().setStrictness(Strictness.STRICT).create();
  private static final TypeAdapter<JsonElement> ADAPTER = GSON.getAdapter(JsonElement.class);
  private static final Pattern AT = Pattern.compile("line ([0-9]+) column ([0-9]+)");

  private final String file;
  private final JsonReader reader;

  private JsonText(String file, String text) {
    this.file = file;
    this.reader = new JsonReader(new StringReader(text));
    reader.setStrictness(Strictness.STRICT);
  }

  /**
   * What a file holds.
   *
   * @param file what to call it
   * @throws UnreadableFile if it is no JSON, with the place where it is none
   */
  static JsonElement parsed(String file, String text) throws UnreadableFile {
    if (text.isBlank()) {
      throw new UnreadableFile(List.of(Sentence.of("{0}: is empty", file)));
    }
    return new JsonText(file, text).parsed();
  }

  private JsonElement parsed() throws UnreadableFile {
    JsonElement element = element();
    if (!isAtEnd()) {
      throw broken(Sentence.of("more follows here than belongs to the file; take it out"));
    }
    return element;
  }

  private JsonElement element() throws UnreadableFile {
    try {
      return ADAPTER.read(reader);
    } catch (EOFException e) {
      throw broken(Sentence.of("the file ends in the middle; it was cut off"));
    } catch (IOException | JsonParseException | IllegalStateException e) {
      throw broken(
          Sentence.of(
              "this is no JSON; a comma, a quote or a bracket is missing there, or one too many"));
    }
  }

  private boolean isAtEnd() {
    try {
      return reader.peek() == JsonToken.END_DOCUMENT;
    } catch (IOException e) {
      return false;
    }
  }

  private UnreadableFile broken(Sentence what) {
    return new UnreadableFile(List.of(Sentence.of("{0}: {1}", place(), what)));
  }

  private Sentence place() {
    Matcher at = AT.matcher(reader.toString());
    String within = reader.getPath().replaceFirst("^\\$\\.?", "");
    if (!at.find()) {
      return Sentence.of("{0}", file);
    }
    return within.isEmpty()
        ? Sentence.of("{0}, line {1}, column {2}", file, at.group(1), at.group(2))
        : Sentence.of("{0}, line {1}, column {2}, in {3}", file, at.group(1), at.group(2), within);
  }
}
