package stafette.keep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.words.Refusal;

class SamplesTest {
  @Test
  void every_sample_is_put_into_the_folder_as_it_is(@TempDir Path folder)
      throws Refusal, IOException {
    List<Path> put = new ArrayList<>();
    for (String title : Samples.titles()) {
      put.add(Samples.put(title, folder.resolve("own")));
    }
    for (Path file : put) {
      assertEquals(-1, Files.mismatch(file, Path.of("samples").resolve(file.getFileName())));
    }
    try (var all = Files.list(Path.of("samples"))) {
      assertEquals(put.size(), all.filter(file -> file.toString().endsWith(".musicxml")).count());
    }
  }

  @Test
  void a_folder_that_cannot_be_made_is_refused_in_words(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "a file");
    assertThrows(Refusal.class, () -> Samples.put("Mill Stairs", file));
  }
}
