package stafette.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.work.Refusal;
import stafette.work.WriteScore;

/** Options that say where a score is written. */
final class OutOptions {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "OUT",
      description = "The score to write.")
  private @Nullable Path out;

  @Option(names = "--in-place", description = "Writes into the score itself.")
  private boolean inPlace;

  @Option(names = "--force", description = "Replaces OUT if it is there already.")
  private boolean force;

  Optional<WriteScore.Target> target(Path score) throws Refusal {
    return WriteScore.target(score, out, inPlace, force);
  }

  boolean force() {
    return force;
  }
}
