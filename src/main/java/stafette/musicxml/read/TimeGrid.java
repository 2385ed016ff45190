package stafette.musicxml.read;

import java.math.BigInteger;
import stafette.musicxml.text.Malformed;
import stafette.time.Length;
import stafette.words.Sentence;

/**
 * The equal parts of a quarter of which everything in a score is made. Every place of the score is
 * a whole number of them, so that fractions stay short however long it is.
 */
public final class TimeGrid {
  /** So many parts of a quarter are more than any values and tuplets of one score need. */
  public static final BigInteger MOST_PARTS = BigInteger.valueOf(999_999_999);

  private BigInteger parts = BigInteger.ONE;

  /**
   * Takes a length in.
   *
   * @throws Malformed if no grid holds it together with what came before
   */
  Length with(Length length) throws Malformed {
    BigInteger needed = length.quarters().denominator();
    BigInteger all = common(parts, needed);
    if (all.compareTo(MOST_PARTS) > 0) {
      throw new Malformed(
          Sentence.of(
              "with <divisions> and lengths as they are here and before, a quarter would have more"
                  + " than {0} parts",
              MOST_PARTS));
    }
    parts = all;
    return length;
  }

  /** The least number of parts that holds both. */
  public static BigInteger common(BigInteger one, BigInteger other) {
    return one.multiply(other).divide(one.gcd(other));
  }
}
