package stafette.check;

import java.util.ArrayList;
import java.util.List;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.words.Sentence;

/**
 * Where several relays go on at once, who takes part in a hocket plays in no other relay from the
 * hocket's first note to its last. A rule of this planning model, not of the trade: it lets turns
 * be planned in the order in which they begin.
 */
final class HocketRules {
  private HocketRules() {}

  static List<Finding> findings(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Segment hocket : plan.segments()) {
      if (hocket.pattern() != Pattern.ALL) {
        plan.segments().stream()
            .filter(other -> meets(plan, hocket, other))
            .map(other -> finding(plan, other))
            .forEach(findings::add);
      }
    }
    return findings;
  }

  private static boolean meets(Plan plan, Segment hocket, Segment other) {
    return hocket.relay() != other.relay()
        && hocket.player() == other.player()
        && begin(plan, hocket) <= end(plan, other)
        && begin(plan, other) <= end(plan, hocket);
  }

  private static long begin(Plan plan, Segment segment) {
    return plan.line(segment).onsetMicros(segment.first());
  }

  private static long end(Plan plan, Segment segment) {
    return plan.line(segment).onsetMicros(segment.last());
  }

  private static Finding finding(Plan plan, Segment other) {
    return Finding.at(
        Finding.FindingKind.REST,
        Whereabouts.of(plan.player(other), plan.line(other), other.first()),
        Sentence.of(
            "takes part in a hocket of another relay meanwhile; let somebody else play here"));
  }
}
