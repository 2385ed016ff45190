package stafette.desktop.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.JudgedPlan;
import stafette.plan.Handoff;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.score.Line;
import stafette.score.Place;
import stafette.time.Rank;

/**
 * Mends what does not work in the plan on the desk, by the one change at its place after which
 * least is amiss, of equals the one that costs least. Where no single change helps, it plans again,
 * which answers with reasons, remedies and the nearest plan.
 */
public final class Mending {
  private final Session session;

  Mending(Session session) {
    this.session = session;
  }

  /**
   * Mends one thing, in one step.
   *
   * @param finding as the judge numbers them, from 0
   */
  public void mend(int finding) {
    Desk base = session.settled();
    base.plan()
        .filter(judged -> finding < judged.verdict().findings().size())
        .ifPresent(
            judged ->
                session.work(
                    Watcher.WatchedWork.MENDING,
                    going -> mended(judged, finding, going::isOver),
                    better ->
                        better.ifPresentOrElse(
                            plan -> session.go(base.with(JudgedPlan.of(plan))), session::plan)));
  }

  private static Optional<Plan> mended(JudgedPlan judged, int number, BooleanSupplier stop) {
    List<Finding> before = judged.verdict().findings();
    Finding amiss = before.get(number);
    return changes(judged.plan(), amiss.place())
        .takeWhile(edit -> !stop.getAsBoolean())
        .flatMap(edit -> judged.plan().with(edit).stream())
        .map(plan -> new JudgedPlan(plan, Judge.judge(plan), Optional.empty()))
        .filter(other -> other.verdict().findings().size() < before.size())
        .filter(other -> other.verdict().findings().stream().noneMatch(left -> isSame(left, amiss)))
        .min(
            Comparator.comparingInt((JudgedPlan other) -> other.verdict().findings().size())
                .thenComparing(other -> other.verdict().cost().total()))
        .map(JudgedPlan::plan);
  }

  private static boolean isSame(Finding one, Finding other) {
    return one.kind() == other.kind() && one.place().equals(other.place());
  }

  private static Stream<PlanEdit> changes(Plan plan, Place place) {
    return IntStream.range(0, plan.segments().size())
        .filter(i -> plan.player(plan.segments().get(i)).name().equals(place.part()))
        .filter(i -> covers(plan, plan.segments().get(i), place))
        .boxed()
        .flatMap(i -> changes(plan, i));
  }

  private static boolean covers(Plan plan, Segment segment, Place place) {
    return IntStream.rangeClosed(segment.first(), segment.last())
        .anyMatch(stroke -> plan.line(segment).placeOf(stroke).at().equals(place.at()));
  }

  private static Stream<PlanEdit> changes(Plan plan, int segment) {
    Segment amiss = plan.segments().get(segment);
    Turn turn =
        plan.turns().stream()
            .filter(each -> each.segments().contains(amiss))
            .findFirst()
            .orElseThrow();
    return Stream.of(
            inEachHand(plan, (player, way) -> new PlanEdit.Give(segment, player, way)),
            amiss.pattern() == Pattern.ALL ? divided(plan, turn) : Stream.<PlanEdit>empty(),
            moved(plan, turn))
        .flatMap(each -> each);
  }

  private interface InHand {
    PlanEdit of(int player, int way);
  }

  private static Stream<PlanEdit> inEachHand(Plan plan, InHand edit) {
    return IntStream.range(0, plan.brief().players().size())
        .boxed()
        .flatMap(
            player ->
                IntStream.range(0, plan.brief().players().get(player).ways().size())
                    .mapToObj(way -> edit.of(player, way)));
  }

  private static Stream<PlanEdit> divided(Plan plan, Turn turn) {
    int number = plan.turns().indexOf(turn);
    return beats(plan, turn)
        .boxed()
        .flatMap(
            stroke ->
                inEachHand(plan, (player, way) -> new PlanEdit.Split(number, stroke, player, way)));
  }

  /** Its handoffs, on other beats of the turn, with as much in common as before. */
  private static Stream<PlanEdit> moved(Plan plan, Turn turn) {
    List<Handoff> handoffs = plan.handoffs();
    return IntStream.range(0, handoffs.size())
        .filter(i -> handoffs.get(i).leaves().equals(turn) || handoffs.get(i).enters().equals(turn))
        .boxed()
        .flatMap(
            i -> {
              int common = handoffs.get(i).leaves().last() - handoffs.get(i).enters().first();
              return beats(plan, turn)
                  .<PlanEdit>mapToObj(beat -> new PlanEdit.Move(i, beat - common, beat));
            });
  }

  private static IntStream beats(Plan plan, Turn turn) {
    Line line = plan.brief().line(turn.relay());
    return IntStream.rangeClosed(turn.first() + 1, turn.last() - 1)
        .filter(stroke -> line.rank(stroke).compareTo(Rank.BEAT) <= 0);
  }
}
