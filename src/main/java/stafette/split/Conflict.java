package stafette.split;

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
 * @param first the first stroke of the stretch, in the line of the first relay
 * @param last its last stroke
 * @param proven whether no constraint was kept, and no stroke, only because a search was stopped
 */
record Conflict(List<Constraint> constraints, int first, int last, boolean proven) {
  Conflict {
    constraints = List.copyOf(constraints);
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

  /** The searches, one after the other. */
  private static final class Filter {
    private final Brief brief;
    private final IntFunction<BooleanSupplier> stops;
    private final Set<Constraint> kept = EnumSet.allOf(Constraint.class);
    private int toCome;
    private boolean proven = true;

    Filter(Brief brief, IntFunction<BooleanSupplier> stops) {
      this.brief = brief;
      this.stops = stops;
      int halvings = Integer.SIZE - Integer.numberOfLeadingZeros(brief.line().count());
      this.toCome = Constraint.values().length + 2 * halvings;
    }

    Conflict conflict() {
      for (Constraint constraint : Constraint.values()) {
        Set<Constraint> others = copy(kept);
        others.remove(constraint);
        if (isImpossible(under(others, brief))) {
          kept.remove(constraint);
        }
      }
      int first = 0;
      int last = brief.line().count() - 1;
      if (isCutAnywhere()) {
        Brief alone = under(kept, brief);
        last = shortest(ends(), end -> stretch(alone, 0, end));
        int end = last;
        List<Integer> starts = starts(end);
        first = shortest(starts, start -> stretch(alone, start, end));
      }
      List<Constraint> named = new ArrayList<>(kept);
      Collections.reverse(named);
      return new Conflict(named, first, last, proven);
    }

    /** Locks speak of strokes by number, chord tones may be silent: such briefs stay whole. */
    private boolean isCutAnywhere() {
      return !kept.contains(Constraint.LOCKS)
          && brief.lines().stream().allMatch(brief.line()::equals);
    }

    /** From the shortest stretch to the longest, which is known to have no plan. */
    private int shortest(List<Integer> cuts, IntFunction<Brief> stretch) {
      int low = -1;
      int high = cuts.size() - 1;
      while (high - low > 1) {
        int middle = (low + high) >>> 1;
        if (isImpossible(stretch.apply(cuts.get(middle)))) {
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

    private boolean isImpossible(Brief changed) {
      AnyPlan found = AnyPlan.of(changed, stops.apply(toCome));
      toCome = Math.max(1, toCome - 1);
      proven &= found.proven();
      return found.isImpossible();
    }
  }
}
