package stafette.keep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.words.Refusal;

/** Files that were opened last. */
class RememberedTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void a_file_opened_again_moves_to_the_top() throws Refusal {
    Remembered remembered = new Remembered(folder.resolve("state"));
    Path one = folder.resolve("one.musicxml");
    Path two = folder.resolve("two.musicxml");
    remembered.opened(one);
    remembered.opened(two);
    remembered.opened(folder.resolve("nowhere/../one.musicxml"));
    assertEquals(List.of(one, two), remembered.recent());
  }

  @Test
  void a_file_that_is_gone_leaves_the_list_when_it_is_asked_for() throws Refusal, IOException {
    Remembered remembered = new Remembered(folder.resolve("state"));
    Path there = Files.writeString(folder.resolve("there.musicxml"), "");
    Path gone = folder.resolve("gone.musicxml");
    remembered.opened(there);
    remembered.opened(gone);
    assertFalse(remembered.forgetMissing(there));
    assertEquals(List.of(gone, there), remembered.recent());
    assertTrue(remembered.forgetMissing(gone));
    assertEquals(List.of(there), remembered.recent());
  }

  @Test
  void ten_files_are_remembered() throws Refusal {
    Remembered remembered = new Remembered(folder.resolve("state"));
    for (int i = 0; i < 12; i++) {
      remembered.opened(folder.resolve(i + ".musicxml"));
    }
    assertEquals(10, remembered.recent().size());
    assertEquals(folder.resolve("11.musicxml"), remembered.recent().get(0));
  }

  @Test
  void whether_the_window_is_dark_is_remembered() throws Refusal {
    Remembered remembered = new Remembered(folder.resolve("state"));
    assertFalse(remembered.isDark());
    remembered.dark(true);
    assertTrue(new Remembered(folder.resolve("state")).isDark());
    remembered.dark(false);
    assertFalse(new Remembered(folder.resolve("state")).isDark());
  }
}
