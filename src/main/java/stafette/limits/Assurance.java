package stafette.limits;

import org.apache.commons.statistics.distribution.NormalDistribution;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * The share of professional players who should manage each part.
 *
 * @param percent above 0 and below 100
 */
public record Assurance(double percent) implements Sayable {
  /** About one standard deviation below the mean. */
  public static final Assurance DEFAULT = new Assurance(84);

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /**
   * @throws IllegalArgumentException if the share is not between 0 and 100
   */
  public Assurance {
    if (!(percent > 0 && percent < 100)) {
      throw new IllegalArgumentException(
          "an assurance lies between 0 and 100 per cent: " + percent);
    }
  }

  /** "84 of 100". */
  @Override
  public Sentence inWords() {
    return Sentence.of("{0} of 100", Sentence.decimal(percent, percent % 1 == 0 ? 0 : 1));
  }

  /**
   * How many standard deviations from the mean to plan with: the normal quantile of 1 − assurance.
   */
  public double z() {
    return NORMAL.inverseCumulativeProbability(1 - percent / 100);
  }
}
