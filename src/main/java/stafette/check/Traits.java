package stafette.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.score.Place;
import stafette.words.Sentence;

/**
 * What can be held against another plan for the same brief, whatever each was made for.
 *
 * @param handoffs how many
 * @param turns for each player of the brief, in order, how many segments it has
 * @param highestStrain of all segments
 * @param meanStrain of all segments, each counted by its strokes
 * @param tightest who has the segment of the highest strain, and where it begins
 * @param blend points for the distances of instruments, under the weights compared by
 * @param odds that all players manage
 * @param cost in points, under the weights compared by
 */
public record Traits(
    int handoffs,
    List<TurnCounts> turns,
    double highestStrain,
    double meanStrain,
    Place tightest,
    int blend,
    double odds,
    int cost) {
  public Traits {
    turns = List.copyOf(turns);
  }

  /** How many segments a player has. */
  public record TurnCounts(String player, int segments) {}

  /**
   * The traits of a plan.
   *
   * @param rules whose weights all plans are compared by
   */
  public static Traits of(Plan plan, Rules rules) {
    Brief brief = plan.brief().with(rules);
    Plan compared = new Plan(brief, plan.segments());
    Verdict verdict = Judge.judge(compared);
    SegmentReport tightest =
        verdict.segments().stream()
            .reduce((one, other) -> other.strain() > one.strain() ? other : one)
            .orElseThrow();
    List<TurnCounts> turns = new ArrayList<>();
    for (int player = 0; player < brief.players().size(); player++) {
      turns.add(
          new TurnCounts(brief.players().get(player).name(), compared.segmentsOf(player).size()));
    }
    Player strained = compared.player(tightest.segment());
    return new Traits(
        compared.handoffs().size(),
        turns,
        tightest.strain(),
        mean(verdict.segments()),
        Whereabouts.of(strained, plan.line(tightest.segment()), tightest.segment().first()),
        verdict.cost().handoffs().stream().mapToInt(HandoffCost::blend).sum(),
        verdict.odds(),
        verdict.cost().total());
  }

  private static double mean(List<SegmentReport> reports) {
    double strokes = reports.stream().mapToInt(report -> report.segment().strokes()).sum();
    return reports.stream()
            .sorted(Comparator.comparingInt(report -> report.segment().first()))
            .mapToDouble(report -> report.strain() * report.segment().strokes())
            .sum()
        / strokes;
  }

  public int playersUsed() {
    return (int) turns.stream().filter(one -> one.segments > 0).count();
  }

  /** What is different from another plan for the same players, in words; at least one. */
  public List<Sentence> against(Traits other) {
    return new Differences(this, other).inWords();
  }
}
