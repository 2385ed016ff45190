package stafette.work;

import java.util.List;
import java.util.function.BooleanSupplier;
import stafette.ask.Briefing;
import stafette.keep.LimitsInForce;
import stafette.plan.Brief;
import stafette.plan.Margin;
import stafette.split.Reason;
import stafette.split.SplitResult;
import stafette.split.why.WhyNot;
import stafette.words.Refusal;

/** Finds out, where there is no plan, for which smallest set of reasons, and what would help. */
final class WithoutPlan {
  /** So much work the reasons may take: enough for lines of a hundred bars. */
  private static final long QUESTIONS_FOR_REASONS = 1_000_000;

  private WithoutPlan() {}

  /**
   * The outcome with reasons and remedies, if it is that there is no plan.
   *
   * @param stop asked often; ends it with what it has if it says yes
   */
  static SplitLine.SplitOutcome explained(
      SplitLine.SplitOutcome outcome,
      Briefing briefing,
      LimitsInForce limits,
      double secondsLeft,
      BooleanSupplier stop)
      throws Refusal {
    if (!outcome.result().isNone() && !outcome.isNearest()) {
      return outcome;
    }
    Deadline all = Deadline.ofSeconds(secondsLeft, stop);
    CountedWork work = new CountedWork(QUESTIONS_FOR_REASONS, all::isOver);
    Brief asked = outcome.asked().with(outcome.asked().rules().with(Margin.NONE));
    List<Reason> smallest = WhyNot.of(asked, work::share);
    return new SplitLine.SplitOutcome(
        outcome.score(),
        outcome.asked(),
        outcome.brief(),
        outcome.isNearest() || smallest.isEmpty()
            ? outcome.result()
            : new SplitResult.None(smallest),
        outcome.plan(),
        outcome.searchSeconds(),
        outcome.seats(),
        outcome.freed(),
        smallest,
        Remedies.of(briefing, limits, all));
  }
}
