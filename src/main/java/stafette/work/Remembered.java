package stafette.work;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.words.Sentence;

/**
 * What the program remembers from one time to the next, in a folder of its own: the files that were
 * opened last, and the plan that was on the desk, in case the program ends unforeseen.
 */
public final class Remembered {
  private static final int MOST_RECENT = 10;

  private final Path samples;
  private final Path recent;
  private final Path plan;

  /**
   * @param folder made when something is to be remembered
   */
  public Remembered(Path folder) {
    this.samples = folder.resolve("samples");
    this.recent = folder.resolve("recent.txt");
    this.plan = folder.resolve("unfinished.json");
  }

  /** Where samples are put that are tried. */
  public Path samples() {
    return samples;
  }

  /** The files that were opened last and are still there, the last first. */
  public List<Path> recent() {
    try {
      return Files.exists(recent)
          ? Files.readAllLines(recent).stream().map(Path::of).filter(Files::exists).toList()
          : List.of();
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * Takes note of a file that was opened.
   *
   * @throws Refusal if it can't be written down
   */
  public void opened(Path file) throws Refusal {
    List<String> files = new ArrayList<>();
    files.add(file.toAbsolutePath().normalize().toString());
    recent().stream().map(Path::toString).filter(name -> !files.contains(name)).forEach(files::add);
    String text = String.join("\n", files.subList(0, Math.min(MOST_RECENT, files.size())));
    write(recent, text);
  }

  /**
   * Keeps what is on the desk, with or without a plan.
   *
   * @throws Refusal if it can't be written down
   */
  public void keep(OpenLine line, Optional<JudgedPlan> judged) throws Refusal {
    makeFolder(plan);
    Reports.savePlan(line.outcome(judged), plan, true);
  }

  /** What was on the desk when the program ended unforeseen: a plan file. */
  public Optional<Path> unfinished() {
    return Optional.of(plan).filter(Files::exists);
  }

  /** Forgets what was on the desk: it is kept elsewhere, or nobody wants it. */
  public void finished() {
    try {
      Files.deleteIfExists(plan);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static void write(Path file, String text) throws Refusal {
    makeFolder(file);
    FileDoor.write(file, text.getBytes(StandardCharsets.UTF_8), true);
  }

  private static void makeFolder(Path file) throws Refusal {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
    } catch (IOException e) {
      throw Refusal.ofFile(
          Sentence.of("{0}: its folder can't be made ({1})", file, String.valueOf(e.getMessage())));
    }
  }
}
