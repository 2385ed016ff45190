package stafette.desktop.welcome;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Names of files that can be told apart. */
class RecentNamesTest {
  @Test
  void a_name_stands_alone_unless_another_file_has_it_too() {
    Path one = Path.of("a", "run.musicxml");
    Path other = Path.of("b", "run.musicxml");
    assertEquals(
        List.of("run.musicxml – a", "hill.musicxml", "run.musicxml – b"),
        RecentNames.of(List.of(one, Path.of("a", "hill.musicxml"), other)));
  }
}
