package stafette.keep;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stafette.words.Refusal;

/**
 * What the program remembers from one time to the next, in a folder of its own: the files that were
 * opened last, whether the window is dark, and what was on the desk, in case the program ends
 * unforeseen.
 */
public final class Remembered implements AutoCloseable {
  private static final int MOST_RECENT = 10;

  private final Path samples;
  private final Path recent;
  private final Path dark;
  private final Unfinished unfinished;

  /**
   * @param folder made when something is to be remembered
   */
  public Remembered(Path folder) {
    this.samples = folder.resolve("samples");
    this.recent = folder.resolve("recent.txt");
    this.dark = folder.resolve("dark");
    this.unfinished = new Unfinished(folder);
  }

  /** Where samples are put that are tried. */
  public Path samples() {
    return samples;
  }

  /** The files that were opened last, the last first, whether they are still there or not. */
  public List<Path> recent() {
    try {
      return Files.exists(recent)
          ? Files.readAllLines(recent).stream().flatMap(Remembered::path).toList()
          : List.of();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static Stream<Path> path(String text) {
    try {
      return text.isBlank() ? Stream.of() : Stream.of(Path.of(text));
    } catch (InvalidPathException e) {
      return Stream.of();
    }
  }

  /**
   * Takes note of a file that was opened.
   *
   * @throws Refusal if it can't be written down
   */
  public void opened(Path file) throws Refusal {
    List<Path> files = new ArrayList<>();
    files.add(whole(file));
    recent().stream().filter(other -> !files.contains(other)).forEach(files::add);
    write(files.subList(0, Math.min(MOST_RECENT, files.size())));
  }

  /**
   * Leaves out a file from now on, if it is not there any more.
   *
   * @return whether it is not there
   * @throws Refusal if that can't be written down
   */
  public boolean forgetMissing(Path file) throws Refusal {
    boolean missing = !Files.exists(file);
    if (missing) {
      write(recent().stream().filter(other -> !other.equals(whole(file))).toList());
    }
    return missing;
  }

  /** Whether the window was dark the last time. */
  public boolean isDark() {
    return Files.exists(dark);
  }

  /**
   * Takes note that the window is dark from now on, or light.
   *
   * @throws Refusal if it can't be written down
   */
  public void dark(boolean now) throws Refusal {
    if (now) {
      FileDoor.makeFolderOf(dark);
      FileDoor.write(dark, new byte[0], true, RereadProof.BYTES);
    } else {
      FileDoor.remove(dark);
    }
  }

  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  private void write(List<Path> files) throws Refusal {
    FileDoor.makeFolderOf(recent);
    String text = String.join("\n", files.stream().map(Path::toString).toList());
    FileDoor.write(recent, text.getBytes(StandardCharsets.UTF_8), true, RereadProof.BYTES);
  }

  /** What was on the desk, now or when the program ended unforeseen. */
  public Unfinished unfinished() {
    return unfinished;
  }

  /** Ends remembering; what is unfinished stays for the next time. */
  @Override
  public void close() {
    unfinished.close();
  }
}
