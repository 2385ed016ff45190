package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What is printed to be pasted comes out of a shell as it went in. */
class ShellWordsTest {
  private static final Path SHELL = Path.of("/bin/sh");

  @Test
  void what_needs_no_quotes_has_none() {
    assertEquals(
        "split samples/lantern-run.musicxml --bars \"#5-#16\" --players \"Flute 1, Flöte 2\"",
        ShellWords.join(
            List.of(
                "split",
                "samples/lantern-run.musicxml",
                "--bars",
                "#5-#16",
                "--players",
                "Flute 1, Flöte 2")));
  }

  @Test
  void an_empty_word_stays_a_word() {
    assertEquals("--part \"\"", ShellWords.join(List.of("--part", "")));
  }

  @Property(tries = 60)
  void a_shell_reads_the_same_words(@ForAll("words") List<String> words) throws IOException {
    assumeTrue(Files.isExecutable(SHELL));
    assertEquals(words, readByShell(ShellWords.join(words)));
  }

  @Provide
  Arbitrary<List<String>> words() {
    return Arbitraries.strings()
        .withChars("ab1 \t#'\"$`\\!*?~;&|<>()[]{}=%-ü")
        .ofMaxLength(8)
        .list()
        .ofMinSize(1)
        .ofMaxSize(12);
  }

  /** Each word between brackets, as the shell hands it on. */
  static List<String> readByShell(String command) throws IOException {
    Process shell =
        new ProcessBuilder(SHELL.toString(), "-c", "printf '[%s]\\n' " + command)
            .redirectErrorStream(true)
            .start();
    List<String> words = new ArrayList<>();
    new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
        .lines()
        .forEach(line -> words.add(line.substring(1, line.length() - 1)));
    return words;
  }
}
