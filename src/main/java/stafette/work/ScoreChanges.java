package stafette.work;

import java.util.List;
import java.util.Optional;
import stafette.musicxml.MusicXmlReader;
import stafette.musicxml.UnreadableScore;
import stafette.musicxml.Written;
import stafette.plan.Plan;
import stafette.plan.SourceTreatment;
import stafette.score.Score;
import stafette.score.Tremolo;
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
   * @param tremolo how tremolos were read when the score was opened
   * @throws Refusal if the plan can't be written into this score
   */
  public static ScoreChanges of(
      OpenScore score, Plan plan, SourceTreatment treatment, Tremolo tremolo, LimitsInForce limits)
      throws Refusal {
    Written written = WriteScore.written(score, Optional.of(plan), List.of(), treatment, limits);
    Score then = readBack(written.bytes(), tremolo);
    return new ScoreChanges(
        written.changes(), ChangedPart.all(score.score(), then, plan, limits.catalogue()));
  }

  private static Score readBack(byte[] bytes, Tremolo tremolo) {
    try {
      return MusicXmlReader.read(bytes, tremolo, false).score();
    } catch (UnreadableScore e) {
      throw new IllegalStateException("what would be written can't be read", e);
    }
  }
}
