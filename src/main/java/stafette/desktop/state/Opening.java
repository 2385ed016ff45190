package stafette.desktop.state;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stafette.ask.LineRequest;
import stafette.ask.SplitRequest;
import stafette.keep.KeptPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.keep.Unfinished;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.work.CheckScore;
import stafette.work.OpenPlan;

/**
 * What comes of opening a file.
 *
 * @param desk the desk as it was left, or with a score alone
 * @param score what became of the score since
 */
record Opening(Desk desk, OpenPlan.ScoreNow score) {
  /** Opens a score, or a plan that was kept. */
  static Opening of(Path file, LimitsInForce limits) throws Refusal {
    if (!KeptPlan.isPlan(file)) {
      LineRequest whole = LineRequest.whole(file);
      OpenScore score = OpenScore.open(file, whole.tremolo(), whole.cues(), limits);
      return new Opening(Desk.of(passages(score, limits)), OpenPlan.ScoreNow.SAME);
    }
    OpenPlan.OnDesk opened = OpenPlan.onDesk(file, Optional.empty(), limits);
    SavedState kept =
        opened.score() == OpenPlan.ScoreNow.UNFIT
            ? SavedState.EASILY_HAD_AGAIN
            : SavedState.in(file);
    return of(opened, kept, limits);
  }

  /**
   * Opens what was left behind, so that no other program does.
   *
   * @param score where the score is now; where it was if empty
   */
  static Opening recovered(
      Unfinished unfinished, Unfinished.Left left, Optional<Path> score, LimitsInForce limits)
      throws Refusal {
    unfinished.claim(left);
    return of(OpenPlan.onDesk(left.file(), score, limits), SavedState.NOWHERE, limits);
  }

  private static Opening of(OpenPlan.OnDesk opened, SavedState kept, LimitsInForce limits)
      throws Refusal {
    OpenScore score = opened.line().score();
    OpenScore asWritten =
        score.tremolo() == Tremolo.AS_WRITTEN
            ? score
            : OpenScore.open(score.file(), Tremolo.AS_WRITTEN, false, limits);
    return new Opening(
        new Desk(
            Optional.of(passages(asWritten, limits)),
            Optional.of(opened.line()),
            opened.judged(),
            opened.found(),
            WrittenAs.plain(SourceTreatment.KEEP),
            kept),
        opened.score());
  }

  private static CheckScore.CheckedScore passages(OpenScore score, LimitsInForce limits) {
    SplitRequest asked = SplitRequest.usual(LineRequest.whole(score.file()));
    return CheckScore.passages(score, Optional.empty(), asked.assurance(), List.of(), limits);
  }
}
