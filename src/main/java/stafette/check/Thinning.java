package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Value;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rank;
import stafette.time.Rational;

/** What is left of a line in a thinned part, from full to empty. */
public enum Thinning {
  ALL("all"),
  /** First and third of each three, where they are written. */
  WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET("without the middle of each triplet"),
  /** Each three becomes two even strokes in its time: on the notes of its first and third. */
  TWO_FOR_THREE("two for three"),
  /** Every other stroke of the line, from the first on. */
  HALF("half"),
  /** The strokes that fall on a beat. */
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
      Optional<Stroke> stroke = at(line, j);
      if (stroke.isPresent()) {
        kept.add(stroke.get());
        cover.add(line.cover(j));
      }
    }
    return kept.isEmpty() || kept.size() == line.count()
        ? Optional.empty()
        : Optional.of(new Line(line.source(), kept, cover, line.bars(), line.tempo()));
  }

  private Optional<Stroke> at(Line line, int j) {
    Stroke stroke = line.stroke(j);
    boolean keeps =
        switch (this) {
          case ALL -> true;
          case WITHOUT_THE_MIDDLE_OF_EACH_TRIPLET, TWO_FOR_THREE -> line.placeInThree(j) != 1;
          case HALF -> j % 2 == 0;
          case BEATS -> line.rank(j).compareTo(Rank.BEAT) <= 0;
          case NOTHING -> false;
        };
    if (!keeps) {
      return Optional.empty();
    }
    boolean moved = this == TWO_FOR_THREE && line.placeInThree(j) >= 0;
    return Optional.of(moved ? duplet(line, j) : stroke);
  }

  /** One of two even strokes in the time of three, from the first or the third of them. */
  private static Stroke duplet(Line line, int j) {
    Stroke stroke = line.stroke(j);
    int place = line.placeInThree(j);
    Stroke first = line.stroke(j - place);
    Length apart = line.stroke(j - place + 1).onset().since(first.onset());
    Length each = apart.times(Rational.of(3, 2));
    Position onset = place == 0 ? first.onset() : first.onset().plus(each);
    return new Stroke(
        onset,
        stroke.tones(),
        List.of(new Value(each, Optional.empty())),
        stroke.graces(),
        stroke.slurred(),
        stroke.slurContinues(),
        stroke.measured(),
        stroke.articulations(),
        stroke.dynamic());
  }

  /** The patterns that leave something out but not everything, from full to empty. */
  public static List<Thinning> partial() {
    return IntStream.range(ALL.ordinal() + 1, NOTHING.ordinal())
        .mapToObj(index -> values()[index])
        .toList();
  }
}
