package stafette.split.rotate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.plan.Brief;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.split.SplitResult;

/**
 * Turns in a fixed order rehearse themselves. So the best regular rotation of all who are able is
 * preferred to the cheapest plan where it costs hardly more: by a weight, or one point for each of
 * its handoffs if that is more. Turns last between a second and a half and six seconds where any
 * unit does; they are counted from the first full bar, what comes before joins the first turn, and
 * fewer bars that are left over join the last one or make one of their own, but nobody's only one.
 * Asked only where one line is split without locks and hockets, and nothing is favoured.
 */
final class NearlyCheapest {
  private static final double LEAST_SECONDS = 1.5;
  private static final double MOST_SECONDS = 6;

  private final Brief brief;
  private final Line line;
  private final int cheapest;
  private final List<Integer> able;

  private NearlyCheapest(Brief brief, int cheapest) {
    this.brief = brief;
    this.line = brief.line();
    this.cheapest = cheapest;
    this.able = able(brief);
  }

  /** The rotation if there is one, else what the search for the cheapest plan came to. */
  static SplitResult orCheapest(Brief brief, SplitResult found, BooleanSupplier stop) {
    OptionalInt cost =
        found.match(
            best -> OptionalInt.of(best.cost()),
            none -> OptionalInt.empty(),
            stopped -> stopped.cost());
    boolean asked =
        brief.rules().favour() == Favour.BALANCE
            && brief.rules().hocket() == Hocket.NO
            && brief.rules().locks().isEmpty()
            && brief.lines().size() == 1
            && brief.players().size() > 1;
    return asked && cost.isPresent()
        ? new NearlyCheapest(brief, cost.getAsInt()).preferredTo(found, stop)
        : found;
  }

  private SplitResult preferredTo(SplitResult found, BooleanSupplier stop) {
    RegularSearch search =
        new RegularSearch(brief, units(), brief.players().size(), able, stop, progress -> {});
    SplitResult rotation = search.run();
    return search
        .unit()
        .flatMap(unit -> rotation.found().map(plan -> preferred(found, plan, unit)))
        .orElse(found);
  }

  private SplitResult preferred(SplitResult found, Plan plan, RotationUnit unit) {
    int cost = Costing.of(plan).total();
    SplitResult.InRotation how =
        new SplitResult.InRotation(unit.text(), cheapest, limit(plan.handoffs().size()));
    return found.<SplitResult>match(
        best -> new SplitResult.Best(plan, cost, Optional.of(how)),
        none -> none,
        stopped ->
            new SplitResult.Stopped(
                Optional.of(plan), OptionalInt.of(cost), stopped.bound(), Optional.of(how)));
  }

  private int limit(int handoffs) {
    return Math.max(brief.rules().weights().rotation(), handoffs);
  }

  /** All whom the user named and who could play some bar. */
  private static List<Integer> able(Brief brief) {
    return IntStream.range(0, brief.players().size())
        .filter(player -> Costing.idle(brief, player) > 0)
        .boxed()
        .toList();
  }

  private List<RegularSearch.Units> units() {
    List<RegularSearch.Units> all = new ArrayList<>();
    List<RegularSearch.Units> usual = new ArrayList<>();
    IntUnaryOperator most = handoffs -> cheapest + limit(handoffs);
    for (RotationUnit unit : RotationUnit.values()) {
      for (RegularSearch.Units units : cut(unit, most)) {
        all.add(units);
        if (isUsual(units.starts())) {
          usual.add(units);
        }
      }
    }
    return usual.isEmpty() ? all : usual;
  }

  /**
   * With what is left over in a turn of its own, if that need be nobody's only one, and without.
   */
  private List<RegularSearch.Units> cut(RotationUnit unit, IntUnaryOperator most) {
    List<Integer> starts = unit.startsFromFullBar(line);
    boolean leftOver = starts.size() > 1 && unit.leavesRemainder(line, starts);
    RegularSearch.Units whole = new RegularSearch.Units(unit, starts, leftOver, most);
    if (!leftOver) {
      return List.of(whole);
    }
    List<Integer> joined = starts.subList(0, starts.size() - 1);
    RegularSearch.Units without = new RegularSearch.Units(unit, joined, false, most);
    return joined.size() < able.size() ? List.of(without) : List.of(whole, without);
  }

  /** Whether the middle one of all turns, by length, lasts as long as turns usually do. */
  private boolean isUsual(List<Integer> starts) {
    double[] seconds = new double[starts.size()];
    for (int i = 0; i < seconds.length; i++) {
      long to =
          i + 1 < seconds.length
              ? line.onsetMicros(starts.get(i + 1))
              : line.endMicros(line.count() - 1);
      seconds[i] = (to - line.onsetMicros(starts.get(i))) / 1e6;
    }
    Arrays.sort(seconds);
    double middle = seconds[seconds.length / 2];
    return middle >= LEAST_SECONDS && middle <= MOST_SECONDS;
  }
}
