package stafette.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/** Splits silence into rests: by beats, and within a beat so that each stands on its own grid. */
final class RestFill {
  private RestFill() {}

  /**
   * The rests that fill a gap in a bar.
   *
   * @param breaks places over which no rest may last
   */
  static List<Span> of(Bar bar, Span gap, NavigableSet<Position> breaks) {
    List<Span> rests = new ArrayList<>();
    Position at = gap.start();
    while (at.isBefore(gap.end())) {
      Position stop = Optional.ofNullable(breaks.higher(at)).orElse(gap.end());
      Span rest = new Span(at, next(bar, at, stop.isBefore(gap.end()) ? stop : gap.end()));
      rests.add(rest);
      at = rest.end();
    }
    return rests;
  }

  /**
   * The rests that fill part of a tuplet, as the tuplet's own time: {@code start} and {@code end}
   * in quarters since the group began, as they are written.
   */
  static List<Rational> written(Rational start, Rational end) {
    List<Rational> rests = new ArrayList<>();
    Rational at = start;
    while (at.compareTo(end) < 0) {
      Rational rest = aligned(at, end).orElse(end.minus(at));
      rests.add(rest);
      at = at.plus(rest);
    }
    return rests;
  }

  private static Position next(Bar bar, Position at, Position stop) {
    Position beatStart = bar.beatStart(at);
    Length beat = bar.beatLengthAt(at);
    if (beatStart.equals(at)) {
      for (Length whole : List.of(halfBar(bar, at, beat), beat)) {
        Position end = at.plus(whole);
        if (!end.isAfter(stop) && NoteShape.of(whole.quarters()).isPresent()) {
          return end;
        }
      }
    }
    Position beatEnd = beatStart.plus(beat);
    Position limit = beatEnd.isBefore(stop) ? beatEnd : stop;
    Rational into = at.quarters().minus(beatStart.quarters());
    return aligned(into, limit.quarters().minus(beatStart.quarters()))
        .map(rest -> at.plus(new Length(rest)))
        .orElse(limit);
  }

  /** Two beats where they are one half of four equal ones, else one. */
  private static Length halfBar(Bar bar, Position at, Length beat) {
    List<Length> beats = bar.counted().beats();
    boolean fourEqual = beats.size() == 4 && beats.stream().distinct().count() == 1;
    int index = bar.nameOf(at).beat().floor().intValueExact() - 1;
    return fourEqual && index < 4 && index % 2 == 0 ? beat.plus(beat) : beat;
  }

  /**
   * The longest plain length from {@code at} on its own grid that does not pass the end; empty if
   * halves and their halves never reach the end.
   */
  private static Optional<Rational> aligned(Rational at, Rational end) {
    if (end.minus(at).denominator().bitCount() > 1) {
      return Optional.empty();
    }
    Optional<Rational> length = NoteShape.longestPlain(end.minus(at));
    while (length.isPresent() && at.modulo(length.get()).signum() != 0) {
      Rational half = length.get().dividedBy(2);
      length = NoteShape.of(half).map(shape -> half);
    }
    return length;
  }
}
