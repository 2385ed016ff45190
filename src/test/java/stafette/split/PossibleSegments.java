package stafette.split;

import java.util.ArrayList;
import java.util.List;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** The segments that some player could play if it came fresh, as the judge sees it. */
final class PossibleSegments {
  private PossibleSegments() {}

  static List<Segment> of(Brief brief) {
    List<Segment> result = new ArrayList<>();
    for (int player = 0; player < brief.players().size(); player++) {
      for (int skill = 0; skill < brief.players().get(player).skills().size(); skill++) {
        for (int first = 0; first < brief.line().count(); first++) {
          collect(brief, player, skill, first, result);
        }
      }
    }
    return result;
  }

  /** A segment that can't be played is no better for going on. */
  private static void collect(
      Brief brief, int player, int skill, int first, List<Segment> segments) {
    for (int last = first; last < brief.line().count(); last++) {
      Segment segment = new Segment(player, skill, first, last);
      if (!isPossible(brief, segment)) {
        return;
      }
      segments.add(segment);
    }
  }

  /** What a player did before can only make it worse. */
  static boolean isPossible(Brief brief, Segment segment) {
    return Judge.judge(new Plan(brief, List.of(segment))).findings().stream()
        .allMatch(
            finding -> finding.kind() == Finding.Kind.SHAPE || finding.kind() == Finding.Kind.REST);
  }
}
