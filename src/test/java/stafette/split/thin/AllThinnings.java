package stafette.split.thin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Tone;
import stafette.split.thin.ThinCases.ThinCase;

/** All choices of patterns for a line, with what they cost, and the judge's word on each. */
final class AllThinnings {
  private static final int CHANGE = Invented.WEIGHTS.patternChange();
  private static final int NONE = Integer.MAX_VALUE;

  private final ThinCase given;
  private final List<ThinStretch> stretches;
  private final Map<List<ThinnedStroke>, Boolean> judged = new HashMap<>();

  private AllThinnings(ThinCase given, boolean sounding) {
    this.given = given;
    stretches = stretches(given, sounding);
  }

  private static List<ThinStretch> stretches(ThinCase given, boolean sounding) {
    long ready = Invented.rules().readyMicros(given.player());
    return new ThinChoices(given.line(), given.player(), ready, sounding).all();
  }

  /** Of how many patterns for a stretch each part is made, multiplied. */
  static double count(ThinCase given) {
    return stretches(given, true).stream()
        .mapToDouble(stretch -> stretch.kept().size())
        .reduce(1, (a, b) -> a * b);
  }

  /** The least that any choice costs which makes no hole and holds. */
  static int least(ThinCase given) {
    return Stream.of(true, false)
        .filter(sounding -> sounding || given.player().instrument().isWind())
        .map(sounding -> new AllThinnings(given, sounding))
        .mapToInt(all -> all.least(List.of(), NONE))
        .min()
        .orElseThrow();
  }

  /** What a part costs; the most there is if it has a hole. */
  static int cost(ThinCase given, ThinnedPart part) {
    AllThinnings all = new AllThinnings(given, true);
    return all.cost(patterns(part, all.stretches));
  }

  /** The pattern of each stretch of a part. */
  private static List<Thinning> patterns(ThinnedPart part, List<ThinStretch> stretches) {
    return stretches.stream()
        .map(
            stretch ->
                part.stretches().stream()
                    .filter(each -> each.last() >= stretch.first())
                    .findFirst()
                    .orElseThrow()
                    .pattern())
        .toList();
  }

  /** Whether anything as cheap would hold that changes at another bar what changes at this. */
  static boolean canMove(ThinCase given, ThinnedPart part) {
    return Stream.of(true, false)
        .filter(sounding -> sounding || given.player().instrument().isWind())
        .map(sounding -> new AllThinnings(given, sounding))
        .anyMatch(all -> all.canMove(patterns(part, all.stretches)));
  }

  private boolean canMove(List<Thinning> patterns) {
    int cost = cost(patterns);
    return IntStream.range(0, patterns.size())
        .boxed()
        .flatMap(
            i ->
                Stream.of(i - 1, i + 1)
                    .filter(other -> other >= 0 && other < patterns.size())
                    .map(other -> with(patterns, i, patterns.get(other))))
        .anyMatch(moved -> cost(moved) < cost && holds(kept(moved)));
  }

  private static List<Thinning> with(List<Thinning> patterns, int at, Thinning pattern) {
    List<Thinning> changed = new ArrayList<>(patterns);
    changed.set(at, pattern);
    return changed;
  }

  private int least(List<Thinning> chosen, int known) {
    int cost = cost(chosen);
    if (cost >= known) {
      return known;
    }
    if (chosen.size() == stretches.size()) {
      return holds(kept(chosen)) ? cost : known;
    }
    int best = known;
    for (Thinning pattern : Thinning.values()) {
      ThinStretch next = stretches.get(chosen.size());
      if (next.kept().containsKey(pattern)) {
        best = Math.min(best, least(with(chosen, pattern), best));
      }
    }
    return best;
  }

  private static List<Thinning> with(List<Thinning> chosen, Thinning pattern) {
    return Stream.concat(chosen.stream(), Stream.of(pattern)).toList();
  }

  /** Of patterns for all stretches, or for the first ones. */
  private int cost(List<Thinning> patterns) {
    int cost = 0;
    int own = -1;
    for (int i = 0; i < patterns.size(); i++) {
      if (isHole(patterns, i)) {
        return NONE;
      }
      cost += strokes(i) - keeps(i, patterns.get(i));
      if (!stretches.get(i).hindered()) {
        boolean changes = own >= 0 && patterns.get(own) != patterns.get(i);
        cost += changes ? CHANGE * times(i) : 0;
        own = i;
      }
    }
    return cost;
  }

  private boolean isHole(List<Thinning> patterns, int i) {
    return i > 0
        && i + 1 < patterns.size()
        && stretches.get(i).wholeBar()
        && Stream.of(i - 1, i + 1)
            .allMatch(
                beside ->
                    !stretches.get(beside).hindered()
                        && keeps(i, patterns.get(beside)) > keeps(i, patterns.get(i)));
  }

  private int strokes(int i) {
    return stretches.get(i).last() - stretches.get(i).first() + 1;
  }

  private int keeps(int i, Thinning pattern) {
    ThinStretch stretch = stretches.get(i);
    return ThinnedStroke.of(given.line(), stretch.first(), stretch.last(), pattern, true).size();
  }

  /** How many times the price: once where something begins, twice after two bars, else four. */
  private int times(int i) {
    Line line = given.line();
    int first = stretches.get(i).first();
    boolean newBar = bar(first) != bar(first - 1);
    if (stretches.get(i - 1).hindered()
        || line.restsBefore(first)
        || isNewHarmony(first)
        || (newBar && line.phrase(first) % 4 == 0)) {
      return 1;
    }
    return newBar && line.phrase(first) % 2 == 0 ? 2 : 4;
  }

  private boolean isNewHarmony(int j) {
    if (tones(j).equals(tones(j - 1))) {
      return false;
    }
    boolean repeated = j + 1 < given.line().count() && tones(j).equals(tones(j + 1));
    boolean repeatedBefore = j < 2 || tones(j - 1).equals(tones(j - 2));
    return (repeated && repeatedBefore)
        || (bar(j) != bar(j - 1) && !names(bar(j)).equals(names(bar(j - 1))));
  }

  private Set<Integer> tones(int j) {
    return given.line().stroke(j).tones().stream().map(Tone::key).collect(Collectors.toSet());
  }

  private Set<Integer> names(int bar) {
    return IntStream.range(0, given.line().count())
        .filter(j -> bar(j) == bar)
        .boxed()
        .flatMap(j -> tones(j).stream())
        .map(key -> key % 12)
        .collect(Collectors.toSet());
  }

  private int bar(int j) {
    return given.line().bars().at(given.line().stroke(j).onset()).index();
  }

  private List<ThinnedStroke> kept(List<Thinning> patterns) {
    return IntStream.range(0, patterns.size())
        .boxed()
        .flatMap(i -> stretches.get(i).kept(patterns.get(i)).stream())
        .toList();
  }

  private boolean holds(List<ThinnedStroke> kept) {
    return kept.isEmpty() || judged.computeIfAbsent(kept, this::judge);
  }

  private boolean judge(List<ThinnedStroke> kept) {
    Line left = ThinnedStroke.line(given.line(), kept);
    List<Segment> segments = new ArrayList<>();
    int first = 0;
    for (int j = 1; j <= left.count(); j++) {
      int stroke = j;
      boolean parted =
          j == left.count()
              || given.player().busy().stream()
                  .anyMatch(
                      busy ->
                          left.onsetMicros(stroke - 1) < busy.fromMicros()
                              && busy.fromMicros() <= left.onsetMicros(stroke));
      if (parted) {
        segments.add(new Segment(0, 0, first, j - 1));
        first = j;
      }
    }
    Plan plan = new Plan(new Brief(left, List.of(given.player()), Invented.rules()), segments);
    return Judge.playing(plan).isEmpty();
  }
}
