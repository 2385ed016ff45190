package stafette.split.why;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.score.Line;

/**
 * A smallest set of constraints that together leave a brief without a plan, and the stretch of the
 * line where they do so: by a deletion filter (Chinneck and Dravnieks 1991, "Locating minimal
 * infeasible constraint sets in linear programs", ORSA Journal on Computing 3). All constraints not
 * named are thought away; then thinking away any one of those named makes a plan possible.
 *
 * @param constraints in the order of importance to a musician
 * @param unsettled those that may belong to them or not: their searches were stopped
 * @param first the first stroke of the stretch, in the line of the first relay
 * @param last its last stroke
 * @param shortest whether no stroke was kept only because a search was stopped
 */
record Conflict(
    List<Constraint> constraints,
    List<Constraint> unsettled,
    int first,
    int last,
    boolean shortest) {
  Conflict {
    constraints = List.copyOf(constraints);
    unsettled = List.copyOf(unsettled);
  }

  boolean isProven() {
    return shortest && unsettled.isEmpty();
  }

  /**
   * Finds the conflict of a brief that is known to have no plan.
   *
   * @param stops when to stop the first of so many searches to come
   */
  static Conflict of(Brief brief, IntFunction<BooleanSupplier> stops) {
    return new Filter(brief, stops).conflict();
  }

  /** The brief with only these constraints. */
  static Brief under(Set<Constraint> constraints, Brief brief) {
    Brief result = brief;
    for (Constraint constraint : EnumSet.complementOf(copy(constraints))) {
      result = constraint.thoughtAwayIn(result);
    }
    return result;
  }

  private static EnumSet<Constraint> copy(Set<Constraint> constraints) {
    EnumSet<Constraint> result = EnumSet.noneOf(Constraint.class);
    result.addAll(constraints);
    return result;
  }

  /** The brief of a stretch, for relays of one line, without locks. */
  static Brief stretch(Brief brief, int first, int last) {
    Line line = brief.line().only(IntStream.rangeClosed(first, last).boxed().toList(), true);
    return new Brief(
        Collections.nCopies(brief.lines().size(), line),
        brief.players(),
        brief.rules().with(List.of()));
  }

  /**
   * The searches, one after the other: first for the shortest stretch, then for the constraints.
   */
  private static final class Filter {
    private final Brief brief;
    private final IntFunction<BooleanSupplier> stops;
    private final Set<Constraint> kept = EnumSet.allOf(Constraint.class);
    private final Set<Constraint> unsettled = EnumSet.noneOf(Constraint.class);
    private Brief stretch;
    private int first;
    private int last;
    private int toCome;
    private boolean shortest = true;

    Filter(Brief brief, IntFunction<BooleanSupplier> stops) {
      this.brief = brief;
      this.stops = stops;
      this.stretch = brief;
      this.last = brief.line().count() - 1;
      int halvings = Integer.SIZE - Integer.numberOfLeadingZeros(brief.line().count());
      this.toCome = Constraint.values().length + 2 * halvings;
    }

    Conflict conflict() {
      thinkAway(Constraint.LOCKS);
      if (!kept.contains(Constraint.LOCKS)
          && brief.lines().stream().allMatch(brief.line()::equals)) {
        shorten();
      }
      List.copyOf(kept).forEach(this::thinkAway);
      kept.removeAll(unsettled);
      List<Constraint> named = new ArrayList<>(kept);
      Collections.reverse(named);
      return new Conflict(named, List.copyOf(unsettled), first, last, shortest);
    }

    private void thinkAway(Constraint constraint) {
      Set<Constraint> others = copy(kept);
      others.remove(constraint);
      Brief without = under(others, stretch);
      if (without.equals(under(kept, stretch))) {
        kept.remove(constraint);
        return;
      }
      AnyPlan found = anyPlan(without);
      if (found.isImpossible()) {
        kept.remove(constraint);
      } else if (!found.proven()) {
        unsettled.add(constraint);
      }
    }

    /** A shorter stretch has a plan under all constraints, and so under fewer. */
    private void shorten() {
      last = shortest(ends(), end -> stretch(brief, 0, end));
      first = shortest(starts(last), start -> stretch(brief, start, last));
      stretch = stretch(brief, first, last);
    }

    /** From the shortest stretch to the longest, which is known to have no plan. */
    private int shortest(List<Integer> cuts, IntFunction<Brief> briefs) {
      int low = -1;
      int high = cuts.size() - 1;
      while (high - low > 1) {
        int middle = (low + high) >>> 1;
        AnyPlan found = anyPlan(briefs.apply(cuts.get(middle)));
        shortest &= found.proven();
        if (found.isImpossible()) {
          high = middle;
        } else {
          low = middle;
        }
      }
      return cuts.get(high);
    }

    /** Hockets are cut at bars, so that no unit is halved. */
    private List<Integer> ends() {
      Line line = brief.line();
      return IntStream.range(0, line.count())
          .filter(
              j -> brief.rules().hocket() == Hocket.NO || j == line.count() - 1 || opensBar(j + 1))
          .boxed()
          .toList();
    }

    /** Where a bar opens, the latest first; at last the line's own start. */
    private List<Integer> starts(int end) {
      return IntStream.rangeClosed(0, end)
          .map(j -> end - j)
          .filter(j -> j == 0 || (opensBar(j) && brief.line().placeInThree(j) <= 0))
          .boxed()
          .toList();
    }

    private boolean opensBar(int j) {
      Line line = brief.line();
      return !line.bars()
          .at(line.stroke(j).onset())
          .equals(line.bars().at(line.stroke(j - 1).onset()));
    }

    private AnyPlan anyPlan(Brief changed) {
      toCome = Math.max(1, toCome - 1);
      return AnyPlan.of(changed, stops.apply(toCome));
    }
  }
}
