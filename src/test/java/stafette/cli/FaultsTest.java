package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import stafette.words.Fault;
import stafette.words.Sentence;

/** Whatever the program is at fault with, it says so once and ends with 70. */
class FaultsTest {
  /** The window stands for any part of the program. */
  private static Ran opening(Commands.WindowDoor desktop) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exitCode =
        Commands.run(out, err, StandardCharsets.UTF_8, desktop, "app", "my scores/run.musicxml");
    return new Ran(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @SuppressWarnings("InfiniteRecursion") // that is what it is for
  private static Optional<String> deep(Optional<Path> file) {
    return deep(file).map(String::strip);
  }

  @TestFactory
  Stream<DynamicTest> every_fault_is_told_in_two_lines_with_file_and_command() {
    return Stream.<Commands.WindowDoor>of(
            file -> {
              throw new IllegalStateException("negative");
            },
            file -> {
              throw new OutOfMemoryError("Java heap space");
            },
            file -> {
              throw new AssertionError();
            },
            FaultsTest::deep)
        .map(desktop -> DynamicTest.dynamicTest(desktop.toString(), () -> isTold(desktop)));
  }

  private static void isTold(Commands.WindowDoor desktop) {
    Ran ran = opening(desktop);
    assertEquals(70, ran.exitCode(), ran.err());
    List<String> lines = ran.err().lines().toList();
    assertEquals(2, lines.size(), ran.err());
    assertTrue(lines.get(0).startsWith("my scores/run.musicxml: "), ran.err());
    assertTrue(lines.get(1).endsWith("stafette app \"my scores/run.musicxml\""), ran.err());
    assertFalse(ran.err().contains("\tat ") || ran.err().contains("java.lang"), ran.err());
  }

  @Test
  void a_fault_with_a_place_of_its_own_is_told_with_that() {
    Ran ran =
        opening(
            file ->
                Fault.at(
                    () -> Sentence.of("{0}, bar {1}", "Flute 1", "12"),
                    () -> {
                      throw new IllegalStateException("negative");
                    }));
    assertTrue(
        ran.err()
            .startsWith(
                "Flute 1, bar 12: this is a fault of the program, not of your score"
                    + " (IllegalStateException: negative; FaultsTest.java:"),
        ran.err());
  }

  @Test
  void what_lies_behind_a_fault_is_told_too() {
    Ran ran =
        opening(
            file -> {
              throw new IllegalStateException("outside", new IOException("inside"));
            });
    assertTrue(
        ran.err().contains("(IllegalStateException: outside; IOException: inside; Fau"), ran.err());
  }

  @Test
  void without_memory_it_says_what_would_help() {
    Ran ran =
        opening(
            file -> {
              throw new OutOfMemoryError("Java heap space");
            });
    assertTrue(ran.err().contains("ran out of memory") && ran.err().contains("-Xmx"), ran.err());
  }

  @Test
  void help_and_readme_list_every_exit_code() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    String codes = readme.substring(readme.indexOf("Exit codes:"));
    for (String command : List.of("", "check", "split", "preview", "thin", "tempo", "limits")) {
      String help =
          command.isEmpty() ? Ran.command("--help").out() : Ran.command(command, "--help").out();
      for (String code : List.of("0", "1", "2", "3", "70")) {
        assertTrue(help.lines().anyMatch(line -> line.strip().startsWith(code + "  ")), help);
        assertTrue(codes.contains(" " + code + " "), code);
      }
    }
  }
}
