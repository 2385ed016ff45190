package stafette.check.alone;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stafette.score.Articulation;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * A stroke that a thinned part keeps.
 *
 * @param of its number in the whole line
 * @param stroke as it is to be written
 */
public record ThinnedStroke(int of, Stroke stroke) {
  private static final Set<Articulation> ABOUT_LENGTH =
      EnumSet.of(
          Articulation.STACCATO,
          Articulation.STACCATISSIMO,
          Articulation.SPICCATO,
          Articulation.TENUTO,
          Articulation.DETACHED_LEGATO);

  /**
   * What a pattern keeps of a stretch.
   *
   * @param sounding whether notes that are left far apart, as {@link Thinning#HALF} and {@link
   *     Thinning#BEATS} leave them, last up to the next one in the beat or to the beat's end where
   *     one plain value shows that; then short notes get a dot. If not, they keep their length and
   *     silence follows.
   */
  public static List<ThinnedStroke> of(
      Line line, int first, int last, Thinning pattern, boolean sounding) {
    boolean lengthens = sounding && (pattern == Thinning.HALF || pattern == Thinning.BEATS);
    List<ThinnedStroke> result = new ArrayList<>();
    for (int j = first; j <= last; j++) {
      if (pattern.keeps(line, j)) {
        result.add(
            new ThinnedStroke(
                j, lengthens ? lengthened(line, j, pattern) : pattern.stroke(line, j)));
      }
    }
    return result;
  }

  /**
   * The line that is left, with the clock of the whole one. Slurs stay where both notes and all
   * between them stood under one slur and no silence parts them.
   *
   * @param kept at least one
   */
  public static Line line(Line whole, List<ThinnedStroke> kept) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      boolean from = i > 0 && joined(whole, kept.get(i - 1), kept.get(i));
      boolean on = i + 1 < kept.size() && joined(whole, kept.get(i), kept.get(i + 1));
      strokes.add(slurred(kept.get(i).stroke, from, on));
    }
    return whole.of(strokes, kept.stream().map(k -> whole.cover(k.of)).toList());
  }

  /**
   * A line of all strokes that any pattern may keep, by onset: what stands in a part already with
   * these notes is the line, however it was thinned.
   */
  public static Line everything(Line whole) {
    List<Stroke> strokes = new ArrayList<>(whole.strokes());
    for (int j = 0; j < whole.count(); j++) {
      if (whole.placeInThree(j) == 2) {
        strokes.add(Thinning.TWO_FOR_THREE.stroke(whole, j));
      }
    }
    strokes.sort((a, b) -> a.onset().compareTo(b.onset()));
    return whole.of(strokes, Collections.nCopies(strokes.size(), 0));
  }

  private static boolean joined(Line whole, ThinnedStroke one, ThinnedStroke next) {
    boolean under = one.stroke.span().end().equals(next.stroke.onset());
    for (int j = one.of; under && j < next.of; j++) {
      under = whole.stroke(j).slurContinues() && whole.stroke(j + 1).slurred();
    }
    return under;
  }

  private static Stroke lengthened(Line line, int j, Thinning pattern) {
    Stroke stroke = line.stroke(j);
    Position reach = reach(line, j, pattern);
    if (!stroke.measured() || !stroke.span().end().isBefore(reach) || !soundsUpTo(line, j, reach)) {
      return stroke;
    }
    return value(stroke, reach)
        .map(value -> with(stroke, stroke.onset(), List.of(value), marks(stroke, value)))
        .orElse(stroke);
  }

  /** The next stroke kept in the beat, else the beat's end. */
  private static Position reach(Line line, int j, Thinning pattern) {
    for (int next = j + 1; next < line.count() && line.sameBeat(next); next++) {
      if (pattern.keeps(line, next)) {
        return line.stroke(next).onset();
      }
    }
    Position onset = line.stroke(j).onset();
    Bar bar = line.bars().at(onset);
    Position end = bar.beatStart(onset).plus(bar.beatLengthAt(onset));
    return end.isBefore(bar.span().end()) ? end : bar.span().end();
  }

  private static boolean soundsUpTo(Line line, int j, Position reach) {
    Position end = line.stroke(j).span().end();
    int next = j + 1;
    while (end.isBefore(reach) && next < line.count() && !line.stroke(next).onset().isAfter(end)) {
      end = line.stroke(next).span().end();
      next++;
    }
    return !end.isBefore(reach);
  }

  /** One value up to there, plain or in the stroke's own tuplet. */
  private static Optional<Value> value(Stroke stroke, Position reach) {
    Length length = reach.since(stroke.onset());
    if (isPlain(length.quarters())) {
      return Optional.of(new Value(length, Optional.empty()));
    }
    Optional<Tuplet> tuplet = stroke.values().get(0).tuplet();
    return tuplet
        .filter(t -> !reach.isAfter(t.span().end()))
        .filter(t -> isPlain(length.quarters().times(t.actual()).dividedBy(t.normal())))
        .map(t -> new Value(length, tuplet));
  }

  /** A note with one dot at the most. */
  private static boolean isPlain(Rational quarters) {
    int numerator = quarters.numerator().bitLength() > 8 ? 0 : quarters.numerator().intValue();
    boolean one = Integer.bitCount(numerator) == 1;
    boolean three = numerator % 3 == 0 && Integer.bitCount(numerator / 3) == 1;
    return quarters.denominator().bitCount() == 1 && (one || three);
  }

  /** A dot more if the note is at least twice as long now as it sounded before. */
  private static Set<Articulation> marks(Stroke stroke, Value value) {
    boolean longer = value.length().compareTo(stroke.length().times(Rational.of(2))) >= 0;
    boolean free =
        !stroke.slurred()
            && !stroke.slurContinues()
            && stroke.articulations().stream().noneMatch(ABOUT_LENGTH::contains);
    if (!longer || !free) {
      return stroke.articulations();
    }
    Set<Articulation> marks = new HashSet<>(stroke.articulations());
    marks.add(Articulation.STACCATO);
    return marks;
  }

  /** A stroke at another place, with other values and marks. */
  static Stroke with(
      Stroke stroke, Position onset, List<Value> values, Set<Articulation> articulations) {
    return new Stroke(
        onset,
        stroke.tones(),
        values,
        stroke.graces(),
        stroke.slurred(),
        stroke.slurContinues(),
        stroke.measured(),
        articulations,
        stroke.dynamic(),
        stroke.manner());
  }

  private static Stroke slurred(Stroke stroke, boolean from, boolean on) {
    return new Stroke(
        stroke.onset(),
        stroke.tones(),
        stroke.values(),
        stroke.graces(),
        from,
        on,
        stroke.measured(),
        stroke.articulations(),
        stroke.dynamic(),
        stroke.manner());
  }
}
