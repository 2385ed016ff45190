package stafette.desktop.welcome;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Names of files by which they can be told apart. */
public final class RecentNames {
  private RecentNames() {}

  /** In the same order; with the folder where two files have the same name. */
  public static List<String> of(List<Path> files) {
    return files.stream().map(file -> isAlone(file, files) ? name(file) : placed(file)).toList();
  }

  private static boolean isAlone(Path file, List<Path> files) {
    return files.stream().filter(other -> name(other).equals(name(file))).count() == 1;
  }

  private static String name(Path file) {
    return Optional.ofNullable(file.getFileName()).orElse(file).toString();
  }

  private static String placed(Path file) {
    return Optional.ofNullable(file.getParent())
        .map(folder -> name(file) + " – " + folder)
        .orElseGet(() -> name(file));
  }
}
