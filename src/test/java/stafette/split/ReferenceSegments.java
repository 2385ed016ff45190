package stafette.split;

import java.util.ArrayList;
import java.util.List;
import stafette.check.Costing;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;

/**
 * The segments that some player could play if it came fresh, as the judge sees it, with what they
 * cost. For briefs with one line and without hockets.
 */
final class ReferenceSegments {
  private ReferenceSegments() {}

  /** A segment, and its cost in whole points. */
  record Priced(Segment segment, int points) {}

  static List<Priced> of(Brief brief) {
    List<Priced> result = new ArrayList<>();
    for (int player = 0; player < brief.players().size(); player++) {
      for (int way = 0; way < brief.players().get(player).ways().size(); way++) {
        for (int first = 0; first < brief.line().count(); first++) {
          collect(brief, player, way, first, result);
        }
      }
    }
    return result;
  }

  /**
   * A segment that can't be played is no better for going on; one that is too short for its speed
   * is, and one that spoils a given passage may be, where a longer one ends with a softer note.
   */
  private static void collect(Brief brief, int player, int way, int first, List<Priced> segments) {
    for (int last = first; last < brief.line().count(); last++) {
      Segment segment = new Segment(player, way, first, last);
      Verdict verdict = Judge.judge(new Plan(brief.withinMargin(), List.of(segment)));
      List<Finding> against =
          verdict.findings().stream().filter(ReferenceSegments::isItsOwn).toList();
      if (against.isEmpty()) {
        segments.add(new Priced(segment, Costing.segment(brief, segment).total()));
      } else if (!against.stream().allMatch(ReferenceSegments::mayEnd)) {
        return;
      }
    }
  }

  /** What a player did before can only make it worse; rests are a matter of the whole plan. */
  private static boolean isItsOwn(Finding finding) {
    return finding.kind() != Finding.FindingKind.SHAPE
        && finding.kind() != Finding.FindingKind.REST;
  }

  private static boolean mayEnd(Finding finding) {
    return finding.kind() == Finding.FindingKind.TURN || isOfGiven(finding);
  }

  private static boolean isOfGiven(Finding finding) {
    return finding.message().toString().contains("in a passage of its own part");
  }
}
