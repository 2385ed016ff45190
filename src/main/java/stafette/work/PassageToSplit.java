package stafette.work;

import java.util.List;
import java.util.Optional;
import stafette.ask.Allowance;
import stafette.keep.OpenScore;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.LineSource;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.time.Span;

/**
 * What to ask for to have a passage split.
 *
 * @param line its whole bars, counted from 1, by the id of its part where that is enough; which
 *     tones only where there are chords
 * @param allowances those of the check
 */
public record PassageToSplit(LineChoice line, List<Allowance> allowances) {
  /**
   * For a passage that was found in a score; empty if no choice leads to it, as its part's id and
   * name are those of another part as well.
   *
   * @param asked how it was checked
   */
  static Optional<PassageToSplit> of(OpenScore score, Line passage, CheckScore.Asked asked) {
    LineChoice choice = choice(score.score(), passage);
    try {
      return leadsTo(choice.take(score.score()), passage)
          ? Optional.of(new PassageToSplit(choice, asked.allowances()))
          : Optional.empty();
    } catch (NoSuchLine e) {
      return Optional.empty();
    }
  }

  private static LineChoice choice(Score score, Line passage) {
    LineSource source = passage.source();
    LineChoice all = LineChoice.of(source);
    Span bars =
        new Span(
            score.bars().get(source.firstBar()).span().start(),
            score.bars().get(source.lastBar()).span().end());
    boolean chords =
        score.part(source.part()).stream()
            .map(Part::voices)
            .flatMap(List::stream)
            .filter(v -> source.strands().has(v.staff(), v.name()))
            .flatMap(voice -> voice.within(bars).stream())
            .anyMatch(Stroke::isChord);
    return chords ? all : all.withoutTone();
  }

  private static boolean leadsTo(Line line, Line passage) {
    return line.strokes().contains(passage.stroke(0))
        && line.strokes().contains(passage.stroke(passage.count() - 1));
  }
}
