package stafette.musicxml.write;

import java.util.List;
import java.util.stream.Stream;
import stafette.musicxml.write.WrittenRule.Violation;

/** The rules for every bar that is written into a score. */
public final class WrittenRules {
  static final List<WrittenRule> ALL =
      Stream.of(
              LengthRules.ALL,
              HairpinRules.ALL,
              PairRules.ALL,
              BeamRules.ALL,
              List.of(AccidentalRule.RULE),
              RestRules.ALL,
              PlaceRules.ALL)
          .flatMap(List::stream)
          .toList();

  private WrittenRules() {}

  /**
   * What is wrong in a written score and was not in the same bar of its source, as sentences.
   *
   * @param source the text before
   * @param written the text after
   */
  public static List<String> broken(String source, String written) {
    return violations(source, written).stream().map(Violation::toString).toList();
  }

  static List<Violation> violations(String source, String written) {
    ReadPage before = ReadPage.of(source);
    ReadPage after = ReadPage.of(written);
    return ALL.stream()
        .flatMap(
            rule -> {
              List<Violation> known = rule.violations(before, before);
              return rule.violations(before, after).stream()
                  .filter(found -> known.stream().noneMatch(found::isAs));
            })
        .toList();
  }
}
