package stafette.ask;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.NoSuchLine;
import stafette.score.Slurring;
import stafette.score.Tremolo;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * A line in a file.
 *
 * @param file the score
 * @param choice which line
 * @param tempo another tempo than the score's
 * @param tremolo how tremolos are read
 * @param cues whether cue notes count that a relay left of the line
 * @param slurring what slurs it gets beside those that the score has
 */
public record LineRequest(
    Path file,
    LineChoice choice,
    Optional<TempoWish> tempo,
    Tremolo tremolo,
    boolean cues,
    Slurring slurring) {
  /** A line with the slurs that the score has. */
  public LineRequest(
      Path file, LineChoice choice, Optional<TempoWish> tempo, Tremolo tremolo, boolean cues) {
    this(file, choice, tempo, tremolo, cues, Slurring.AS_WRITTEN);
  }

  /** A score as written, at its own tempo; which line is still open. */
  public static LineRequest whole(Path file) {
    LineChoice first =
        new LineChoice(
            "", Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
    return new LineRequest(file, first, Optional.empty(), Tremolo.AS_WRITTEN, false);
  }

  /** Another line of the same score. */
  public LineRequest with(LineChoice other) {
    return new LineRequest(file, other, tempo, tremolo, cues, slurring);
  }

  /** The same line at another tempo. */
  public LineRequest with(TempoWish other) {
    return new LineRequest(file, choice, Optional.of(other), tremolo, cues, slurring);
  }

  /** The same line with tremolos read otherwise. */
  public LineRequest with(Tremolo other) {
    return new LineRequest(file, choice, tempo, other, cues, slurring);
  }

  /** The same line with other slurs beside those of the score. */
  public LineRequest with(Slurring other) {
    return new LineRequest(file, choice, tempo, tremolo, cues, other);
  }

  /** The score and the line in it. */
  public record FoundLine(OpenScore score, Line line) {}

  /**
   * Opens the score and takes the line.
   *
   * @param limits what the instruments of its parts can do
   * @throws Refusal if the file can't be read, or has no such line
   */
  public FoundLine find(LimitsInForce limits) throws Refusal {
    return in(OpenScore.open(file, tremolo, false, limits));
  }

  /**
   * Takes the line from a score that is open already.
   *
   * @throws Refusal if it has no such line
   */
  public FoundLine in(OpenScore score) throws Refusal {
    try {
      Line line = cues ? new FormerRelay(score, choice).line() : choice.take(score.score());
      return new FoundLine(score, atTempo(slurring.of(line)));
    } catch (NoSuchLine e) {
      throw Refusal.wrongUse(Sentence.of("{0}: {1}", file, e.inWords()));
    }
  }

  private Line atTempo(Line line) {
    return tempo.map(wish -> wish.applyTo(line)).orElse(line);
  }
}
