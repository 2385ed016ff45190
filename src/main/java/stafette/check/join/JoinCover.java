package stafette.check.join;

import stafette.score.Score;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * How far other parts cover a join: under an attack of the rest of the orchestra it disappears
 * (common practice, no source).
 *
 * @param attacks how many other parts attack at the landing note, one with an accent or a marcato
 *     sign counted twice; four stand for any more
 */
public record JoinCover(int attacks) implements Sayable {
  private static final int ALL_COVERED = Score.MOST_COVER / Score.COVER;

  /** From the points of cover that a line has there, as {@link Score#line} reckons them. */
  static JoinCover of(int points) {
    return new JoinCover(Math.min(points, Score.MOST_COVER) / Score.COVER);
  }

  /** Whether the join disappears under them. */
  public boolean hides() {
    return attacks >= ALL_COVERED;
  }

  @Override
  public Sentence inWords() {
    if (hides()) {
      return Sentence.of("the join disappears under the attack of other parts");
    }
    return switch (attacks) {
      case 0 -> Sentence.of("nothing covers it");
      case 1 -> Sentence.of("another part attacks there");
      default -> Sentence.of("{0} other parts attack there (an accent counted twice)", attacks);
    };
  }
}
