package stafette.cli;

import java.nio.file.Path;
import java.util.List;
import stafette.keep.Outputs;

/** What a command reads, which none of its outputs may replace. */
final class Inputs {
  private Inputs() {}

  /** The outputs of a command that reads all of these; none so far. */
  static Outputs of(List<List<Path>> inputs) {
    return Outputs.beside(inputs.stream().flatMap(List::stream).toList());
  }
}
