package stafette.keep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * A lock that one program at a time has, and that the system gives back when the program ends. Its
 * file stays: removing it could leave two programs with a lock each.
 */
final class FileLock implements AutoCloseable {
  private final FileChannel channel;

  private FileLock(FileChannel channel) {
    this.channel = channel;
  }

  /** The lock of a file; empty if somebody else has it, or there can be none. */
  static Optional<FileLock> of(Path file) {
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (isLocked(channel)) {
        return Optional.of(new FileLock(channel));
      }
      channel.close();
      return Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static boolean isLocked(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
