package stafette.desktop.state;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stafette.plan.SourceTreatment;
import stafette.score.Tremolo;
import stafette.work.CheckScore;
import stafette.work.LimitsInForce;
import stafette.work.LineRequest;
import stafette.work.OpenPlan;
import stafette.work.OpenScore;
import stafette.work.Refusal;
import stafette.work.SplitLine;
import stafette.work.Unfinished;

/**
 * What comes of opening a file.
 *
 * @param desk the desk as it was left, or with a score alone
 * @param score what became of the score since
 */
record Opening(Desk desk, OpenPlan.ScoreNow score) {
  /** Opens a score, or a plan that was kept. */
  static Opening of(Path file, LimitsInForce limits) throws Refusal {
    if (!OpenPlan.isPlan(file)) {
      LineRequest whole = LineRequest.whole(file);
      OpenScore score = OpenScore.open(file, whole.tremolo(), whole.cues());
      return new Opening(Desk.of(passages(score, limits)), OpenPlan.ScoreNow.SAME);
    }
    OpenPlan.OnDesk opened = OpenPlan.onDesk(file, Optional.empty(), limits);
    Kept kept = opened.score() == OpenPlan.ScoreNow.UNFIT ? Kept.EASILY_HAD_AGAIN : Kept.in(file);
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
    return of(OpenPlan.onDesk(left.file(), score, limits), Kept.NOWHERE, limits);
  }

  private static Opening of(OpenPlan.OnDesk opened, Kept kept, LimitsInForce limits)
      throws Refusal {
    OpenScore score = opened.line().score();
    OpenScore asWritten =
        score.tremolo() == Tremolo.AS_WRITTEN
            ? score
            : OpenScore.open(score.file(), Tremolo.AS_WRITTEN, false);
    return new Opening(
        new Desk(
            Optional.of(passages(asWritten, limits)),
            Optional.of(opened.line()),
            opened.judged(),
            opened.found(),
            SourceTreatment.KEEP,
            kept),
        opened.score());
  }

  private static CheckScore.Checked passages(OpenScore score, LimitsInForce limits) {
    SplitLine.Request asked = SplitLine.Request.usual(LineRequest.whole(score.file()));
    return CheckScore.passages(score, Optional.empty(), asked.assurance(), List.of(), limits);
  }
}
