package stafette.keep;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * A file that is being written, beside the one that it becomes. Its name tells which program writes
 * it, so that what a killed one left is known and cleaned away by the next that writes there.
 */
final class FileBeside implements AutoCloseable {
  private static final Pattern NAME =
      Pattern.compile("\\.stafette-([0-9]{1,18})-[0-9a-f-]+\\.part");

  /**
   * Other machines may write into the same folder; none takes that long from one byte to the next.
   */
  private static final Duration PAUSE = Duration.ofMinutes(1);

  /** What is older belongs to nobody, whoever has its number now. */
  private static final Duration LONGEST = Duration.ofDays(1);

  /** How finely a program's beginning and a file's time can be told apart. */
  private static final Duration GRAIN = Duration.ofSeconds(2);

  private final Path target;
  private final Path part;
  private final FileChannel channel;

  private FileBeside(Path target, Path part, FileChannel channel) {
    this.target = target;
    this.part = part;
    this.channel = channel;
  }

  /** An empty one. */
  static FileBeside of(Path target) throws IOException {
    String name =
        ".stafette-%d-%s.part".formatted(ProcessHandle.current().pid(), UUID.randomUUID());
    Path part = target.resolveSibling(name);
    return new FileBeside(
        target,
        part,
        FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
  }

  /** Writes all of it, for whom the target was, and has it on the disk. */
  void fill(byte[] bytes) throws IOException {
    beLikeTarget();
    ByteBuffer rest = ByteBuffer.wrap(bytes);
    while (rest.hasRemaining()) {
      channel.write(rest);
    }
    channel.force(true);
    channel.close();
  }

  private void beLikeTarget() throws IOException {
    PosixFileAttributeView own = Files.getFileAttributeView(part, PosixFileAttributeView.class);
    if (own != null && Files.exists(target)) {
      PosixFileAttributes before = Files.readAttributes(target, PosixFileAttributes.class);
      asFarAsAllowed(() -> own.setGroup(before.group()));
      asFarAsAllowed(() -> own.setOwner(before.owner()));
      asFarAsAllowed(() -> own.setPermissions(before.permissions()));
    }
  }

  private interface FileAction {
    void run() throws IOException;
  }

  private static void asFarAsAllowed(FileAction step) {
    try {
      step.run();
    } catch (IOException notAllowed) {
      // then it stays as it is
    }
  }

  /**
   * @throws Refusal if the disk holds something else than these bytes
   */
  void refuseOtherThan(byte[] bytes) throws IOException, Refusal {
    if (!FileDoor.holds(part, bytes)) {
      throw Destination.closed(
          target, Sentence.of("the disk gives back something else; nothing was replaced"));
    }
  }

  /** Puts it in its place in one step, and has that on the disk too. */
  void move() throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
    asFarAsAllowed(this::forceFolder);
  }

  /** Where a folder can't be forced, as on Windows, the system sees to it. */
  private void forceFolder() throws IOException {
    try (FileChannel folder = FileChannel.open(target.getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    }
  }

  /** Nothing stays beside the target. */
  @Override
  public void close() throws IOException {
    channel.close();
    Files.deleteIfExists(part);
  }

  /** Cleans away what killed programs left in a folder, as far as that can be done. */
  static void clean(Path folder) {
    asFarAsAllowed(
        () -> {
          try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, ".stafette-*.part")) {
            for (Path part : parts) {
              if (isLeft(part)) {
                Files.deleteIfExists(part);
              }
            }
          }
        });
  }

  private static boolean isLeft(Path part) throws IOException {
    Matcher name = NAME.matcher(String.valueOf(part.getFileName()));
    if (!name.matches()) {
      return false;
    }
    Instant touched = Files.getLastModifiedTime(part).toInstant();
    Duration age = Duration.between(touched, Instant.now());
    return age.compareTo(LONGEST) > 0
        || (age.compareTo(PAUSE) > 0 && !isAtWork(Long.parseLong(name.group(1)), touched));
  }

  /** Whether a program runs that had begun when the file was touched. */
  private static boolean isAtWork(long number, Instant touched) {
    Optional<ProcessHandle> program = ProcessHandle.of(number);
    return program.isPresent()
        && program.get().info().startInstant().stream()
            .noneMatch(began -> began.isAfter(touched.plus(GRAIN)));
  }
}
