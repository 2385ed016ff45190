package stafette.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.ThinnedStroke;
import stafette.keep.FileDoor;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.share.Background;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.write.ScoreWriter;
import stafette.musicxml.write.WrittenScore;
import stafette.plan.Plan;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Part;
import stafette.score.Score;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** Writes a plan into a copy of the score that it was made for. */
public final class WriteScore {
  private WriteScore() {}

  /**
   * Where to write.
   *
   * @param file the file
   * @param replace whether it may replace one that is there
   */
  public record Target(Path file, boolean replace) {}

  /**
   * What was written.
   *
   * @param file the file
   * @param changes a sentence for each part that was changed; empty if the score had it all already
   */
  public record Saved(Path file, List<Sentence> changes) {}

  /**
   * Writes.
   *
   * @throws Refusal if the file can't be written
   */
  public static Saved save(
      OpenScore score, Plan plan, SourceTreatment treatment, LimitsInForce limits, Target target)
      throws Refusal {
    return save(score, Optional.of(plan), List.of(), WrittenAs.plain(treatment), limits, target);
  }

  /**
   * Writes background parts alone.
   *
   * @throws Refusal if the file can't be written
   */
  public static Saved save(ThinLine.ThinOutcome outcome, LimitsInForce limits, Target target)
      throws Refusal {
    return save(
        outcome.score(),
        Optional.empty(),
        outcome.parts(),
        WrittenAs.plain(SourceTreatment.KEEP),
        limits,
        target);
  }

  /**
   * Writes a plan and background parts; players who keep nothing are left as they are.
   *
   * @throws Refusal if the file can't be written
   */
  public static Saved save(
      OpenScore score,
      Optional<Plan> plan,
      List<ThinnedPart> background,
      WrittenAs how,
      LimitsInForce limits,
      Target target)
      throws Refusal {
    WrittenScore written = written(score, plan, background, how, limits);
    FileDoor.write(
        target.file(), written.bytes(), target.replace(), bytes -> readAgain(bytes, score));
    return new Saved(target.file(), written.changes());
  }

  static WrittenScore written(
      OpenScore score,
      Optional<Plan> plan,
      List<ThinnedPart> background,
      WrittenAs how,
      LimitsInForce limits)
      throws Refusal {
    try {
      return ScoreWriter.write(
          score.document(),
          plan,
          background.stream().flatMap(part -> background(part).stream()).toList(),
          how,
          new ScoreSeating(score.score(), limits.catalogue()));
    } catch (UnwritablePlan e) {
      throw Refusal.ofFile(Sentence.of("{0}: {1}", score.file(), e.inWords()));
    }
  }

  /**
   * Reads what was written, whole: the score's bars, all of its parts and the new ones.
   *
   * @throws IllegalStateException if it can't be read, or is not the score any more: our fault, and
   *     it replaces nothing
   */
  static Score readAgain(byte[] written, OpenScore score) {
    try {
      Score then = score.edition(written);
      if (!hasPartsOf(score.score(), then) || !hasBarsOf(score.score(), then)) {
        throw new IllegalStateException("what would be written lacks parts or bars of the score");
      }
      return then;
    } catch (UnreadableScore e) {
      throw new IllegalStateException("what would be written can't be read", e);
    }
  }

  private static boolean hasPartsOf(Score score, Score then) {
    List<String> ids = then.parts().stream().map(Part::id).toList();
    return score.parts().stream().map(Part::id).allMatch(ids::contains);
  }

  private static boolean hasBarsOf(Score score, Score then) {
    return IntStream.range(0, Math.max(score.bars().count(), then.bars().count()))
        .allMatch(
            i ->
                i < then.bars().count()
                    && i < score.bars().count()
                    && score.bars().get(i).isAlike(then.bars().get(i)));
  }

  private static Optional<Background> background(ThinnedPart part) {
    return part.kept().map(plan -> new Background(plan, ThinnedStroke.everything(part.whole())));
  }
}
