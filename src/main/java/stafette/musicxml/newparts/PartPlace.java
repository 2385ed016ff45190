package stafette.musicxml.newparts;

import java.util.Comparator;
import stafette.score.Part;
import stafette.words.Sentence;

/**
 * Where a new part goes: beside a part that is there. Those that go to one side of one part stand
 * in their natural order.
 *
 * @param part the id of the part beside which it goes
 * @param side above or below that part
 * @param kinship what it has in common with that part, which decides whose brackets it shares
 * @param rank its place among new parts that have all this in common, from above
 */
public record PartPlace(String part, Side side, Kinship kinship, int rank)
    implements Comparable<PartPlace> {
  private static final Comparator<PartPlace> FROM_ABOVE =
      Comparator.comparing(PartPlace::side)
          .thenComparingInt(PartPlace::distanceFromAbove)
          .thenComparingInt(PartPlace::rank);

  /** On which side of a part, as they follow one another between two parts. */
  public enum Side {
    BELOW,
    ABOVE
  }

  /** What two parts have in common, the closest first. */
  public enum Kinship {
    /** Their instrument: they share all brackets. */
    INSTRUMENT,
    /** Their family: they share its bracket, not those of one instrument's players. */
    FAMILY,
    /** Nothing: they share brackets only that go on beyond both. */
    NONE
  }

  /** Below a part of the same instrument. */
  public static PartPlace below(String part) {
    return new PartPlace(part, Side.BELOW, Kinship.INSTRUMENT, 0);
  }

  /** Below all that is there. */
  static PartPlace atEnd(String lastPart) {
    return new PartPlace(lastPart, Side.BELOW, Kinship.NONE, 0);
  }

  /** Says it of a new part. */
  public Sentence inWords(Part beside) {
    return side == Side.BELOW
        ? Sentence.of("new part after {0}", beside.name())
        : Sentence.of("new part above {0}", beside.name());
  }

  private int distanceFromAbove() {
    return side == Side.BELOW ? kinship.ordinal() : -kinship.ordinal();
  }

  @Override
  public int compareTo(PartPlace other) {
    return FROM_ABOVE.compare(this, other);
  }
}
