package stafette.notation;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * The last note of a player who hands over: written at a plain length of at most half a beat, or a
 * third of a beat of three, rather than as one note of a tuplet with rests (common practice, no
 * source).
 */
public final class LandingNote {
  private static final List<Rational> OF_TWOS = List.of(Rational.of(1, 2), Rational.of(1, 4));
  private static final List<Rational> OF_THREES = List.of(Rational.of(1, 3), Rational.of(1, 6));

  private LandingNote() {}

  /**
   * The last stroke that a player has of a line, as it is written; as it is where the line does not
   * go on right after it.
   *
   * @param isFree whether the player may hold it so long
   */
  public static Stroke written(Line line, int last, Predicate<Position> isFree) {
    Stroke landing = line.stroke(last);
    boolean handsOver =
        last < line.count() - 1 && line.stroke(last + 1).onset().equals(landing.span().end());
    return handsOver ? written(landing, line.bars().at(landing.onset()), isFree) : landing;
  }

  /**
   * The stroke as it is written; as it is where no plain length fits its place in the beat.
   *
   * @param bar in which it is struck
   * @param isFree whether the player may hold it so long
   */
  static Stroke written(Stroke landing, Bar bar, Predicate<Position> isFree) {
    Length beat = bar.beatLengthAt(landing.onset());
    Rational into = landing.onset().quarters().minus(bar.beatStart(landing.onset()).quarters());
    if (landing.isTremolo()) {
      return landing;
    }
    return parts(beat)
        .map(part -> beat.quarters().times(part))
        .filter(length -> into.modulo(length).signum() == 0)
        .map(Length::new)
        .filter(length -> isLonger(length, landing))
        .filter(length -> isFree.test(landing.onset().plus(length)))
        .findFirst()
        .map(length -> landing.lasting(new Value(length, Optional.empty())))
        .orElse(landing);
  }

  private static Stream<Rational> parts(Length beat) {
    boolean ofThree = NoteShape.of(beat.quarters()).filter(shape -> shape.dots() > 0).isPresent();
    return (ofThree ? OF_THREES : OF_TWOS).stream();
  }

  private static boolean isLonger(Length length, Stroke landing) {
    boolean inTuplet = landing.values().stream().anyMatch(value -> value.tuplet().isPresent());
    int compared = length.compareTo(landing.length());
    return compared > 0 || (compared == 0 && inTuplet);
  }
}
