package stafette.split.nearest;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stafette.limits.Assurance;
import stafette.plan.Brief;
import stafette.plan.Margin;
import stafette.split.SplitResult;
import stafette.split.Splitter;
import stafette.split.Workbench;
import stafette.split.rotate.RotationOrCheapest;
import stafette.split.why.AnyPlan;

/**
 * The plan that comes nearest to what is asked: first one for the share of players asked for that
 * holds within the margin of tempo; then one without that margin; then, without it, the plan for
 * the largest share below, by steps of five of 100 down to {@link #LEAST_PERCENT}.
 *
 * @param brief for which the result is: as it was asked, without its margin, or for a lower share
 * @param result what the search for it came to
 */
public record NearestPlan(Brief brief, SplitResult result) {
  /** The share below which nobody would call it a plan: those who are better by one deviation. */
  public static final int LEAST_PERCENT = 16;

  private static final int STEP_PERCENT = 5;

  /** So often a search for any plan at one share may ask whether to stop. */
  private static final int LOOKS = 40_000;

  /**
   * Searches.
   *
   * @param stop asked often; once it says yes, what was found so far is given back
   * @param progress told whenever a better plan or a higher bound is known
   */
  public static NearestPlan of(
      Brief brief,
      Workbench workbench,
      BooleanSupplier stop,
      Consumer<Splitter.Progress> progress) {
    NearestPlan asked = ofShareAsked(brief, workbench, stop, progress);
    if (asked.result.found().isPresent() || stop.getAsBoolean()) {
      return asked;
    }
    Ladder ladder = new Ladder(brief.with(brief.rules().with(Margin.NONE)), workbench, stop);
    for (Brief lower : ladder.fromLargest()) {
      SplitResult result = RotationOrCheapest.of(lower, workbench, stop, progress);
      if (result.found().isPresent()) {
        return new NearestPlan(lower, result);
      }
    }
    return asked;
  }

  /** The plan for the share asked for, within the margin of tempo or else without it. */
  public static NearestPlan ofShareAsked(
      Brief brief,
      Workbench workbench,
      BooleanSupplier stop,
      Consumer<Splitter.Progress> progress) {
    SplitResult within = RotationOrCheapest.of(brief, workbench, stop, progress);
    if (within.found().isPresent() || brief.rules().margin().isNone() || stop.getAsBoolean()) {
      return new NearestPlan(brief, within);
    }
    Brief without = brief.with(brief.rules().with(Margin.NONE));
    return new NearestPlan(without, RotationOrCheapest.of(without, workbench, stop, progress));
  }

  /** The shares below the one asked for. */
  private static final class Ladder {
    private final Brief asked;
    private final Workbench workbench;
    private final BooleanSupplier stop;
    private final List<Brief> lower = new ArrayList<>();

    Ladder(Brief asked, Workbench workbench, BooleanSupplier stop) {
      this.asked = asked;
      this.workbench = workbench;
      this.stop = stop;
      double percent = asked.rules().assurance().percent();
      int first = (int) Math.ceil(percent / STEP_PERCENT - 1) * STEP_PERCENT;
      for (int share = first; share > LEAST_PERCENT; share -= STEP_PERCENT) {
        lower.add(at(share));
      }
      if (percent > LEAST_PERCENT) {
        lower.add(at(LEAST_PERCENT));
      }
    }

    private Brief at(int percent) {
      return asked.at(new Assurance(percent));
    }

    /** Those for which a plan was found, and those below, the largest first. */
    List<Brief> fromLargest() {
      int works = lower.size() - 1;
      if (works < 0 || lower.get(works).players().equals(asked.players()) || !goes(works)) {
        return List.of();
      }
      int fails = -1;
      while (works - fails > 1) {
        int middle = (works + fails) / 2;
        if (goes(middle)) {
          works = middle;
        } else {
          fails = middle;
        }
      }
      return lower.subList(works, lower.size());
    }

    private boolean goes(int rung) {
      int[] left = {LOOKS};
      return AnyPlan.of(lower.get(rung), workbench, () -> stop.getAsBoolean() || --left[0] < 0)
          .plan()
          .isPresent();
    }
  }
}
