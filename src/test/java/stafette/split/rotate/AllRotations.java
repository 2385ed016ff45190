package stafette.split.rotate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import stafette.check.Costing;
import stafette.check.ManyPlans;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Length;
import stafette.time.Rational;

/**
 * Tries every regular rotation of a small brief in one metre whose overlaps share no more than the
 * rules ask for. Shares nothing with the search.
 */
final class AllRotations {
  private final Brief brief;
  private final Line line;
  private final Set<List<Segment>> plans = new LinkedHashSet<>();

  private AllRotations(Brief brief) {
    this.brief = brief;
    this.line = brief.line();
  }

  /** The cost of the cheapest rotation that the judge lets pass; empty if there is none. */
  static OptionalInt cheapest(Brief brief) {
    AllRotations all = new AllRotations(brief);
    all.collect();
    List<Plan> plans =
        new ArrayList<>(all.plans.stream().map(segments -> new Plan(brief, segments)).toList());
    ManyPlans judged = new ManyPlans(brief);
    plans.sort(Comparator.comparingInt(plan -> Costing.of(plan).total()));
    return plans.stream()
        .filter(judged::hold)
        .mapToInt(plan -> Costing.of(plan).total())
        .findFirst();
  }

  private void collect() {
    List<Length> beats = line.bars().get(0).meter().beats();
    Rational beat = beats.get(0).quarters();
    int inBar = beats.size();
    Rational bar = beat.times(inBar);
    unit(beat, 1);
    unit(bar, 1);
    unit(bar, 2);
    unit(bar, 4);
    if (inBar % 2 == 0) {
      unit(beat.times(inBar / 2), 1);
    }
  }

  private void unit(Rational grid, int step) {
    Rational start = line.stroke(0).onset().quarters().dividedBy(grid);
    Rational whole = Rational.of(start.floor().longValueExact());
    boolean pickup = start.minus(whole).compareTo(Rational.of(1, 2)) > 0;
    Rational origin = pickup ? whole.plus(Rational.ONE) : whole;
    List<Integer> starts = new ArrayList<>();
    long before = -1;
    for (int j = 0; j < line.count(); j++) {
      Rational at = line.stroke(j).onset().quarters().dividedBy(grid).minus(origin);
      long unit = Math.max(0, at.dividedBy(step).floor().longValueExact());
      if (unit > before) {
        starts.add(j);
      }
      before = unit;
    }
    int shared = brief.rules().overlap().min();
    for (int early = 0; early < shared; early++) {
      order(turns(starts, early, shared - 1 - early), List.of());
    }
  }

  /** First and last strokes of the turns. */
  private List<int[]> turns(List<Integer> starts, int early, int late) {
    List<int[]> turns = new ArrayList<>();
    for (int k = 0; k < starts.size(); k++) {
      int first = starts.get(k);
      if (k > 0 && !line.restsBefore(first)) {
        first -= early;
      }
      int last = line.count() - 1;
      if (k + 1 < starts.size()) {
        int next = starts.get(k + 1);
        last = line.restsBefore(next) ? next - 1 : next + late;
      }
      boolean nothingNew = k > 0 && last <= turns.get(turns.size() - 1)[1];
      if (nothingNew) {
        turns.get(turns.size() - 1)[1] = last;
      } else {
        turns.add(new int[] {first, last});
      }
    }
    return turns;
  }

  private void order(List<int[]> turns, List<int[]> playersAndSkills) {
    int places = playersAndSkills.size();
    if (places > turns.size()) {
      return;
    }
    if (places > 1) {
      plan(turns, playersAndSkills);
    }
    for (int player = 0; player < brief.players().size(); player++) {
      int next = player;
      if (playersAndSkills.stream().noneMatch(taken -> taken[0] == next)) {
        for (int way = 0; way < brief.players().get(player).ways().size(); way++) {
          List<int[]> longer = new ArrayList<>(playersAndSkills);
          longer.add(new int[] {player, way});
          order(turns, longer);
        }
      }
    }
  }

  private void plan(List<int[]> turns, List<int[]> order) {
    List<Segment> segments = new ArrayList<>();
    for (int k = 0; k < turns.size(); k++) {
      int[] who = order.get(k % order.size());
      int[] turn = turns.get(k);
      if (turn[0] < 0 || turn[1] >= line.count() || turn[1] < turn[0]) {
        return;
      }
      segments.add(new Segment(who[0], who[1], turn[0], turn[1]));
    }
    plans.add(segments);
  }
}
