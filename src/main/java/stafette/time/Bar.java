package stafette.time;

/**
 * One bar of the score.
 *
 * @param index counted from 0 through the whole score
 * @param number as printed; may repeat and need not be a number
 * @param span where it stands
 * @param meter how it is counted
 * @param lead how much of the metre has passed before this bar begins: above zero for a pickup, and
 *     for the second half of a bar that a repeat sign divides
 */
public record Bar(int index, String number, Span span, Meter meter, Length lead) {
  Meter.Beat beatAt(Position position) {
    return meter.beatAt(position.since(span.start()).plus(lead));
  }

  public Rank rankOf(Position position) {
    return beatAt(position).rank();
  }

  public BarBeat nameOf(Position position) {
    return new BarBeat(number, beatAt(position).number());
  }

  /** The length of the beat within which a position falls. */
  public Length beatLengthAt(Position position) {
    return beatAt(position).length();
  }

  /**
   * Where the beat within which a position falls begins; before the bar's own start only when a
   * pickup begins inside a beat.
   */
  public Position beatStart(Position position) {
    return position.minus(beatAt(position).into());
  }
}
