package stafette.check;

import java.util.ArrayList;
import java.util.List;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.words.Sentence;

/**
 * Where always several play the same line, their handoffs must not meet: no stroke stands in the
 * overlaps of two relays.
 */
final class DoublingRules {
  private DoublingRules() {}

  static List<Finding> findings(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    List<Handoff> handoffs = plan.handoffs();
    for (int i = 0; i < handoffs.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (meet(plan, handoffs.get(k), handoffs.get(i))) {
          findings.add(finding(plan, handoffs.get(i), handoffs.get(k)));
        }
      }
    }
    return findings;
  }

  private static boolean meet(Plan plan, Handoff one, Handoff other) {
    return plan.brief().doubled(one.enters().relay(), other.enters().relay())
        && one.shared() > 0
        && other.shared() > 0
        && one.enters().first() <= other.leaves().last()
        && other.enters().first() <= one.leaves().last();
  }

  private static Finding finding(Plan plan, Handoff handoff, Handoff other) {
    Line line = plan.brief().line(handoff.enters().relay());
    return Finding.at(
        Finding.FindingKind.OVERLAP,
        Whereabouts.of(
            plan.player(handoff.enters().segments().get(0)), line, handoff.enters().first()),
        Sentence.of(
            "takes over just when {0} does, who plays along; let one of the two handoffs come"
                + " earlier or later",
            plan.who(other.enters())));
  }
}
