package stafette.desktop.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Assurance;
import stafette.score.Score;
import stafette.score.Tremolo;
import stafette.work.CheckScore;
import stafette.work.JudgedPlan;
import stafette.work.LimitsInForce;
import stafette.work.OpenPlan;
import stafette.work.Refusal;

/**
 * What a file holds.
 *
 * @param passages the fast ones of its score, worst first
 * @param plan if the file is a plan
 */
record Opened(Score score, List<CheckScore.Report> passages, Optional<JudgedPlan> plan) {
  static Opened read(Path file) throws Refusal {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    if (OpenPlan.isPlan(file)) {
      OpenPlan.Opened plan = OpenPlan.open(file, Map.of(), limits);
      return new Opened(
          plan.score().score(),
          passages(plan.score().file(), limits).reports(),
          Optional.of(plan.judged()));
    }
    CheckScore.Checked checked = passages(file, limits);
    return new Opened(checked.score().score(), checked.reports(), Optional.empty());
  }

  private static CheckScore.Checked passages(Path file, LimitsInForce limits) throws Refusal {
    return CheckScore.passages(
        file, Tremolo.AS_WRITTEN, Optional.empty(), Assurance.DEFAULT, List.of(), limits);
  }
}
