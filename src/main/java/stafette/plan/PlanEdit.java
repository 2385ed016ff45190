package stafette.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A change to a plan by hand. Turns and handoffs are numbered from 0 over all relays, as in {@link
 * Plan#turns} and {@link Plan#handoffs}; segments as in {@link Plan#segments}.
 *
 * <p>An edit keeps the plan's shape: the turns of a relay begin and end one after the other. Rules
 * it need not keep, so a gap or an overlap that is too short is for the judge to find.
 */
public sealed interface PlanEdit {
  /**
   * The turns, changed.
   *
   * @return empty if there is no such handoff, turn, player or stroke, or the plan would lose its
   *     shape
   */
  Optional<List<Turn>> applied(Plan plan);

  /** Asks what is asked of the kind at hand. */
  <T> T match(EditKinds<T> kinds);

  /** What is asked of each kind. */
  interface EditKinds<T> {
    T move(Move move);

    T give(Give give);

    T split(Split split);

    T join(Join join);

    T pair(Pair pair);

    T alone(Alone alone);
  }

  /**
   * Moves a handoff.
   *
   * @param first the first stroke of who enters
   * @param last the last stroke of who leaves
   */
  record Move(int handoff, int first, int last) implements PlanEdit {
    @Override
    public Optional<List<Turn>> applied(Plan plan) {
      if (handoff < 0 || handoff >= plan.handoffs().size()) {
        return Optional.empty();
      }
      Handoff moved = plan.handoffs().get(handoff);
      if (first < 0 || last < moved.leaves().first() || first > moved.enters().last()) {
        return Optional.empty();
      }
      List<Turn> turns = new ArrayList<>(plan.turns());
      int at = turns.indexOf(moved.leaves());
      turns.set(at, moved.leaves().between(moved.leaves().first(), last));
      turns.set(at + 1, moved.enters().between(first, moved.enters().last()));
      return Optional.of(turns);
    }

    @Override
    public <T> T match(EditKinds<T> kinds) {
      return kinds.move(this);
    }
  }

  /**
   * Gives a segment to somebody else.
   *
   * @param way with which of the player's ways
   */
  record Give(int segment, int player, int way) implements PlanEdit {
    @Override
    public Optional<List<Turn>> applied(Plan plan) {
      if (segment < 0 || segment >= plan.segments().size() || !Edits.has(plan, player, way)) {
        return Optional.empty();
      }
      Segment given = plan.segments().get(segment);
      return Edits.replaced(
          plan,
          given,
          turn ->
              turn.segments().stream().anyMatch(s -> !s.equals(given) && s.player() == player)
                  ? Optional.empty()
                  : Optional.of(turn.with(given, given.of(player, way))));
    }

    @Override
    public <T> T match(EditKinds<T> kinds) {
      return kinds.give(this);
    }
  }

  /**
   * Divides a turn; both parts share one stroke, and who enters is somebody else.
   *
   * @param stroke the first of the second part, the last of the first one
   * @param player who takes the second part
   */
  record Split(int turn, int stroke, int player, int way) implements PlanEdit {
    @Override
    public Optional<List<Turn>> applied(Plan plan) {
      if (!Edits.isTurn(plan, turn) || !Edits.has(plan, player, way)) {
        return Optional.empty();
      }
      Turn split = plan.turns().get(turn);
      if (stroke <= split.first() || stroke >= split.last()) {
        return Optional.empty();
      }
      Segment second = new Segment(split.relay(), player, way, stroke, split.last(), Pattern.ALL);
      List<Turn> turns = new ArrayList<>(plan.turns());
      turns.set(turn, split.between(split.first(), stroke));
      turns.add(turn + 1, new Turn(List.of(second)));
      return Optional.of(turns);
    }

    @Override
    public <T> T match(EditKinds<T> kinds) {
      return kinds.split(this);
    }
  }

  /** Lets who leaves play on to the end of who would enter. */
  record Join(int handoff) implements PlanEdit {
    @Override
    public Optional<List<Turn>> applied(Plan plan) {
      if (handoff < 0 || handoff >= plan.handoffs().size()) {
        return Optional.empty();
      }
      Handoff joined = plan.handoffs().get(handoff);
      List<Turn> turns = new ArrayList<>(plan.turns());
      int at = turns.indexOf(joined.leaves());
      turns.set(at, joined.leaves().between(joined.leaves().first(), joined.enters().last()));
      turns.remove(at + 1);
      return Optional.of(turns);
    }

    @Override
    public <T> T match(EditKinds<T> kinds) {
      return kinds.join(this);
    }
  }

  /** Deals a turn out between its player and another one, who plays the second share. */
  record Pair(int turn, int player, int way) implements PlanEdit {
    @Override
    public Optional<List<Turn>> applied(Plan plan) {
      if (!Edits.isTurn(plan, turn)
          || plan.brief().rules().hocket() == Hocket.NO
          || !Edits.has(plan, player, way)
          || plan.turns().get(turn).isHocket()
          || plan.turns().get(turn).has(player)) {
        return Optional.empty();
      }
      Segment alone = plan.turns().get(turn).segments().get(0);
      List<Turn> turns = new ArrayList<>(plan.turns());
      turns.set(
          turn,
          new Turn(List.of(alone.taking(Pattern.ODD), alone.of(player, way).taking(Pattern.EVEN))));
      return Optional.of(turns);
    }

    @Override
    public <T> T match(EditKinds<T> kinds) {
      return kinds.pair(this);
    }
  }

  /** Gives a turn that is dealt out to one of the two alone. */
  record Alone(int segment) implements PlanEdit {
    @Override
    public Optional<List<Turn>> applied(Plan plan) {
      if (segment < 0 || segment >= plan.segments().size()) {
        return Optional.empty();
      }
      Segment kept = plan.segments().get(segment);
      return Edits.replaced(
          plan, kept, turn -> Optional.of(new Turn(List.of(kept.taking(Pattern.ALL)))));
    }

    @Override
    public <T> T match(EditKinds<T> kinds) {
      return kinds.alone(this);
    }
  }
}
