package stafette.plan.written;

import java.util.List;
import stafette.notation.BarItem.SoundingItem;
import stafette.notation.TremoloSign;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Strokes that are written as one note with slashes, or as two notes with slashes between them.
 *
 * @param span of all of them
 * @param strokes how many
 * @param slashes how many, beside the note's own beams
 * @param alternates whether two notes alternate
 */
public record SlashedNote(Span span, int strokes, int slashes, boolean alternates) {
  /**
   * What is written.
   *
   * @param first the number of its first stroke
   */
  public List<SoundingItem> sounds(int first) {
    if (!alternates) {
      return List.of(SoundingItem.slashed(first, span, TremoloSign.single(slashes)));
    }
    Position middle =
        span.start().plus(new Length(span.length().quarters().times(Rational.of(1, 2))));
    return List.of(
        SoundingItem.slashed(
            first, new Span(span.start(), middle), TremoloSign.firstOfTwo(slashes)),
        SoundingItem.slashed(
            first + 1, new Span(middle, span.end()), TremoloSign.secondOfTwo(slashes)));
  }
}
