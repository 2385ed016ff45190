package stafette.work;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongFunction;
import stafette.plan.Brief;
import stafette.plan.Margin;
import stafette.split.Workbench;
import stafette.split.nearest.NearestPlan;
import stafette.split.why.AnyPlan;
import stafette.split.why.Obstacle;

/**
 * Tries changed briefs, each with its share of the work. What is not found with it is not offered,
 * on any machine.
 */
final class RemedyTrials {
  /** So many are thought to come at first, and at least; more of them get smaller shares. */
  private static final int USUAL = 32;

  private static final int LEAST = 4;

  /** Enough for each line of the samples and of the tests, several times over. */
  private static final long QUESTIONS = 1_000_000;

  private final Brief asked;
  private final Workbench workbench;
  private final CountedWork work;
  private int toCome = USUAL;

  /**
   * @param asked the brief without a plan
   * @param workbench what the searches for it have worked out, which serves all trials on its lines
   * @param stop asked often; ends all trials if it says yes
   */
  RemedyTrials(Brief asked, Workbench workbench, BooleanSupplier stop) {
    this.asked = asked;
    this.workbench = workbench;
    this.work = new CountedWork(QUESTIONS, stop);
  }

  /** Whether a plan is found; no says nothing for certain. */
  boolean succeeds(Brief brief) {
    return !work.isOver()
        && AnyPlan.of(bare(brief), bench(brief), work.share(next())).plan().isPresent();
  }

  private static Brief bare(Brief brief) {
    return brief.with(brief.rules().with(Margin.NONE));
  }

  /** Tables of other lines would only fill the memory. */
  private Workbench bench(Brief brief) {
    return brief.lines().equals(asked.lines()) ? workbench : new Workbench();
  }

  /**
   * A number for which a plan is found though none is for the next one, sought by halves.
   *
   * @param works a number for which one is found
   * @param fails a greater one for which none is
   */
  long edge(long works, long fails, LongFunction<Brief> brief) {
    long least = works;
    long most = fails;
    while (most - least > 1) {
      long middle = (least + most) / 2;
      if (succeeds(brief.apply(middle))) {
        least = middle;
      } else {
        most = middle;
      }
    }
    return least;
  }

  /** The remedy that a change is, if a plan is found. */
  Optional<Remedy> remedy(Change change, Brief brief) {
    if (work.isOver()) {
      return Optional.empty();
    }
    return NearestPlan.ofShareAsked(brief, bench(brief), work.share(next()), progress -> {})
        .result()
        .found()
        .map(found -> new Remedy(change, SplitLine.judged(found)));
  }

  /** What kind of limit leaves the brief without a plan. */
  Obstacle obstacle() {
    return Obstacle.of(bare(asked), work.share(next()));
  }

  private int next() {
    toCome = Math.max(LEAST, toCome - 1);
    return toCome;
  }
}
