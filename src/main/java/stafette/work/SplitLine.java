package stafette.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stafette.ask.Briefing;
import stafette.ask.SplitRequest;
import stafette.check.Judge;
import stafette.check.JudgedPlan;
import stafette.check.Verdict;
import stafette.check.alone.LineVerdict;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.split.Reason;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.split.Workbench;
import stafette.split.nearest.NearestPlan;
import stafette.words.Fault;
import stafette.words.Refusal;

/** Splits a line among players, and has every plan judged again before anybody sees it. */
public final class SplitLine {
  private SplitLine() {}

  /**
   * What came of it.
   *
   * @param score the score the line was taken from
   * @param asked what was asked, in full
   * @param brief for what the plan is: as it was asked, or without its margin of tempo, or for a
   *     lower share of players
   * @param result what the search says
   * @param plan the plan and its verdict, if there is one
   * @param searchSeconds how long the search took
   * @param seats of players whose seats are known, by name
   * @param freed players who leave out for the line what the score gives them
   * @param reasons why there is no plan for the share of players asked for; empty if there is one
   * @param remedies what would make such a plan possible
   */
  public record SplitOutcome(
      OpenScore score,
      Brief asked,
      Brief brief,
      SplitResult result,
      Optional<JudgedPlan> plan,
      double searchSeconds,
      Map<String, Seat> seats,
      Set<String> freed,
      List<Reason> reasons,
      List<Remedy> remedies) {
    /** Whether there is a plan, but for fewer players than asked for. */
    public boolean isNearest() {
      return plan.isPresent() && !brief.rules().assurance().equals(asked.rules().assurance());
    }
  }

  /**
   * Splits a line.
   *
   * @throws Refusal if the score, the line or a player is not there
   */
  public static SplitOutcome split(SplitRequest request, LimitsInForce limits) throws Refusal {
    return split(request, limits, progress -> {});
  }

  /**
   * Splits a line, telling how the search goes.
   *
   * @param progress told whenever a better plan or a higher bound is known
   */
  public static SplitOutcome split(
      SplitRequest request, LimitsInForce limits, Consumer<Splitter.Progress> progress)
      throws Refusal {
    return split(Briefing.of(request, limits), limits, new Workbench(), () -> false, progress);
  }

  /**
   * Splits a line with what earlier searches have worked out.
   *
   * @param stop asked often; ends the search if it says yes
   */
  static SplitOutcome split(
      Briefing briefing,
      LimitsInForce limits,
      Workbench workbench,
      BooleanSupplier stop,
      Consumer<Splitter.Progress> progress)
      throws Refusal {
    SplitRequest request = briefing.request();
    Brief brief = briefing.brief();
    long start = System.nanoTime();
    BooleanSupplier ends = Deadline.ofSeconds(request.searchSeconds(), stop)::isOver;
    NearestPlan nearest =
        Fault.at(
            () -> brief.line().placeOf(0).inWords(),
            () -> NearestPlan.of(brief, workbench, ends, progress));
    double seconds = (System.nanoTime() - start) / 1e9;
    SplitOutcome outcome =
        new SplitOutcome(
            briefing.score(),
            brief,
            nearest.brief(),
            nearest.result(),
            nearest.result().found().map(SplitLine::judged),
            seconds,
            briefing.seats(),
            briefing.measured().freed(),
            List.of(),
            List.of());
    return WithoutPlan.explained(
        outcome, briefing, limits, request.searchSeconds() - seconds, stop);
  }

  /**
   * The search and the judge must agree; if they don't, it is our bug and nobody shall see the
   * plan.
   */
  static Verdict verdict(Plan plan) {
    Verdict verdict = Judge.judge(plan);
    if (!verdict.holds() || !verdict.keepsMargin()) {
      throw new IllegalStateException(
          "the search found a plan that does not hold: "
              + plan.segments()
              + " "
              + verdict.findings());
    }
    return verdict;
  }

  static JudgedPlan judged(Plan plan) {
    return JudgedPlan.of(plan, verdict(plan));
  }

  /** What each instrument among the players would make of the whole line, alone. */
  public static List<LineVerdict> answers(SplitOutcome outcome, SplitRequest request) {
    Map<String, LineVerdict> answers = new LinkedHashMap<>();
    for (Player player : outcome.brief().players()) {
      answers.computeIfAbsent(
          player.instrument().name(),
          name ->
              CheckScore.answer(
                  outcome.brief().line(),
                  player.instrument(),
                  player.name(),
                  request.assurance(),
                  request.allowances()));
    }
    return List.copyOf(answers.values());
  }
}
