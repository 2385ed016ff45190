package stafette.musicxml.write;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stafette.musicxml.write.WrittenRule.Violation;

/** The rules for every bar that is written into a score. */
public final class WrittenRules {
  public static final String HAIRPIN_GOES_ALONG = "a hairpin goes with its notes";
  public static final String EMPTY_BAR_IS_ONE_REST = "an empty bar is one rest";
  public static final String BEAM_KEEPS_TO_GROUP = "a beam stays within its group of the metre";
  static final String NO_IDLE_ACCIDENTAL = "no accidental says what is in force";

  static final List<WrittenRule> ALL =
      Stream.of(
              LengthRules.ALL,
              HairpinRules.ALL,
              PairRules.ALL,
              BeamRules.ALL,
              AccidentalRules.ALL,
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
    return broken(source, written, Set.of());
  }

  /**
   * The same, without some rules.
   *
   * @param except names of rules
   */
  public static List<String> broken(String source, String written, Set<String> except) {
    return violations(source, written).stream()
        .filter(violation -> !except.contains(violation.rule()))
        .map(Violation::toString)
        .toList();
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
