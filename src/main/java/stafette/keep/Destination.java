package stafette.keep;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.text.Normalizer;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * Where a file that is to be written stands in the end.
 *
 * @param named as the user names it
 * @param real with all links followed, whether it is there yet or not
 */
record Destination(Path named, Path real) {
  private static final int MOST_LINKS = 40;

  /**
   * @throws Refusal if it is a folder, or there is none for it to stand in
   */
  static Destination of(Path named) throws Refusal {
    if (Files.isDirectory(named)) {
      throw Refusal.ofFile(Sentence.of("{0}: is a folder; name a file in it", named));
    }
    try {
      Path end = afterLinks(named.toAbsolutePath());
      Path folder = end.resolveSibling("");
      if (!Files.isDirectory(folder)) {
        throw closed(
            named,
            Files.exists(folder)
                ? Sentence.of("{0} is no folder", folder)
                : Sentence.of("there is no folder {0}; make it, or name another one", folder));
      }
      return new Destination(named, folder.toRealPath().resolve(end.getFileName()));
    } catch (IOException e) {
      throw closed(named, FileTrouble.with(e));
    }
  }

  private static Path afterLinks(Path start) throws IOException {
    Path at = start;
    for (int i = 0; Files.isSymbolicLink(at); i++) {
      if (i == MOST_LINKS) {
        throw new FileSystemLoopException(start.toString());
      }
      at = at.resolveSibling(Files.readSymbolicLink(at));
    }
    return at;
  }

  Path folder() {
    return real.resolveSibling("");
  }

  /**
   * Whether it is the file of another name, whatever links say. Names of files that are not there
   * yet are one where only capitals or the coding of accents differ: on many systems they are.
   */
  boolean is(Path other) {
    try {
      if (Files.exists(real) || Files.exists(other)) {
        return Files.exists(real) && Files.exists(other) && Files.isSameFile(real, other);
      }
      Destination there = of(other);
      return Files.isSameFile(folder(), there.folder())
          && plain(real).equalsIgnoreCase(plain(there.real));
    } catch (IOException | Refusal e) {
      return false;
    }
  }

  private static String plain(Path file) {
    return Normalizer.normalize(String.valueOf(file.getFileName()), Normalizer.Form.NFC);
  }

  /**
   * Refuses a device, a file that is protected, and one that is there and may not be replaced.
   *
   * @param replace whether it may
   */
  void refuseToWrite(boolean replace) throws Refusal {
    if (Files.exists(real, LinkOption.NOFOLLOW_LINKS)) {
      if (!Files.isRegularFile(real)) {
        throw closed(named, Sentence.of("it is a device or a pipe, no file; name a file"));
      }
      if (!replace) {
        throw Refusal.ofFile(
            Sentence.of("{0}: exists already; name another file{1}", named, Settable.REPLACING));
      }
      if (!Files.isWritable(real)) {
        throw closed(named, Sentence.of("it is protected; name another file"));
      }
    }
  }

  /** That it can't be written. */
  static Refusal closed(Path named, Sentence why) {
    return Refusal.ofFile(Sentence.of("{0}: can't be written: {1}", named, why));
  }
}
