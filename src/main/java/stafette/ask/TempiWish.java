package stafette.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * Several tempi as people ask for them.
 *
 * @param unit what is counted; the one in force at the line's start if empty
 * @param slowest how many a minute
 * @param fastest how many a minute
 * @param step from one to the next; chosen so that there are about eight if empty
 */
public record TempiWish(Optional<BeatUnit> unit, long slowest, long fastest, Optional<Long> step) {
  private static final Pattern FORM =
      Pattern.compile(
          "(?:(.*)=)?\\s*([0-9]{1,4})\\s*[-–]\\s*([0-9]{1,4})\\s*(?:/\\s*([0-9]{1,4}))?");

  private static final long FASTEST = 2000;
  private static final int MOST = 60;
  private static final int USUAL = 8;
  private static final double SLOWER = 0.7;
  private static final double FASTER = 1.3;

  /** Steps that make round marks. */
  private static final List<Long> STEPS =
      List.of(1L, 2L, 4L, 5L, 8L, 10L, 20L, 40L, 50L, 100L, 200L, 500L);

  /**
   * Reads "80-120", "80-120/4" or "dotted quarter = 60-90".
   *
   * @throws Refusal if it is none of these, ends before it begins, or holds more than sixty tempi
   */
  public static TempiWish parse(String text) throws Refusal {
    Matcher form = FORM.matcher(text.trim());
    if (!form.matches()) {
      throw Refusal.wrongUse(
          Sentence.of("write SLOWEST-FASTEST or SLOWEST-FASTEST/STEP, such as 80-120/4"));
    }
    Optional<BeatUnit> unit = Optional.ofNullable(form.group(1)).flatMap(BeatUnit::parse);
    if (form.group(1) != null && unit.isEmpty()) {
      throw Refusal.wrongUse(Sentence.of("\"{0}\" is no note value", form.group(1).trim()));
    }
    return checked(
        new TempiWish(
            unit,
            Long.parseLong(form.group(2)),
            Long.parseLong(form.group(3)),
            Optional.ofNullable(form.group(4)).map(Long::parseLong)));
  }

  private static TempiWish checked(TempiWish wish) throws Refusal {
    if (wish.slowest < 1 || wish.fastest > FASTEST || wish.fastest < wish.slowest) {
      throw Refusal.wrongUse(
          Sentence.of("tempi lie between 1 and 2000 a minute, the slowest comes first"));
    }
    if (wish.step.isPresent() && wish.step.get() < 1) {
      throw Refusal.wrongUse(Sentence.of("the step is at least 1"));
    }
    if (wish.marks().size() > MOST) {
      throw Refusal.wrongUse(
          Sentence.of("at most {0} tempi; write a larger step after a stroke, such as /4", MOST));
    }
    return wish;
  }

  /** About eight round marks from 70 to 130 per cent of a tempo. */
  public static TempiWish around(TempoMark present) {
    double perMinute = present.perMinute().toDouble();
    return new TempiWish(
        Optional.of(present.unit()),
        (long) Math.max(1, Math.ceil(perMinute * SLOWER)),
        (long) Math.max(1, Math.floor(perMinute * FASTER)),
        Optional.empty());
  }

  /** The marks in increasing order, the present one among them. */
  public List<TempoMark> with(TempoMark present) {
    TempoMark own = in(present);
    TreeSet<Rational> perMinute = new TreeSet<>(Comparator.naturalOrder());
    marks().forEach(whole -> perMinute.add(Rational.of(whole)));
    perMinute.add(own.perMinute());
    return perMinute.stream().map(beats -> new TempoMark(own.unit(), beats)).toList();
  }

  /** The same tempo in the unit that is counted. */
  public TempoMark in(TempoMark present) {
    return unit.map(present::in).orElse(present);
  }

  /** From the slowest by steps if a step is given, else the multiples of a round one. */
  private List<Long> marks() {
    return step.isPresent() ? by(slowest, step.get()) : rounded();
  }

  private List<Long> rounded() {
    List<Long> best = List.of(slowest, fastest);
    for (long round : STEPS) {
      List<Long> marks = by((slowest + round - 1) / round * round, round);
      if (Math.abs(marks.size() - USUAL) <= Math.abs(best.size() - USUAL)) {
        best = marks;
      }
    }
    return best;
  }

  private List<Long> by(long from, long by) {
    List<Long> marks = new ArrayList<>();
    LongStream.iterate(from, mark -> mark <= fastest, mark -> mark + by).forEach(marks::add);
    return marks;
  }
}
