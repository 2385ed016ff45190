package stafette.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import stafette.limits.TypedNames;
import stafette.words.Sentence;

/** The text of the tables, from the program itself or from a user's directory. */
final class TableFiles {
  private static final String BUILT_IN = "/stafette/limits/";

  /** No table and no plan is larger. */
  private static final long LARGEST_BYTES = 64L << 20;

  private TableFiles() {}

  static Map<Table, String> builtIn() {
    Map<Table, String> texts = new EnumMap<>(Table.class);
    for (Table table : Table.values()) {
      try (InputStream in =
          Objects.requireNonNull(
              TableFiles.class.getResourceAsStream(BUILT_IN + table.file()), table.file())) {
        texts.put(table, new String(in.readAllBytes(), StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return texts;
  }

  /** Those tables that a directory holds. */
  static Map<Table, String> of(Path directory, Problems problems) {
    Map<Table, String> texts = new EnumMap<>(Table.class);
    if (!Files.isDirectory(directory)) {
      problems.add(
          directory.toString(),
          Files.exists(directory) ? "is no folder; name one" : "there is no such directory");
      return texts;
    }
    refuseStrangers(directory, problems);
    for (Table table : Table.values()) {
      Path file = directory.resolve(table.file());
      if (Files.exists(file)) {
        texts.put(table, text(file, problems));
      }
    }
    if (texts.isEmpty()) {
      problems.add(directory.toString(), "holds none of " + String.join(", ", files()));
    }
    texts.values().removeIf(String::isEmpty);
    return texts;
  }

  /** The text of a file in UTF-8; empty if that can't be had, which is then a problem. */
  private static String text(Path file, Problems problems) {
    String name = String.valueOf(file.getFileName());
    try {
      if (!Files.isRegularFile(file)) {
        problems.add(name, Sentence.of("is a folder, a device or a pipe; name a file"));
      } else if (Files.size(file) > LARGEST_BYTES) {
        problems.add(name, Sentence.of("is larger than {0} MB", LARGEST_BYTES >> 20));
      } else {
        return text(name, Files.readAllBytes(file), problems);
      }
    } catch (IOException e) {
      problems.add(name, "can't be read; look whether it is yours to read");
    }
    return "";
  }

  /** The text that bytes are in UTF-8; empty if they are none, which is then a problem. */
  static String text(String name, byte[] bytes, Problems problems) {
    try {
      if (bytes.length == 0) {
        problems.add(name, Sentence.of("is empty"));
      }
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      problems.add(name, Sentence.of("is not in UTF-8; save it as UTF-8"));
      return "";
    }
  }

  private static void refuseStrangers(Path directory, Problems problems) {
    try (Stream<Path> entries = Files.list(directory)) {
      entries
          .map(entry -> String.valueOf(entry.getFileName()))
          .filter(name -> name.endsWith(".csv") && !files().contains(name))
          .sorted()
          .forEach(
              name -> {
                List<String> near = TypedNames.nearest(name, files());
                problems.add(
                    name,
                    "is none of the tables; rename it to "
                        + String.join(" or ", near.isEmpty() ? files() : near));
              });
    } catch (IOException e) {
      problems.add(directory.toString(), "can't be read; look whether it is yours to read");
    }
  }

  private static List<String> files() {
    return Arrays.stream(Table.values()).map(Table::file).toList();
  }
}
