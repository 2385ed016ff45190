package stafette.keep;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import stafette.json.PlanFile;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/** The file of a plan as it stands, before it is opened with its score. */
public final class KeptPlan {
  private static final Pattern PLAN = Pattern.compile("\uFEFF?\\s*\\{");

  private KeptPlan() {}

  /** Whether a file looks like a plan rather than a score, damaged or not. */
  public static boolean isPlan(Path file) throws Refusal {
    String text = new String(FileDoor.read(file), StandardCharsets.UTF_8);
    return PLAN.matcher(text).lookingAt()
        || file.toString().toLowerCase(Locale.ROOT).endsWith(".json");
  }

  /**
   * What opening a plan reads: its file and its score.
   *
   * @throws Refusal if the plan can't be read
   */
  public static List<Path> inputs(Path file) throws Refusal {
    return List.of(file, scoreOf(file, parsed(file)));
  }

  /** Our fault if what was written can't be read again. */
  public static void readAgain(Path file, byte[] written) {
    try {
      PlanFile.read(file.toString(), written);
    } catch (UnreadableFile e) {
      throw new IllegalStateException("what would be written can't be read", e);
    }
  }

  /** What a plan file says. */
  public static PlanFile parsed(Path file) throws Refusal {
    try {
      return PlanFile.read(file.toString(), FileDoor.read(file));
    } catch (UnreadableFile e) {
      throw Refusal.ofFile(
          Sentence.list(
              System.lineSeparator(),
              List.of(
                  e.inWords(),
                  Sentence.of("Take a copy of the plan from before, or split the line again."))));
    }
  }

  /** Where a plan says that its score is. */
  public static Path scoreOf(Path file, PlanFile plan) {
    return file.toAbsolutePath().resolveSibling(plan.score().file()).normalize();
  }
}
