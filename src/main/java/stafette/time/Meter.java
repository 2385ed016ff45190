package stafette.time;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * How a bar is counted: its beats, one after the other. Compound and additive metres have beats of
 * a dotted value.
 */
public final class Meter {
  public static final Meter COMMON = of(List.of(4), 4);

  /** Numbers of eighths or sixteenths that are felt in twos and threes, nobody knows in which. */
  private static final Set<Integer> OPEN = Set.of(5, 7, 10, 11);

  /** A beat of three, five or seven values has its parts there, any other at its half. */
  private static final List<Integer> ODD_PARTS = List.of(3, 5, 7);

  private final List<Length> beats;
  private final List<Length> starts = new ArrayList<>();
  private final Length length;

  /**
   * A metre of these beats.
   *
   * @param beats their lengths, each above zero; at least one
   */
  public Meter(List<Length> beats) {
    this.beats = List.copyOf(beats);
    if (beats.isEmpty() || beats.stream().anyMatch(Length::isZero)) {
      throw new IllegalArgumentException("a metre needs beats that last: " + beats);
    }
    Length start = Length.ZERO;
    for (Length beat : beats) {
      starts.add(start);
      start = start.plus(beat);
    }
    length = start;
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

  public List<Length> beats() {
    return beats;
  }

  public Length length() {
    return length;
  }

  /**
   * Whether it doesn't say in which groups its beats are felt: 5, 7, 10 or 11 over 8 or 16, not
   * written as a sum.
   */
  public boolean leavesGroupsOpen() {
    Length beat = beats.get(0);
    boolean brief = beat.equals(Length.ofQuarters(1, 2)) || beat.equals(Length.ofQuarters(1, 4));
    return brief && OPEN.contains(beats.size()) && beats.stream().allMatch(beat::equals);
  }

  /**
   * Where an offset falls among the beats. It is looked up, not counted out, however long the bar.
   *
   * @param offset from the start of a full bar; past its end the last beat's length goes on
   */
  Beat beatAt(Length offset) {
    int found = Collections.binarySearch(starts, offset);
    int index = found >= 0 ? found : -found - 2;
    Length beat = beats.get(index);
    Rational into = offset.minus(starts.get(index)).quarters();
    BigInteger further = into.dividedBy(beat.quarters()).floor();
    return new Beat(
        BigInteger.valueOf(index).add(further), new Length(into.modulo(beat.quarters())), beat);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Meter that && beats.equals(that.beats);
  }

  @Override
  public int hashCode() {
    return beats.hashCode();
  }

  @Override
  public String toString() {
    return beats.toString();
  }

  /** One beat of a bar, counted from 0, and how far into it a place is. */
  record Beat(BigInteger index, Length into, Length length) {
    Rank rank() {
      if (into.isZero()) {
        return index.signum() == 0 ? Rank.BAR : Rank.BEAT;
      }
      int value = length.quarters().numerator().intValue();
      int parts = ODD_PARTS.stream().filter(odd -> value % odd == 0).findFirst().orElse(2);
      Rational part = length.quarters().dividedBy(parts);
      return into.quarters().modulo(part).signum() == 0 ? Rank.HALF : Rank.ELSEWHERE;
    }

    /** Counted from 1, with the fraction of the beat that has passed. */
    Rational number() {
      return Rational.of(index.add(BigInteger.ONE), BigInteger.ONE)
          .plus(into.quarters().dividedBy(length.quarters()));
    }
  }
}
