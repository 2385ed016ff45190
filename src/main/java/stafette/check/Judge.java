package stafette.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Segment;

/**
 * Judges a plan from scratch: each player's whole part is simulated stroke by stroke, what the
 * score gives included, and nothing is taken over from whoever made the plan.
 *
 * <p>Pipeline: the shape of the plan ({@link ShapeRules}); each segment on its own: range,
 * technique, rates ({@link SegmentRules}); each player's part: tiredness, breath, rest, collisions
 * ({@link PartRules}). Then costs ({@link Costing}) and {@link Odds}. Comparisons allow one part in
 * a thousand million in the player's favour.
 */
public final class Judge {
  private Judge() {}

  public static Verdict judge(Plan plan) {
    Demands demands = new Demands(plan.brief());
    Odds.Shares shares = new Odds(plan, demands, 1).shares();
    double odds = shares.ofAll();
    List<Finding> findings = findings(plan, demands, 1);
    boolean nobody = findings.stream().anyMatch(Judge::isForEverybody);
    return new Verdict(
        findings,
        findings.isEmpty() && (plan.brief().rules().margin().isNone() || holdsWithinMargin(plan)),
        reports(plan, demands),
        Costing.of(plan),
        nobody ? 0 : shares.ofHardest(),
        odds,
        Math.min(odds, oddsAtHeadroom(plan, demands)));
  }

  /** Whether a plan holds within the margin of its rules, which is more than that it holds. */
  public static boolean holdsWithinMargin(Plan plan) {
    Brief within = plan.brief().withinMargin();
    return findings(new Plan(within, plan.segments()), new Demands(within), 1).isEmpty();
  }

  /** Whether what is wrong is so for any player of the instrument. */
  private static boolean isForEverybody(Finding finding) {
    return finding.kind() == Finding.FindingKind.TECHNIQUE
        || finding.kind() == Finding.FindingKind.RANGE;
  }

  /** Where rest or pedals fail at the faster tempo, they fail for everybody. */
  private static double oddsAtHeadroom(Plan plan, Demands demands) {
    double stretch = 1 / Verdict.HEADROOM;
    boolean nobody =
        findings(plan, demands, stretch).stream()
            .anyMatch(
                finding ->
                    finding.kind() == Finding.FindingKind.REST
                        || finding.kind() == Finding.FindingKind.TECHNIQUE);
    return nobody ? 0 : new Odds(plan, demands, stretch).shares().ofAll();
  }

  /** What the players of a plan can't do, each for itself; how their segments meet is not asked. */
  public static List<Finding> playing(Plan plan) {
    return playing(plan, new Demands(plan.brief()), 1);
  }

  /** How hard each segment is, in the order of the plan. */
  public static List<SegmentReport> effort(Plan plan) {
    return reports(plan, new Demands(plan.brief()));
  }

  /** What is wrong when all times of the score are stretched by a factor. */
  static List<Finding> findings(Plan plan, Demands demands, double stretch) {
    List<Finding> findings = new ArrayList<>(ShapeRules.findings(plan));
    findings.addAll(
        HocketRules.interlocking(plan, stretch * plan.brief().rules().margin().stretch()));
    for (Segment segment : plan.segments()) {
      ShortTurn.finding(plan.player(segment), demands.of(segment), demands.played(segment), stretch)
          .ifPresent(findings::add);
    }
    findings.addAll(playing(plan, demands, stretch));
    return findings;
  }

  private static List<Finding> playing(Plan plan, Demands demands, double stretch) {
    List<Finding> findings = new ArrayList<>();
    for (Segment segment : plan.segments()) {
      findings.addAll(SegmentRules.of(plan, segment, demands).findings(stretch));
    }
    players(plan)
        .forEach(
            player ->
                findings.addAll(
                    PartRules.of(plan, WholePart.of(plan, player, demands)).findings(stretch)));
    return findings;
  }

  static IntStream players(Plan plan) {
    return plan.segments().stream().mapToInt(Segment::player).distinct().sorted();
  }

  private static List<SegmentReport> reports(Plan plan, Demands demands) {
    Map<Segment, SegmentReport> reports = new HashMap<>();
    players(plan)
        .mapToObj(player -> WholePart.of(plan, player, demands))
        .flatMap(part -> reports(plan, demands, part).stream())
        .forEach(report -> reports.put(report.segment(), report));
    return plan.segments().stream()
        .map(segment -> Objects.requireNonNull(reports.get(segment)))
        .toList();
  }

  private static List<SegmentReport> reports(Plan plan, Demands demands, WholePart part) {
    double[][] tiredness = PlayingSimulation.tiredness(part, 1);
    double[][] breath =
        part.player()
            .instrument()
            .breath()
            .map(lungs -> PlayingSimulation.breath(part, lungs, 1))
            .orElseGet(() -> new double[part.stints().size()][0]);
    List<SegmentReport> result = new ArrayList<>();
    for (int i = 0; i < part.stints().size(); i++) {
      double tired = highest(tiredness[i]);
      double air = highest(breath[i]);
      part.stints()
          .get(i)
          .segment()
          .map(segment -> SegmentRules.of(plan, segment, demands))
          .map(rules -> rules.report(tired, air))
          .ifPresent(result::add);
    }
    return result;
  }

  private static double highest(double[] readings) {
    return Arrays.stream(readings).max().orElse(0);
  }
}
