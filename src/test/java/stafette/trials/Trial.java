package stafette.trials;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A command and the files that it is given.
 *
 * @param files by their names in a folder of their own
 * @param args the command line, {@link #FOLDER} standing for that folder
 */
record Trial(SortedMap<String, byte[]> files, List<String> args) {
  static final String FOLDER = "{folder}";

  Trial {
    args = List.copyOf(args);
  }

  static Trial of(Map<String, byte[]> files, List<String> args) {
    return new Trial(new TreeMap<>(files), args);
  }

  Trial with(List<String> others) {
    return new Trial(files, others);
  }

  Trial with(String file, byte[] content) {
    SortedMap<String, byte[]> others = new TreeMap<>(files);
    others.put(file, content);
    return new Trial(others, args);
  }

  Trial without(String file) {
    SortedMap<String, byte[]> others = new TreeMap<>(files);
    others.remove(file);
    return new Trial(others, args);
  }

  /** The score that the command is about. */
  byte[] score() {
    return files.entrySet().stream()
        .filter(file -> file.getKey().startsWith("score."))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseThrow();
  }

  /** Whether an option or a word is given. */
  boolean says(String word) {
    return args.contains(word);
  }

  /** Runs the command in a folder, which is emptied before. */
  Ended run(Path folder) {
    try {
      empty(folder);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.write(path, file.getValue());
      }
      return again(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Runs the command once more where it was run. */
  Ended again(Path folder) {
    return Ended.of(args.stream().map(arg -> arg.replace(FOLDER, folder.toString())).toList());
  }

  private static void empty(Path folder) throws IOException {
    List<Path> old;
    try (Stream<Path> paths = Files.walk(folder)) {
      old = paths.filter(path -> !path.equals(folder)).sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : old) {
      Files.delete(path);
    }
  }
}
