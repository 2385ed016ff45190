package stafette.json;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stafette.check.Cost;
import stafette.check.Finding;
import stafette.check.JudgedPlan;
import stafette.check.Verdict;
import stafette.check.ear.Ear;
import stafette.json.Means.Above;
import stafette.json.Means.Flat;
import stafette.json.Means.Items;
import stafette.json.Means.Least;
import stafette.json.Means.Missing;
import stafette.json.Means.Most;
import stafette.json.Means.Only;
import stafette.json.Means.Told;
import stafette.plan.Brief;
import stafette.plan.Seat;
import stafette.score.Line;
import stafette.score.source.SourceAccount;
import stafette.split.Reason;
import stafette.split.SplitResult;

/**
 * A plan with all it rests on, so that another program can verify constraints and cost without this
 * one, and {@link PlanFile} can open it again. The same plan gives the same text, in every locale.
 */
@Edition(format = "stafette-plan", version = 2)
@Means(
    "A line split over players, with all it rests on. Also the file that a plan is saved in. Plans can be verified from it alone: times in seconds, rates a second, costs in whole points.")
public record PlanJson(
    @Means("The program that wrote it, with its version.") @Missing @Told Optional<String> program,
    @Means("The score.") ScoreFile score,
    @Means("The line that is split.") LineJson line,
    @Means(
            "One entry for each relay: one line several times where always several play it, a line for each tone of chords planned together.")
        @Items(least = 1)
        List<RelayJson> relays,
    @Means("The rules of the plan.") SettingsJson settings,
    @Means("What the plan had to keep.") List<LockJson> locks,
    @Means("The first preferred where costs are equal.") @Items(least = 1) List<PlayerJson> players,
    @Means(
            "optimal: no plan costs less under these weights, but for the cheapest where a rotation is preferred to it. nearest: there is none for the share asked for; this one is for a lower share, settings.assurance. stopped: time ran out, or (of a plan that was kept) nothing is proven for it as it stands. none: no plan exists.")
        Result result,
    @Means(
            "Points of the plan; null without one. The sum of playersCost, idleCost, hocketsCost and of all parts of cost in segments and handoffs.")
        Optional<Integer> cost,
    @Means(
            "Points for the players used, the weight used for each and the weight player for those not named; null without a plan.")
        @Told
        Optional<Integer> playersCost,
    @Means(
            "Points for players who were named, are able, and are not used, the weight idle for each; null without a plan.")
        @Told
        Optional<Integer> idleCost,
    @Means(
            "Points for the stretches of hocket pairs, the weight hocket for each; null without a plan.")
        @Told
        Optional<Integer> hocketsCost,
    @Means("No plan costs less; null where none exists.") Optional<Integer> bound,
    @Means("How many of 100 players were asked to manage each part.") @Above(0) @Told double share,
    @Means(
            "Per cent that the tempo was to be able to drift either way; settings.margin is what the plan keeps, 0 where there was none with it.")
        @Least(0)
        @Most(25)
        @Told
        double marginAsked,
    @Means(
            "The turns in a fixed order that were preferred to the cheapest plan; null if none were.")
        Optional<RotationJson> rotation,
    @Means(
            "How many of 100 players manage the hardest part of the plan, below share where it does not hold; null without a plan.")
        @Least(0)
        @Most(100)
        @Told
        Optional<Double> reached,
    @Means("Odds that all players manage, 0 to 1; null without a plan.") @Least(0) @Most(1) @Told
        Optional<Double> odds,
    @Means(
            "Odds that all players manage the same plan at a tempo 5 % faster, never more than odds; null without a plan.")
        @Least(0)
        @Most(1)
        @Told
        Optional<Double> oddsAtHeadroom,
    @Means("How long the search took.") @Least(0) double searchSeconds,
    @Means("By first stroke; empty without a plan.") List<SegmentJson> segments,
    @Means("In order.") @Told List<HandoffJson> handoffs,
    @Means("On what the estimates of ear rest.") @Told EarBasisJson ear,
    @Means("Tempi between which the plan holds; null if not asked for.") @Told
        Optional<WindowJson> tempoWindow,
    @Means("What breaks a rule; or why there is no plan, and what would help.")
        List<FindingJson> findings,
    @Means("Where there is no plan: changes that make one possible, in the order to try them.")
        @Told
        List<RemedyJson> remedies,
    @Flat Optional<AlternativesJson> others) {
  /**
   * What was asked and what came of it.
   *
   * @param program that made it, with its version
   * @param account what became of the line's source, if that is told
   * @param asked what was asked
   * @param brief for what the plan is: a lower share of players, or no margin of tempo, where there
   *     is none for what was asked
   * @param result what the search says
   * @param judged the plan, if there is one
   * @param seats of those players whose seats are known, by name
   * @param freed those players who leave out for the line what the score gives them
   * @param reasons why there is no plan for the share asked for, if one for a lower share stands
   *     here
   * @param remedies what would make a plan possible, each tried out
   * @param others alternatives, if they were asked for
   */
  public static PlanJson of(
      String program,
      ScoreFile score,
      Optional<SourceAccount> account,
      Brief asked,
      Brief brief,
      SplitResult result,
      Optional<JudgedPlan> judged,
      double searchSeconds,
      Map<String, Seat> seats,
      Set<String> freed,
      List<Reason> reasons,
      List<RemedyJson> remedies,
      Optional<AlternativesJson> others) {
    Optional<Verdict> verdict = judged.map(JudgedPlan::verdict);
    Optional<Cost> cost = verdict.map(Verdict::cost);
    LineJson line = LineJson.of(brief.line());
    return new PlanJson(
        Optional.of(program),
        score,
        account.map(told -> line.with(told, brief.line().bars())).orElse(line),
        brief.lines().stream().map(each -> RelayJson.of(each, brief)).toList(),
        SettingsJson.of(brief.rules()),
        brief.rules().locks().stream().map(lock -> LockJson.of(lock, brief)).toList(),
        brief.players().stream().map(player -> PlayerJson.of(player, brief, seats, freed)).toList(),
        isNearest(asked, brief, result) ? Result.NEAREST : Result.of(result),
        cost.map(Cost::total),
        cost.map(Cost::players),
        cost.map(Cost::idle),
        cost.map(Cost::hockets),
        bound(result),
        asked.rules().assurance().percent(),
        asked.rules().margin().percent(),
        result.rotation().map(RotationJson::of),
        verdict.map(said -> said.hardest() * 100),
        verdict.map(Verdict::odds),
        verdict.map(Verdict::oddsAtHeadroom),
        searchSeconds,
        judged.map(SegmentJson::of).orElse(List.of()),
        judged.map(plan -> HandoffJson.of(plan, seats)).orElse(List.of()),
        new EarBasisJson("an estimate; no cost and no finding rests on it", Ear.SOURCES),
        judged.flatMap(JudgedPlan::window).map(WindowJson::of),
        Stream.concat(
                verdict.stream().flatMap(said -> said.findings().stream().map(FindingJson::of)),
                remarks(result, reasons).map(FindingJson::remark))
            .toList(),
        remedies,
        others);
  }

  private static boolean isNearest(Brief asked, Brief brief, SplitResult result) {
    return result.found().isPresent()
        && brief.rules().assurance().percent() < asked.rules().assurance().percent();
  }

  /** The text of the document. */
  public String text() {
    return Documents.text(this);
  }

  /** No plan costs less; empty if there is none at all. */
  static Optional<Integer> bound(SplitResult result) {
    return result.leastCost().stream().boxed().findFirst();
  }

  private static Stream<String> remarks(SplitResult result, List<Reason> reasons) {
    return result.match(
        best -> reasons.stream().map(reason -> reason.text().toString()),
        none -> none.reasons().stream().map(reason -> reason.text().toString()),
        stopped ->
            stopped.plan().isPresent()
                ? reasons.stream().map(reason -> reason.text().toString())
                : Stream.of(
                    "no plan was found within the time and memory set, and it is not proven that none exists; allow more time, or add a player"));
  }

  /** What a search came to. */
  public enum Result {
    OPTIMAL,
    NEAREST,
    STOPPED,
    NONE;

    static Result of(SplitResult result) {
      return result.match(best -> OPTIMAL, none -> NONE, stopped -> STOPPED);
    }
  }

  /** Turns in a fixed order. */
  @Means("Turns in a fixed order that were preferred to the cheapest plan.")
  record RotationJson(
      @Means("How much each turn takes: a beat, half a bar, 1 bar, 2 bars, …") String unit,
      @Means("What the cheapest plan that was found costs.") @Least(0) int cheapest,
      @Means("How much more was allowed.") @Least(0) int limit) {
    static RotationJson of(SplitResult.InRotation rotation) {
      return new RotationJson(rotation.unit(), rotation.cheapestCost(), rotation.limit());
    }

    SplitResult.InRotation rotation() {
      return new SplitResult.InRotation(unit, cheapest, limit);
    }
  }

  /** A relay. */
  @Means("A relay.")
  record RelayJson(
      @Means("Whether its line is the one above.") @Told boolean same,
      @Means("Its line if it is another one.") Optional<LineJson> line) {
    static RelayJson of(Line line, Brief brief) {
      boolean same = line.equals(brief.line());
      return new RelayJson(same, same ? Optional.empty() : Optional.of(LineJson.of(line)));
    }
  }

  /** What all estimates of the ear have in common. */
  @Means("On what estimates of the ear rest.")
  record EarBasisJson(
      @Means("That it is an estimate, outside the cost.") String note,
      @Means("Sentences for people.") List<String> sources) {}

  /** What is wrong, or why there is no plan. */
  @Means("Something wrong, or advice where there is no plan.")
  record FindingJson(
      @Means("Which rule is broken; null for advice.") Optional<String> kind,
      @Means("Player or part.") @Missing @Told Optional<String> part,
      @Flat Optional<PlaceJson> at,
      @Means("A sentence for people.") String message) {
    static FindingJson of(Finding finding) {
      return new FindingJson(
          Optional.of(finding.kind().name().toLowerCase(Locale.ROOT)),
          Optional.of(finding.place().part()),
          Optional.of(PlaceJson.of(finding.place().at())),
          finding.message().toString());
    }

    static FindingJson remark(String message) {
      return new FindingJson(Optional.empty(), Optional.empty(), Optional.empty(), message);
    }
  }

  /** A change under which there is a plan. */
  @Means("A change under which there is a plan.")
  public record RemedyJson(
      @Means("What to type on the command line, or what to do.") String option,
      @Means("What changes, and what comes of it.") String sentence,
      @Means("A plan was made with it, and judged.") @Only("true") boolean verified) {}
}
