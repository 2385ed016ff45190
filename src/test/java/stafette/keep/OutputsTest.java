package stafette.keep;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.words.Refusal;

/** No output is an input, nor another output, whatever links say. */
class OutputsTest {
  @TempDir private Path folder = Path.of("");
  private Path score = Path.of("");

  @BeforeEach
  void writeScore() throws IOException {
    score = Files.writeString(folder.resolve("score.musicxml"), "a score");
    Files.createDirectory(folder.resolve("sub"));
  }

  private Outputs outputs() {
    return Outputs.beside(List.of(score));
  }

  private static String refused(Outputs outputs, Path file) {
    return String.valueOf(assertThrows(Refusal.class, () -> outputs.add(file, true)).getMessage());
  }

  @Test
  void an_input_is_no_output_by_whatever_way_it_is_named() throws IOException {
    Path soft = Files.createSymbolicLink(folder.resolve("soft"), score);
    Path hard = Files.createLink(folder.resolve("hard"), score);
    Path dir = Files.createSymbolicLink(folder.resolve("dir"), folder);
    for (Path name :
        List.of(
            score,
            folder.resolve("./sub/../score.musicxml"),
            Path.of("").toAbsolutePath().relativize(score.toAbsolutePath()),
            soft,
            hard,
            dir.resolve("score.musicxml"))) {
      assertTrue(refused(outputs(), name).contains("must stay as it is"), name.toString());
    }
    assertEquals("a score", Files.readString(score));
  }

  @Test
  void an_input_reached_over_a_link_is_no_output_either() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), score);
    assertTrue(refused(Outputs.beside(List.of(link)), score).contains("must stay as it is"));
  }

  @Test
  void two_outputs_are_two_files_whether_they_are_there_or_not() throws Exception {
    Path there = Files.writeString(folder.resolve("there"), "old");
    Path soft = Files.createSymbolicLink(folder.resolve("soft"), Path.of("new"));
    Path hard = Files.createLink(folder.resolve("hard"), there);
    List<List<Path>> pairs =
        List.of(
            List.of(folder.resolve("new"), folder.resolve("sub/../new")),
            List.of(folder.resolve("new"), soft),
            List.of(soft, folder.resolve("new")),
            List.of(there, hard),
            List.of(folder.resolve("New"), folder.resolve("new")),
            List.of(folder.resolve("Fl\u00f6te"), folder.resolve("Flo\u0308te")));
    for (List<Path> pair : pairs) {
      Outputs outputs = outputs();
      outputs.add(pair.get(0), true);
      assertTrue(refused(outputs, pair.get(1)).contains("is the same file as"), pair.toString());
    }
    Outputs outputs = outputs();
    outputs.add(folder.resolve("one"), false);
    outputs.add(folder.resolve("two"), false);
    outputs.add(folder.resolve("sub/one"), false);
  }

  @Test
  void a_file_that_is_there_is_told_of_with_what_to_do() {
    Outputs outputs = Outputs.beside(List.of());
    Refusal refusal = assertThrows(Refusal.class, () -> outputs.add(score, false));
    String said = String.valueOf(refusal.getMessage());
    assertTrue(said.startsWith(score + ": exists already; name another file"), said);
  }

  @Test
  void trying_leaves_no_trace() throws Exception {
    outputs().add(folder.resolve("new"), false);
    outputs().add(Files.writeString(folder.resolve("there"), "old"), true);
    assertFalse(Files.exists(folder.resolve("new")));
    assertEquals("old", Files.readString(folder.resolve("there")));
    try (var files = Files.list(folder)) {
      assertEquals(3, files.count());
    }
  }

  @Test
  void an_input_is_written_into_where_that_is_what_is_asked() {
    assertDoesNotThrow(() -> outputs().addInPlace(score));
    assertThrows(Refusal.class, () -> outputs().addInPlace(folder.resolve("sub")));
  }
}
