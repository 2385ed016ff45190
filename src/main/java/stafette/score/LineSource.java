package stafette.score;

/**
 * Where a line was taken from.
 *
 * @param part the part's id
 * @param partName its name
 * @param staff counted from 1
 * @param voice the voice's name
 * @param tone which tones of chords
 * @param firstBar index of the first bar
 * @param lastBar index of the last bar, included
 */
public record LineSource(
    String part,
    String partName,
    int staff,
    String voice,
    ToneChoice tone,
    int firstBar,
    int lastBar) {
  /** The source with other tones. */
  public LineSource with(ToneChoice other) {
    return new LineSource(part, partName, staff, voice, other, firstBar, lastBar);
  }
}
