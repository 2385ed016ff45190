package stafette.work;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import stafette.words.Sentence;

/** Reads files whole, and writes them so that a reader never sees half of one. */
final class FileDoor {
  /** No score is larger; a file beyond it is refused before it fills the memory. */
  private static final long LARGEST_BYTES = 512L << 20;

  private FileDoor() {}

  static byte[] read(Path file) throws Refusal {
    try {
      if (Files.isDirectory(file)) {
        throw Refusal.ofFile(Sentence.of("{0}: is a folder; name a file in it", file));
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw Refusal.ofFile(
            Sentence.of("{0}: is a device or a pipe; copy what it gives into a file first", file));
      }
      if (Files.size(file) > LARGEST_BYTES) {
        throw Refusal.ofFile(
            Sentence.of(
                "{0}: is larger than {1} MB, too large for a score", file, LARGEST_BYTES >> 20));
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw Refusal.ofFile(Sentence.of("{0}: there is no such file", file));
    } catch (IOException e) {
      throw Refusal.ofFile(
          Sentence.of("{0}: can't be read ({1})", file, String.valueOf(e.getMessage())));
    }
  }

  /**
   * Writes a whole file: beside its place first, then moved there in one step.
   *
   * @param replace whether a file that is there already may be replaced
   */
  static void write(Path file, byte[] bytes, boolean replace) throws Refusal {
    refuseToReplace(file, replace);
    try {
      Path beside =
          file.resolveSibling(
              "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
      try {
        Files.write(beside, bytes);
        move(beside, file);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw Refusal.ofFile(
          Sentence.of(
              "{0}: can't be written ({1}); is the folder there, and yours to write to?",
              file, String.valueOf(e.getMessage())));
    }
  }

  /** Makes the folder that a file shall stand in, if it is not there. */
  static void makeFolderOf(Path file) throws Refusal {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
    } catch (IOException e) {
      throw Refusal.ofFile(
          Sentence.of("{0}: its folder can't be made ({1})", file, String.valueOf(e.getMessage())));
    }
  }

  /** Removes a file, if it is there. */
  static void remove(Path file) throws Refusal {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw Refusal.ofFile(
          Sentence.of("{0}: can't be removed ({1})", file, String.valueOf(e.getMessage())));
    }
  }

  /** Refuses a file that is there already, unless it may be replaced. */
  static void refuseToReplace(Path file, boolean replace) throws Refusal {
    if (Files.exists(file) && !replace) {
      throw Refusal.ofFile(
          Sentence.of(
              "{0}: exists already; add --force to replace it, or name another file", file));
    }
  }

  /** Whether both names lead to the same file. */
  static boolean same(Path one, Path other) {
    try {
      return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
    } catch (IOException e) {
      return false;
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
