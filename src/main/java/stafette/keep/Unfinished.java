package stafette.keep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * What is on the desk, kept in case the program ends unforeseen. Each program that runs has a place
 * of its own, which it holds by a lock; the system gives the lock back however the program ends, so
 * a file in a place that nobody holds was left behind. May be used from several threads.
 */
public final class Unfinished implements AutoCloseable {
  private static final int PLACES = 100;

  private final Path folder;
  private final Map<Path, FileLock> held = new HashMap<>();
  private Optional<Path> own = Optional.empty();

  Unfinished(Path folder) {
    this.folder = folder;
  }

  /**
   * Something that was left behind.
   *
   * @param file a plan file
   * @param when it was last written
   * @param score the name of its score, if the file can be read
   */
  public record Left(Path file, Instant when, Optional<String> score) {}

  /** Writes what is on the desk to a file that is moved about. */
  @FunctionalInterface
  public interface DeskWriter {
    void to(Path file) throws Refusal;
  }

  /**
   * Keeps what is on the desk, in the place of what was kept before.
   *
   * @throws Refusal if it can't be written down
   */
  public synchronized void keep(DeskWriter desk) throws Refusal {
    desk.to(ownPlace());
  }

  private Path ownPlace() throws Refusal {
    if (own.isEmpty()) {
      own = Optional.of(freePlace());
    }
    return own.get();
  }

  private Path freePlace() throws Refusal {
    FileDoor.makeFolderOf(folder.resolve("desk"));
    for (Path place : places()) {
      if (!held.containsKey(place) && hold(place)) {
        if (!Files.exists(place)) {
          return place;
        }
        release(place);
      }
    }
    throw Refusal.ofFile(
        Sentence.of("{0}: what is on the desk can't be kept there; is it yours?", folder));
  }

  private List<Path> places() {
    return IntStream.rangeClosed(1, PLACES)
        .mapToObj(number -> folder.resolve("desk-" + number + ".json"))
        .toList();
  }

  private boolean hold(Path place) {
    Optional<FileLock> hold = FileLock.of(place.resolveSibling(place.getFileName() + ".lock"));
    hold.ifPresent(got -> held.put(place, got));
    return hold.isPresent();
  }

  private void release(Path place) {
    Optional.ofNullable(held.remove(place)).ifPresent(FileLock::close);
  }

  /**
   * Forgets what is on the desk: it is kept elsewhere, or nobody wants it.
   *
   * @throws Refusal if it can't be removed
   */
  public synchronized void finished() throws Refusal {
    if (own.isPresent()) {
      FileDoor.remove(own.get());
    }
  }

  /** What other programs left behind, the oldest first. */
  public synchronized List<Left> left() {
    List<Left> left = new ArrayList<>();
    for (Path place : places()) {
      if (Files.exists(place) && !held.containsKey(place) && hold(place)) {
        release(place);
        left.add(new Left(place, written(place), score(place)));
      }
    }
    left.sort(Comparator.comparing(Left::when));
    return left;
  }

  private static Instant written(Path file) {
    try {
      return Files.getLastModifiedTime(file).toInstant();
    } catch (IOException e) {
      return Instant.EPOCH;
    }
  }

  private static Optional<String> score(Path file) {
    try {
      return Optional.of(Path.of(KeptPlan.parsed(file).score().file()))
          .map(Path::getFileName)
          .map(Path::toString);
    } catch (Refusal e) {
      return Optional.empty();
    }
  }

  /**
   * Takes charge of something that was left behind, so that no other program offers it.
   *
   * @throws Refusal if another program has it
   */
  public synchronized void claim(Left left) throws Refusal {
    if (!held.containsKey(left.file()) && !hold(left.file())) {
      throw Refusal.ofFile(Sentence.of("{0}: another window has put it back", left.file()));
    }
  }

  /**
   * Removes something that was left behind.
   *
   * @throws Refusal if another program has it, or it can't be removed
   */
  public synchronized void dismiss(Left left) throws Refusal {
    claim(left);
    FileDoor.remove(left.file());
    release(left.file());
  }

  /**
   * Copies something that was left behind, to be opened as any plan.
   *
   * @throws Refusal if it can't be read or written, or its score would be lost with it
   */
  public void copy(Left left, Path to) throws Refusal {
    Outputs.beside(inputs(left)).add(to, true);
    FileDoor.write(to, FileDoor.read(left.file()), true, RereadProof.BYTES);
  }

  private static List<Path> inputs(Left left) {
    try {
      return KeptPlan.inputs(left.file());
    } catch (Refusal damaged) {
      return List.of(left.file());
    }
  }

  /** Gives all places back; the files in them stay for the next time. */
  @Override
  public synchronized void close() {
    held.values().forEach(FileLock::close);
    held.clear();
    own = Optional.empty();
  }
}
