package stafette.split.rotate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
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

  /**
   * The cost of the cheapest of those that are preferred to the cheapest plan: units from a beat to
   * eight bars, counted from the first full bar, with what comes before in the first turn and what
   * is left over in the last one or in one of its own, if it is nobody's only one; only units whose
   * middle turn lasts 1.5 to 6 seconds where there are such; all who were named and are able take
   * part.
   *
   * @param cheapest what the cheapest plan costs
   * @param least by how much more a rotation may cost at least, 1 for each handoff if that is more
   */
  static OptionalInt nearly(Brief brief, int cheapest, int least) {
    AllRotations all = new AllRotations(brief);
    List<Cut> ways = all.cutFromFullBar();
    boolean any = ways.stream().anyMatch(cut -> all.isUsual(cut.starts));
    int shared = brief.rules().overlap().min();
    Set<List<Segment>> once = new LinkedHashSet<>();
    for (Cut cut : ways) {
      for (int early = 0; early < shared && (!any || all.isUsual(cut.starts)); early++) {
        all.plans.clear();
        all.order(all.turns(cut.starts, early, shared - 1 - early), List.of());
        all.plans.removeIf(plan -> cut.endsWithRemainder && endsWithOnlyTurn(plan));
        once.addAll(all.plans);
      }
    }
    ManyPlans judged = new ManyPlans(brief);
    return once.stream()
        .map(segments -> new Plan(brief, segments))
        .filter(all::everybodyPlays)
        .filter(
            plan ->
                Costing.of(plan).total() <= cheapest + Math.max(least, plan.segments().size() - 1))
        .filter(judged::hold)
        .mapToInt(plan -> Costing.of(plan).total())
        .min();
  }

  private static boolean endsWithOnlyTurn(List<Segment> plan) {
    int last = plan.get(plan.size() - 1).player();
    return plan.stream().filter(segment -> segment.player() == last).count() == 1;
  }

  /**
   * The first strokes of turns.
   *
   * @param endsWithRemainder whether the last turn has fewer bars than the others
   */
  private record Cut(List<Integer> starts, boolean endsWithRemainder) {}

  private long able() {
    return IntStream.range(0, brief.players().size())
        .filter(player -> Costing.idle(brief, player) > 0)
        .count();
  }

  private boolean everybodyPlays(Plan plan) {
    return IntStream.range(0, brief.players().size())
        .filter(player -> Costing.idle(brief, player) > 0)
        .allMatch(player -> plan.segments().stream().anyMatch(s -> s.player() == player));
  }

  private List<Cut> cutFromFullBar() {
    List<Length> beats = line.bars().get(0).meter().beats();
    Rational beat = beats.get(0).quarters();
    Rational bar = beat.times(beats.size());
    List<Cut> ways = new ArrayList<>();
    ways.add(new Cut(cut(beat), false));
    if (beats.size() % 2 == 0) {
      ways.add(new Cut(cut(beat.times(beats.size() / 2)), false));
    }
    for (int bars : new int[] {1, 2, 3, 4, 6, 8}) {
      List<Integer> starts = cut(bar.times(bars));
      Rational last = line.stroke(starts.get(starts.size() - 1)).onset().quarters();
      Rational end = line.stroke(line.count() - 1).onset().quarters();
      long begun = last.dividedBy(bar).floor().longValueExact();
      long left = end.dividedBy(bar).floor().longValueExact() - begun + 1;
      boolean remainder = bars > 1 && starts.size() > 1 && left < bars;
      if (!remainder || starts.size() > able()) {
        ways.add(new Cut(starts, remainder));
      }
      if (remainder) {
        ways.add(new Cut(starts.subList(0, starts.size() - 1), false));
      }
    }
    return ways;
  }

  /** The first stroke of each unit from the first full bar on; the line's first belongs to it. */
  private List<Integer> cut(Rational unit) {
    List<Length> beats = line.bars().get(0).meter().beats();
    Rational bar = beats.get(0).quarters().times(beats.size());
    Rational bars = line.stroke(0).onset().quarters().dividedBy(bar);
    Rational whole = Rational.of(bars.floor().longValueExact());
    Rational full = bar.times(whole.equals(bars) ? whole : whole.plus(Rational.ONE));
    List<Integer> starts = new ArrayList<>(List.of(0));
    long before = 0;
    for (int j = 0; j < line.count(); j++) {
      Rational from = line.stroke(j).onset().quarters().minus(full);
      long number = from.dividedBy(unit).floor().longValueExact();
      if (number > before) {
        starts.add(j);
        before = number;
      }
    }
    return starts;
  }

  private boolean isUsual(List<Integer> starts) {
    List<Double> seconds = new ArrayList<>();
    for (int k = 0; k < starts.size(); k++) {
      long to =
          k + 1 < starts.size()
              ? line.onsetMicros(starts.get(k + 1))
              : line.endMicros(line.count() - 1);
      seconds.add((to - line.onsetMicros(starts.get(k))) / 1e6);
    }
    seconds.sort(Comparator.naturalOrder());
    double middle = seconds.get(seconds.size() / 2);
    return 1.5 <= middle && middle <= 6;
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
