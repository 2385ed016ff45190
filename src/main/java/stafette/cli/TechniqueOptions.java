package stafette.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import stafette.ask.Allowance;

/** Which techniques players bring. */
final class TechniqueOptions {
  @Option(
      names = "--allow",
      paramLabel = "TECHNIQUE",
      description =
          "A technique that not everybody has: \"double tonguing\", or \"Clarinet 1: double tonguing\".")
  private List<String> allow = new ArrayList<>();

  @Option(
      names = "--set",
      paramLabel = "TECHNIQUES",
      description =
          "Techniques in place of all that are expected: \"Flute 1: single tonguing, slurred\".")
  private List<String> set = new ArrayList<>();

  List<Allowance> allowances() {
    List<Allowance> all = new ArrayList<>(Allowance.parse(allow, false));
    all.addAll(Allowance.parse(set, true));
    return List.copyOf(all);
  }
}
