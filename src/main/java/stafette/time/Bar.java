package stafette.time;

import java.util.ArrayList;
import java.util.List;

/**
 * One bar of the score.
 *
 * @param index counted from 0 through the whole score
 * @param number as printed; may repeat and need not be a number
 * @param span where it stands
 * @param meter as its time signature has it
 * @param lead how much of the metre has passed before this bar begins: above zero for a pickup, and
 *     for the second half of a bar that a repeat sign divides
 * @param counted how it is counted: as the metre says, or by the groups of its notes where that
 *     leaves them open
 * @param landmarks what stands at it in every part
 */
public record Bar(
    int index,
    String number,
    Span span,
    Meter meter,
    Length lead,
    Meter counted,
    Landmarks landmarks) {
  /** A bar that is counted as its metre says, without landmarks. */
  public Bar(int index, String number, Span span, Meter meter, Length lead) {
    this(index, number, span, meter, lead, meter, Landmarks.NONE);
  }

  /** Whether another bar is the same but perhaps for how it is counted, which its notes tell. */
  public boolean isAlike(Bar other) {
    return index == other.index
        && number.equals(other.number)
        && span.equals(other.span)
        && meter.equals(other.meter)
        && lead.equals(other.lead);
  }

  Meter.Beat beatAt(Position position) {
    return counted.beatAt(position.since(span.start()).plus(lead));
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

  /**
   * The beats of this bar one after the other, the first and the last cut where the bar begins and
   * ends.
   */
  public List<Span> beats() {
    List<Span> result = new ArrayList<>();
    Position at = span.start();
    while (at.isBefore(span.end())) {
      Meter.Beat beat = beatAt(at);
      Position next = at.plus(beat.length().minus(beat.into()));
      result.add(new Span(at, next.isBefore(span.end()) ? next : span.end()));
      at = next;
    }
    return result;
  }
}
