package stafette.score;

/**
 * Where a line was taken from, and what was changed.
 *
 * @param part the part's id
 * @param partName its name
 * @param staff counted from 1
 * @param voice the voice's name
 * @param tone which tones of chords
 * @param firstBar index of the first bar
 * @param lastBar index of the last bar, included
 * @param slurring what slurs were given to it there
 */
public record LineSource(
    String part,
    String partName,
    int staff,
    String voice,
    ToneChoice tone,
    int firstBar,
    int lastBar,
    Slurring slurring) {
  /** A line as it is written there. */
  public LineSource(
      String part,
      String partName,
      int staff,
      String voice,
      ToneChoice tone,
      int firstBar,
      int lastBar) {
    this(part, partName, staff, voice, tone, firstBar, lastBar, Slurring.AS_WRITTEN);
  }

  /** The source with other tones. */
  public LineSource with(ToneChoice other) {
    return new LineSource(part, partName, staff, voice, other, firstBar, lastBar, slurring);
  }

  /** The source with slurs that it has not. */
  LineSource with(Slurring other) {
    return new LineSource(part, partName, staff, voice, tone, firstBar, lastBar, other);
  }
}
