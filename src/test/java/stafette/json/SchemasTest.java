package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The published JSON Schemas say what the records declare. {@code -Dschemas=write} writes them
 * anew.
 */
class SchemasTest {
  private static final Map<String, Class<? extends Record>> DOCUMENTS =
      Map.of(
          "plan", PlanJson.class,
          "check", CheckJson.class,
          "tempo", TempoJson.class,
          "thinning", ThinningJson.class,
          "who", WhoJson.class,
          "players", PlayersJson.class);

  @TestFactory
  Stream<DynamicTest> each_schema_is_made_from_its_records() {
    return DOCUMENTS.keySet().stream()
        .map(name -> DynamicTest.dynamicTest(name, () -> compare(name)));
  }

  private static void compare(String name) throws IOException {
    Path file = Path.of("shared", name + ".schema.json");
    String schema = Wide.text(SchemaOf.document(Objects.requireNonNull(DOCUMENTS.get(name))));
    if ("write".equals(System.getProperty("schemas"))) {
      Files.writeString(file, schema);
    }
    assertEquals(schema, Files.readString(file), file + " is not what the records say");
  }
}
