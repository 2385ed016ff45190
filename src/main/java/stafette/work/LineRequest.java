package stafette.work;

import java.nio.file.Path;
import java.util.Optional;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Tremolo;

/**
 * A line in a file.
 *
 * @param file the score
 * @param choice which line
 * @param tempo another tempo than the score's
 * @param tremolo how tremolos are read
 * @param cues whether cue notes count as notes
 */
public record LineRequest(
    Path file, LineChoice choice, Optional<TempoWish> tempo, Tremolo tremolo, boolean cues) {
  /** The score and the line in it. */
  public record Found(OpenScore score, Line line) {}

  /**
   * Opens the score and takes the line.
   *
   * @throws Refusal if the file can't be read, or has no such line
   */
  public Found find() throws Refusal {
    OpenScore score = OpenScore.open(file, tremolo, cues);
    try {
      Line line = choice.take(score.score());
      return new Found(score, tempo.map(wish -> wish.applyTo(line)).orElse(line));
    } catch (NoSuchLine e) {
      throw Refusal.wrongUse(file + ": " + e.getMessage());
    }
  }
}
