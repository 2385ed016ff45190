package stafette.desktop.state;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.plan.Segment;
import stafette.plan.Turn;

/** Finds the edit that is meant where a gesture leaves open whom it is about. */
final class HandEdits {
  private HandEdits() {}

  /** The second part goes to whoever plays least of those who may. */
  static Optional<PlanEdit> split(Plan plan, int segment, int stroke) {
    Segment divided = plan.segments().get(segment);
    return leastBusy(plan, divided)
        .map(player -> new PlanEdit.Split(turn(plan, divided), stroke, player, 0));
  }

  /** One of a pair goes on alone; who is alone gets a second. */
  static PlanEdit hocket(Plan plan, int segment) {
    Segment dealt = plan.segments().get(segment);
    return dealt.pattern() == Pattern.ALL
        ? new PlanEdit.Pair(turn(plan, dealt), leastBusy(plan, dealt).orElse(dealt.player()), 0)
        : new PlanEdit.Alone(segment);
  }

  private static int turn(Plan plan, Segment segment) {
    return IntStream.range(0, plan.turns().size())
        .filter(turn -> plan.turns().get(turn).segments().contains(segment))
        .findFirst()
        .orElseThrow();
  }

  /** Of those who have no part in the turn. */
  private static Optional<Integer> leastBusy(Plan plan, Segment segment) {
    Turn turn = plan.turns().get(turn(plan, segment));
    return IntStream.range(0, plan.brief().players().size())
        .filter(player -> !turn.has(player))
        .filter(player -> !plan.brief().players().get(player).skills().isEmpty())
        .boxed()
        .min(Comparator.comparingInt(player -> strokes(plan, player)));
  }

  private static int strokes(Plan plan, int player) {
    return plan.turns().stream()
        .filter(turn -> turn.has(player))
        .mapToInt((Turn turn) -> turn.last() - turn.first() + 1)
        .sum();
  }
}
