package stafette.check.alone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rank;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * What is left of a line in a thinned part, from full to empty. A stroke on a beat stays in all of
 * them but the last.
 */
public enum Thinning {
  ALL("all"),
  /**
   * First and third of each three, where they are written; first and second where a new harmony
   * begins with the second.
   */
  WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET("without the middle of each triplet"),
  /** Each three becomes two even strokes in its time: on the notes of its first and third. */
  TWO_FOR_THREE("two for three"),
  /** Every other stroke, counted anew from each beat and each change of harmony. */
  HALF("half"),
  /** The strokes that fall on a beat or begin a new harmony. */
  BEATS("beats"),
  NOTHING("nothing");

  private final String text;

  Thinning(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }

  /** The line so thinned; empty if this pattern doesn't change it or leaves nothing of it. */
  public Optional<Line> of(Line line) {
    List<Stroke> kept = new ArrayList<>();
    List<Integer> cover = new ArrayList<>();
    for (int j = 0; j < line.count(); j++) {
      if (keeps(line, j)) {
        kept.add(stroke(line, j));
        cover.add(line.cover(j));
      }
    }
    return kept.isEmpty() || kept.size() == line.count()
        ? Optional.empty()
        : Optional.of(
            new Line(line.source(), kept, cover, line.bars(), line.tempo(), line.keys())
                .expressed(line.expression()));
  }

  boolean keeps(Line line, int j) {
    return switch (this) {
      case ALL -> true;
      case WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET -> keepsOfThree(line, j);
      case TWO_FOR_THREE -> line.placeInThree(j) != 1;
      case HALF -> (j - Harmony.countedFrom(line, j)) % 2 == 0;
      case BEATS -> line.rank(j).compareTo(Rank.BEAT) <= 0 || Harmony.changesAt(line, j);
      case NOTHING -> false;
    };
  }

  /** A stroke that is kept, at its place in this pattern and with its own length there. */
  Stroke stroke(Line line, int j) {
    boolean moved = this == TWO_FOR_THREE && line.placeInThree(j) >= 0;
    return moved ? duplet(line, j) : line.stroke(j);
  }

  private static boolean keepsOfThree(Line line, int j) {
    int place = line.placeInThree(j);
    return place <= 0 || (place == 1) == Harmony.changesAt(line, place == 1 ? j : j - 1);
  }

  /** One of two even strokes in the time of three, from the first or the third of them. */
  private static Stroke duplet(Line line, int j) {
    Stroke stroke = line.stroke(j);
    int place = line.placeInThree(j);
    Stroke first = line.stroke(j - place);
    Length apart = line.stroke(j - place + 1).onset().since(first.onset());
    Length each = apart.times(Rational.of(3, 2));
    Position onset = place == 0 ? first.onset() : first.onset().plus(each);
    Value value = new Value(each, tuplet(line, first.onset(), each));
    return ThinnedStroke.with(stroke, onset, List.of(value), stroke.articulations());
  }

  /** The group in which a value stands that halves of halves do not reach. */
  private static Optional<Tuplet> tuplet(Line line, Position at, Length each) {
    if (each.quarters().denominator().bitCount() == 1) {
      return Optional.empty();
    }
    Bar bar = line.bars().at(at);
    Span beat = Span.of(bar.beatStart(at), bar.beatLengthAt(at));
    int count = beat.length().quarters().dividedBy(each.quarters()).floor().intValueExact();
    return Optional.of(new Tuplet(count, Integer.highestOneBit(count), beat));
  }

  /** The patterns that leave something out but not everything, from full to empty. */
  public static List<Thinning> partial() {
    return IntStream.range(ALL.ordinal() + 1, NOTHING.ordinal())
        .mapToObj(index -> values()[index])
        .toList();
  }
}
