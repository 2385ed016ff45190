package stafette.keep;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * The one door for files. They are read whole, and written so that none is ever spoilt: beside its
 * place first, there read again and forced to disk, then moved in one step. Whoever looks sees the
 * old file or all of the new one, also after a crash or with a full disk.
 */
public final class FileDoor {
  /** No score is larger; a file beyond it is refused before it fills the memory. */
  private static final int LARGEST_BYTES = 512 << 20;

  private FileDoor() {}

  public static byte[] read(Path file) throws Refusal {
    if (Files.isDirectory(file)) {
      throw Refusal.ofFile(Sentence.of("{0}: is a folder; name a file in it", file));
    }
    if (Files.notExists(file)) {
      throw Refusal.ofFile(Sentence.of("{0}: there is no such file", file));
    }
    if (!Files.isRegularFile(file)) {
      throw Refusal.ofFile(
          Sentence.of("{0}: is a device or a pipe; copy what it gives into a file first", file));
    }
    try (InputStream in = Files.newInputStream(file)) {
      refuseTooLarge(file, Files.size(file));
      byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
      refuseTooLarge(file, bytes.length);
      return bytes;
    } catch (IOException e) {
      throw Refusal.ofFile(Sentence.of("{0}: can't be read ({1})", file, FileTrouble.with(e)));
    }
  }

  private static void refuseTooLarge(Path file, long bytes) throws Refusal {
    if (bytes > LARGEST_BYTES) {
      throw Refusal.ofFile(
          Sentence.of(
              "{0}: is larger than {1} MB, too large for a score", file, LARGEST_BYTES >> 20));
    }
  }

  /**
   * Writes a whole file. A symbolic link stays one and leads to the new file; a file that is
   * replaced passes its owner, group and mode on, as far as the system allows.
   *
   * @param replace whether a file that is there already may be replaced
   * @param proof that what stands in the file can be read again; asked before anything is replaced
   */
  public static void write(Path file, byte[] bytes, boolean replace, RereadProof proof)
      throws Refusal {
    Destination to = Destination.of(file);
    to.refuseToWrite(replace);
    FileBeside.clean(to.folder());
    try (FileBeside beside = FileBeside.of(to.real())) {
      beside.fill(bytes);
      proof.of(bytes);
      beside.refuseOtherThan(bytes);
      to.refuseToWrite(replace);
      beside.move();
    } catch (IOException e) {
      throw Destination.closed(file, FileTrouble.with(e));
    }
  }

  /** Makes the folder that a file shall stand in, if it is not there. */
  static void makeFolderOf(Path file) throws Refusal {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
    } catch (IOException e) {
      throw Refusal.ofFile(
          Sentence.of("{0}: its folder can't be made ({1})", file, FileTrouble.with(e)));
    }
  }

  /** Removes a file, if it is there. */
  static void remove(Path file) throws Refusal {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw Refusal.ofFile(Sentence.of("{0}: can't be removed ({1})", file, FileTrouble.with(e)));
    }
  }

  /** Whether a file holds just these bytes. */
  static boolean holds(Path file, byte[] bytes) throws IOException {
    try (InputStream written = Files.newInputStream(file);
        InputStream meant = new ByteArrayInputStream(bytes)) {
      byte[] some;
      do {
        some = written.readNBytes(1 << 16);
        if (!Arrays.equals(some, meant.readNBytes(1 << 16))) {
          return false;
        }
      } while (some.length > 0);
      return true;
    }
  }
}
