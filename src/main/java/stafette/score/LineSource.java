package stafette.score;

/**
 * Where a line was taken from, and what was changed.
 *
 * @param part the part's id
 * @param partName its name
 * @param strands the voices that have it
 * @param tone which tones of chords
 * @param reading how broken octaves and chords were read
 * @param firstBar index of the first bar
 * @param lastBar index of the last bar, included
 * @param slurring what slurs were given to it there
 */
public record LineSource(
    String part,
    String partName,
    Strands strands,
    ToneChoice tone,
    Reading reading,
    int firstBar,
    int lastBar,
    Slurring slurring) {
  /** A line of one voice, as it is written there. */
  public LineSource(
      String part,
      String partName,
      int staff,
      String voice,
      ToneChoice tone,
      int firstBar,
      int lastBar) {
    this(part, partName, Strands.of(staff, voice), tone, firstBar, lastBar);
  }

  /** A line as it is written there. */
  public LineSource(
      String part, String partName, Strands strands, ToneChoice tone, int firstBar, int lastBar) {
    this(part, partName, strands, tone, Reading.ALL, firstBar, lastBar, Slurring.AS_WRITTEN);
  }

  /** The source with other tones. */
  public LineSource with(ToneChoice other) {
    return new LineSource(part, partName, strands, other, reading, firstBar, lastBar, slurring);
  }

  /** The source read otherwise. */
  LineSource with(Reading other) {
    return new LineSource(part, partName, strands, tone, other, firstBar, lastBar, slurring);
  }

  /** The source with slurs that it has not. */
  LineSource with(Slurring other) {
    return new LineSource(part, partName, strands, tone, reading, firstBar, lastBar, other);
  }
}
