package stafette.time;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How a bar is counted: its beats, one after the other. Compound and additive metres have beats of
 * a dotted value.
 *
 * @param beats the lengths of the beats, at least one
 */
public record Meter(List<Length> beats) {
  public static final Meter COMMON = of(List.of(4), 4);

  public Meter {
    beats = List.copyOf(beats);
    if (beats.isEmpty()) {
      throw new IllegalArgumentException("a metre needs a beat");
    }
  }

  /**
   * The metre of a time signature. One upper figure is simple (a beat for each), or compound when
   * it is a multiple of three above three over 8 or a shorter value (a beat for each three);
   * several upper figures are additive: each is one beat.
   *
   * @param upper the figures above the line, such as 4, or 3 and 2 for (3+2)/8; each above zero
   * @param lower the figure below it: 1, 2, 4, 8 …
   */
  public static Meter of(List<Integer> upper, int lower) {
    Length unit = Length.ofQuarters(4, lower);
    List<Length> beats = new ArrayList<>();
    if (upper.size() > 1) {
      for (int group : upper) {
        if (lower >= 8) {
          beats.add(unit.times(Rational.of(group)));
        } else {
          beats.addAll(Collections.nCopies(group, unit));
        }
      }
    } else {
      int figure = upper.get(0);
      boolean compound = lower >= 8 && figure > 3 && figure % 3 == 0;
      beats.addAll(
          compound
              ? Collections.nCopies(figure / 3, unit.times(Rational.of(3)))
              : Collections.nCopies(figure, unit));
    }
    return new Meter(beats);
  }

  public Length length() {
    return beats.stream().reduce(Length.ZERO, Length::plus);
  }

  /**
   * Where an offset falls among the beats.
   *
   * @param offset from the start of a full bar; past its end the last beat's length goes on
   */
  Beat beatAt(Length offset) {
    Length start = Length.ZERO;
    int index = 0;
    while (true) {
      Length beat = beats.get(Math.min(index, beats.size() - 1));
      Length end = start.plus(beat);
      if (offset.compareTo(end) < 0) {
        return new Beat(index, offset.minus(start), beat);
      }
      start = end;
      index++;
    }
  }

  /** One beat of a bar, and how far into it a place is. */
  record Beat(int index, Length into, Length length) {
    Rank rank() {
      if (into.isZero()) {
        return index == 0 ? Rank.BAR : Rank.BEAT;
      }
      boolean ternary = length.quarters().numerator().intValue() % 3 == 0;
      Rational part = length.quarters().dividedBy(ternary ? 3 : 2);
      return into.quarters().modulo(part).signum() == 0 ? Rank.HALF : Rank.ELSEWHERE;
    }

    /** Counted from 1, with the fraction of the beat that has passed. */
    Rational number() {
      return Rational.of(index + 1L).plus(into.quarters().dividedBy(length.quarters()));
    }
  }
}
