package stafette.work;

import java.util.List;
import java.util.Optional;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.musicxml.write.WrittenScore;
import stafette.plan.Plan;
import stafette.plan.WrittenAs;
import stafette.score.Score;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * What writing a plan into a score would change.
 *
 * @param sentences one for each part; none if the score has all of it already
 * @param parts with their bars, from top to bottom
 */
public record ScoreChanges(List<Sentence> sentences, List<ChangedPart> parts) {
  public ScoreChanges {
    sentences = List.copyOf(sentences);
    parts = List.copyOf(parts);
  }

  /**
   * Finds out. Nothing is written to any file.
   *
   * @throws Refusal if the plan can't be written into this score
   */
  public static ScoreChanges of(OpenScore score, Plan plan, WrittenAs how, LimitsInForce limits)
      throws Refusal {
    WrittenScore written = WriteScore.written(score, Optional.of(plan), List.of(), how, limits);
    Score then = WriteScore.readAgain(written.bytes(), score);
    return new ScoreChanges(
        written.changes(), ChangedPart.all(score.score(), then, plan, limits.catalogue()));
  }
}
