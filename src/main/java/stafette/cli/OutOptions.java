package stafette.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.keep.Outputs;
import stafette.words.Refusal;
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

  /**
   * Where the score is written, declared among the outputs; empty if nothing is to be written.
   *
   * @throws Refusal if it would overwrite the score itself without being asked to, or can't be
   *     written
   */
  Optional<WriteScore.Target> target(Path score, Outputs outputs) throws Refusal {
    if (inPlace) {
      if (out != null && !Outputs.same(score, out)) {
        throw Refusal.wrongUse("--in-place writes into " + score + "; leave out -o, or --in-place");
      }
      outputs.addInPlace(score);
      return Optional.of(new WriteScore.Target(score, true));
    }
    if (out == null) {
      return Optional.empty();
    }
    if (Outputs.same(score, out)) {
      throw Refusal.ofFile(out + ": is the score itself; name another file, or say --in-place");
    }
    outputs.add(out, force);
    return Optional.of(new WriteScore.Target(out, force));
  }

  boolean force() {
    return force;
  }
}
