package stafette.split;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.score.Line;

/**
 * The planning model as a general constraint solver takes it (CP-SAT of Google OR-Tools). Shares
 * nothing with the search: what stands still (which segments a fresh player can play, what segments
 * and handoffs cost) comes from the judge's room, all that depends on the rest of the plan is
 * written as constraints here and in {@link ReferencePart}.
 *
 * <p>A plan is a path: segments run from a place where their player starts to one where it ends,
 * handoffs run from an end back to a start of somebody else. No stroke lies in two overlaps, so no
 * three play at once, and there can be no circle.
 *
 * <p>For lines in which no sound goes on beyond the next onset.
 */
public final class ReferenceModel {
  static {
    Loader.loadNativeLibraries();
  }

  private final Brief brief;
  private final Line line;
  private final CpModel model = new CpModel();
  private final List<Choice> choices = new ArrayList<>();
  private final List<Meeting> meetings = new ArrayList<>();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();
  private int constant;

  /** A segment that may be in the plan. */
  record Choice(Segment segment, BoolVar taken) {}

  /** A handoff that may be in the plan: who leaves after stroke {@code end}, who enters where. */
  private record Meeting(int leaves, int enters, int start, int end, BoolVar taken) {}

  private ReferenceModel(Brief brief) {
    this.brief = brief;
    this.line = brief.line();
  }

  /**
   * Writes the model of a brief down, to be solved.
   *
   * @throws IllegalArgumentException if the brief has hockets, locks or several lines
   */
  public static ReferenceModel of(Brief brief) {
    if (brief.lines().size() > 1
        || brief.rules().hocket() != Hocket.NO
        || !brief.rules().locks().isEmpty()) {
      throw new IllegalArgumentException(
          "no constraints for hockets, locks and further lines here");
    }
    ReferenceModel reference = new ReferenceModel(brief);
    reference.chooseSegments();
    reference.chooseHandoffs();
    reference.joinThem();
    reference.keepOverlapsApart();
    reference.playersCost();
    reference.carryOver();
    reference.model.minimize(reference.cost.build());
    return reference;
  }

  /**
   * What the solver says.
   *
   * @param proven whether it is the last word: the cheapest plan, or that there is none
   * @param segments of the best plan found, in order; empty if there is none
   * @param cost of that plan, 0 if there is none
   */
  public record Answer(boolean proven, List<Segment> segments, int cost) {
    public Answer {
      segments = List.copyOf(segments);
    }
  }

  /**
   * Solves with one thread. Probing before the search takes such models longer than the search.
   *
   * @param patience the most work, in the solver's deterministic seconds
   */
  public Answer solve(double patience) {
    CpSolver solver = new CpSolver();
    solver
        .getParameters()
        .setNumWorkers(1)
        .setRandomSeed(1)
        .setMaxDeterministicTime(patience)
        .setCpModelProbingLevel(0)
        .setMaxPresolveIterations(1);
    CpSolverStatus status = solver.solve(model);
    if (status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException(model.validate());
    }
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    boolean proven = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
    return found
        ? new Answer(proven, segments(solver), constant + (int) Math.round(solver.objectiveValue()))
        : new Answer(proven, List.of(), 0);
  }

  private List<Segment> segments(CpSolver solver) {
    return choices.stream()
        .filter(choice -> solver.booleanValue(choice.taken()))
        .map(Choice::segment)
        .sorted(Comparator.comparingInt(Segment::first))
        .toList();
  }

  private void chooseSegments() {
    for (ReferenceSegments.Priced priced : ReferenceSegments.of(brief)) {
      BoolVar taken = model.newBoolVar(priced.segment().toString());
      choices.add(new Choice(priced.segment(), taken));
      cost.addTerm(taken, priced.points());
    }
  }

  private void chooseHandoffs() {
    for (int end = 0; end < line.count() - 1; end++) {
      for (int start = 1; start <= end + 1; start++) {
        if (mayMeet(start, end)) {
          chooseHandoffs(start, end);
        }
      }
    }
  }

  private boolean mayMeet(int start, int end) {
    if (start == end + 1) {
      return line.restsBefore(start);
    }
    OverlapRule rule = brief.rules().overlap();
    int shared = end - start + 1;
    boolean shortEnough =
        rule.max().isPresent()
            ? shared <= rule.max().getAsInt()
            : line.onsetMicros(end) - line.onsetMicros(start) <= line.beatMicros(end);
    return shared >= rule.min() && shortEnough;
  }

  private void chooseHandoffs(int start, int end) {
    for (int leaves = 0; leaves < brief.players().size(); leaves++) {
      for (int enters = 0; enters < brief.players().size(); enters++) {
        if (leaves != enters) {
          BoolVar taken = model.newBoolVar("from " + leaves + " to " + enters);
          meetings.add(new Meeting(leaves, enters, start, end, taken));
          Handoff handoff = new Handoff(turn(leaves, end), turn(enters, start));
          cost.addTerm(taken, Costing.handoff(brief, handoff).total());
        }
      }
    }
  }

  /** Of a handoff's cost it is all the same where its turns begin or end beyond it. */
  private static Turn turn(int player, int stroke) {
    return new Turn(List.of(new Segment(player, 0, stroke, stroke)));
  }

  /** Whoever starts was handed the line, and whoever ends hands it on. */
  private void joinThem() {
    int last = line.count() - 1;
    model.addExactlyOne(taken(choices.stream().filter(c -> c.segment().first() == 0).toList()));
    model.addExactlyOne(taken(choices.stream().filter(c -> c.segment().last() == last).toList()));
    for (int i = 0; i < brief.players().size(); i++) {
      int player = i;
      List<Choice> own = choices.stream().filter(c -> c.segment().player() == player).toList();
      for (int j = 0; j <= last; j++) {
        int stroke = j;
        Literal[] starting =
            taken(own.stream().filter(c -> c.segment().first() == stroke).toList());
        Literal[] ending = taken(own.stream().filter(c -> c.segment().last() == stroke).toList());
        if (stroke > 0) {
          model.addEquality(LinearExpr.sum(starting), handedTo(player, stroke));
        }
        if (stroke < last) {
          model.addEquality(LinearExpr.sum(ending), handedBy(player, stroke));
        }
      }
    }
  }

  private LinearExpr handedTo(int player, int start) {
    return LinearExpr.sum(
        meetings.stream()
            .filter(m -> m.enters() == player && m.start() == start)
            .map(Meeting::taken)
            .toArray(Literal[]::new));
  }

  private LinearExpr handedBy(int player, int end) {
    return LinearExpr.sum(
        meetings.stream()
            .filter(m -> m.leaves() == player && m.end() == end)
            .map(Meeting::taken)
            .toArray(Literal[]::new));
  }

  /**
   * Overlaps share no stroke; one over a silence holds the last stroke before it against ends, and
   * the first one after it against starts.
   */
  private void keepOverlapsApart() {
    for (int j = 0; j < line.count(); j++) {
      int stroke = j;
      model.addAtMostOne(
          meetings.stream()
              .filter(m -> holds(m, stroke) || (m.start() > m.end() && m.end() == stroke))
              .map(Meeting::taken)
              .toArray(Literal[]::new));
      model.addAtMostOne(
          meetings.stream()
              .filter(m -> holds(m, stroke) || (m.start() > m.end() && m.start() == stroke))
              .map(Meeting::taken)
              .toArray(Literal[]::new));
    }
  }

  private static boolean holds(Meeting meeting, int stroke) {
    return meeting.start() <= stroke && stroke <= meeting.end();
  }

  private void playersCost() {
    for (int i = 0; i < brief.players().size(); i++) {
      int player = i;
      BoolVar used = model.newBoolVar("used " + player);
      constant += Costing.idle(brief, player);
      cost.addTerm(used, Costing.price(brief, player) - Costing.idle(brief, player));
      Literal[] any = taken(choices.stream().filter(c -> c.segment().player() == player).toList());
      model.addLessOrEqual(used, LinearExpr.sum(any));
      for (int j = 0; j < line.count(); j++) {
        int stroke = j;
        Literal[] playing =
            taken(
                choices.stream()
                    .filter(c -> c.segment().player() == player)
                    .filter(c -> c.segment().first() <= stroke && stroke <= c.segment().last())
                    .toList());
        model.addLessOrEqual(LinearExpr.sum(playing), used);
      }
    }
  }

  private void carryOver() {
    IntStream.range(0, brief.players().size())
        .filter(i -> !brief.players().get(i).skills().isEmpty())
        .forEach(
            i -> {
              Brief within = brief.withinMargin();
              Player player = within.players().get(i);
              List<Choice> own = choices.stream().filter(c -> c.segment().player() == i).toList();
              new ReferencePart(model, within, player, own).carryOver();
            });
  }

  /** Whether one of some segments is in the plan; no plan has two of them. */
  static Literal anyOf(CpModel model, List<Choice> some) {
    if (some.size() == 1) {
      return some.get(0).taken();
    }
    BoolVar any = model.newBoolVar("any");
    model.addEquality(LinearExpr.sum(taken(some)), any);
    return any;
  }

  private static Literal[] taken(List<Choice> some) {
    return some.stream().map(Choice::taken).toArray(Literal[]::new);
  }
}
