package stafette.repertoire;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/** The scores of a folder, by corpus and composer. */
final class Corpora {
  /** Kept for judging, never read here. */
  private static final String LEFT_FOR_OTHERS = "Beethoven";

  private Corpora() {}

  /**
   * One score.
   *
   * @param corpus the folder in which it lies
   * @param composer the folder in that
   */
  record File(String corpus, String composer, Path path) {
    /** Whether it may be looked at to set figures; else it only tests them. */
    boolean tunes() {
      CRC32 sum = new CRC32();
      sum.update(composer.getBytes(StandardCharsets.UTF_8));
      return sum.getValue() % 2 == 0;
    }

    String name() {
      return String.valueOf(path.getFileName());
    }
  }

  static List<File> in(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(path -> path.toString().matches(".*\\.(mxl|musicxml|xml)"))
          .filter(path -> !path.toString().contains(LEFT_FOR_OTHERS))
          .map(path -> file(folder, path))
          .sorted(java.util.Comparator.comparing(File::path))
          .toList();
    }
  }

  private static File file(Path folder, Path path) {
    Path within = folder.relativize(path);
    return new File(
        within.getName(0).toString(),
        within.getName(Math.min(1, within.getNameCount() - 1)).toString(),
        path);
  }
}
