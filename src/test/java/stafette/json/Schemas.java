package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The project's published JSON Schemas, as tests use them. */
final class Schemas {
  private Schemas() {}

  static void assertValid(String schema, String json) {
    assertEquals(List.of(), problems(schema, json));
  }

  static List<String> problems(String schema, String json) {
    return load(schema).validate(json, InputFormat.JSON).stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }

  private static Schema load(String name) {
    try {
      String text = Files.readString(Path.of("shared", name + ".schema.json"));
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(text, InputFormat.JSON);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
