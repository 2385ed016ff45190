package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Margin;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.score.Line;

/**
 * Tries what one player has in plans for a brief of one line, whoever has the rest: by the judge's
 * own rules, but for shape and overlaps, which need the others.
 */
public final class PartTrial {
  private final Brief brief;
  private final Brief within;
  private final Demands demands;
  private final Demands demandsWithin;

  public PartTrial(Brief brief) {
    this.brief = brief;
    this.within = brief.withinMargin();
    this.demands = new Demands(brief);
    this.demandsWithin = within.equals(brief) ? demands : new Demands(within);
  }

  /**
   * Whether a player could play some bar of a line, first stroke to last, with nothing else to do.
   * Bars with fewer strokes than a burst don't count, unless none has as many: a landing note alone
   * makes nobody able.
   */
  public static boolean isAble(Brief brief, int player) {
    return isAble(brief, brief.players().get(player).busyWith(List.of()));
  }

  /** Whether a player could play some bar of a line beside what the score gives it. */
  public static boolean isFree(Brief brief, int player) {
    return isAble(brief, brief.players().get(player));
  }

  private static boolean isAble(Brief brief, Player player) {
    Rules rules = brief.rules().with(List.<Lock>of()).with(Margin.NONE);
    return brief.lines().stream()
        .distinct()
        .map(line -> new PartTrial(new Brief(line, List.of(player), rules)))
        .anyMatch(PartTrial::playsSomeBar);
  }

  private boolean playsSomeBar() {
    Line line = brief.line();
    List<Integer> firsts =
        IntStream.range(0, line.count()).filter(j -> j == 0 || begins(line, j)).boxed().toList();
    List<Segment> bars = new ArrayList<>();
    for (int i = 0; i < firsts.size(); i++) {
      int next = i + 1 < firsts.size() ? firsts.get(i + 1) : line.count();
      bars.add(new Segment(0, 0, firsts.get(i), next - 1));
    }
    int fullest = bars.stream().mapToInt(Segment::strokes).max().orElse(0);
    int enough = Math.min(fullest, Burst.MOST_GAPS + 1);
    return bars.stream().filter(bar -> bar.strokes() >= enough).anyMatch(this::playsInSomeWay);
  }

  private static boolean begins(Line line, int stroke) {
    return line.bars().at(line.stroke(stroke).onset()).index()
        > line.bars().at(line.stroke(stroke - 1).onset()).index();
  }

  private boolean playsInSomeWay(Segment bar) {
    return IntStream.range(0, brief.players().get(0).ways().size())
        .mapToObj(way -> new Segment(0, way, bar.first(), bar.last()))
        .anyMatch(segment -> plays(List.of(segment)));
  }

  /**
   * What the segments cost.
   *
   * @param segments all that the player has, in order; at least one
   * @return empty if the player can't play them all, or they break a lock on the player
   */
  public OptionalInt points(List<Segment> segments) {
    Plan plan = new Plan(brief, segments);
    return keepsLocks(plan, segments.get(0).player()) && plays(segments)
        ? OptionalInt.of(
            segments.stream().mapToInt(s -> Costing.segment(brief, s, demands).total()).sum())
        : OptionalInt.empty();
  }

  /** What one segment costs whose player has no other; empty if it can't be played, locks aside. */
  public OptionalInt pointsAlone(Segment segment) {
    return plays(List.of(segment))
        ? OptionalInt.of(Costing.segment(brief, segment, demands).total())
        : OptionalInt.empty();
  }

  private boolean plays(List<Segment> segments) {
    Plan plan = new Plan(within, segments);
    WholePart part = WholePart.of(plan, segments.get(0).player(), demandsWithin);
    return segments.stream()
            .allMatch(
                s -> SegmentRules.of(plan, s, demandsWithin).findings(1).isEmpty() && isJoined(s))
        && PartRules.of(plan, part).findings(1).isEmpty();
  }

  private boolean isJoined(Segment segment) {
    Player player = within.players().get(segment.player());
    Demand demand = demandsWithin.of(segment);
    return ShortTurn.finding(player, demand, demandsWithin.played(segment), 1).isEmpty();
  }

  private boolean keepsLocks(Plan plan, int player) {
    return brief.rules().locks().stream()
        .filter(lock -> Lock.player(lock).orElse(-1) == player)
        .allMatch(lock -> LockRules.keeps(plan, lock));
  }
}
