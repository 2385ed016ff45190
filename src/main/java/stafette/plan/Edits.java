package stafette.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Changes plans by hand. */
final class Edits {
  private Edits() {}

  static Optional<Plan> edited(Plan plan, PlanEdit edit) {
    return edit.applied(plan).filter(Edits::hasShape).flatMap(turns -> plan(plan.brief(), turns));
  }

  private static Optional<Plan> plan(Brief brief, List<Turn> turns) {
    for (Turn turn : turns) {
      boolean beyond = turn.last() >= brief.line(turn.relay()).count();
      if (beyond
          || (turn.isHocket() && !brief.halves(turn.relay()).bothPlay(turn.first(), turn.last()))) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new Plan(brief, turns.stream().flatMap(turn -> turn.segments().stream()).toList()));
  }

  /** Whether the turns of each relay begin and end one after the other. */
  private static boolean hasShape(List<Turn> turns) {
    for (int i = 1; i < turns.size(); i++) {
      Turn before = turns.get(i - 1);
      Turn turn = turns.get(i);
      if (before.relay() == turn.relay()
          && (turn.first() <= before.first() || turn.last() <= before.last())) {
        return false;
      }
    }
    return true;
  }

  static boolean isTurn(Plan plan, int turn) {
    return turn >= 0 && turn < plan.turns().size();
  }

  static boolean has(Plan plan, int player, int way) {
    return player >= 0
        && player < plan.brief().players().size()
        && way >= 0
        && way < plan.brief().players().get(player).ways().size();
  }

  /**
   * The turns with that of a segment made into another one.
   *
   * @param made empty if it can't be
   */
  static Optional<List<Turn>> replaced(
      Plan plan, Segment segment, Function<Turn, Optional<Turn>> made) {
    List<Turn> turns = new ArrayList<>(plan.turns());
    for (int i = 0; i < turns.size(); i++) {
      if (turns.get(i).segments().contains(segment)) {
        Optional<Turn> other = made.apply(turns.get(i));
        if (other.isEmpty()) {
          return Optional.empty();
        }
        turns.set(i, other.get());
      }
    }
    return Optional.of(turns);
  }
}
