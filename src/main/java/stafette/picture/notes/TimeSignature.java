package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Rational;

/** A time signature: one figure over another. */
public final class TimeSignature {
  private static final double SIZE = 2.7;

  private TimeSignature() {}

  static List<Mark> marks(Staff staff, Meter meter, double left) {
    List<Mark> marks = new ArrayList<>();
    double size = SIZE * staff.space();
    double middle = left + width(meter) * staff.space() / 2;
    double y = staff.middle();
    for (String figure : figures(meter)) {
      double x = middle - Face.FIGURES.width(figure, size) / 2;
      marks.add(new Mark.Lettering(figure, x, y, size, Face.FIGURES, Ink.FULL));
      y += 2 * staff.space();
    }
    return marks;
  }

  /** In spaces. */
  static double width(Meter meter) {
    return figures(meter).stream().mapToDouble(f -> Face.FIGURES.width(f, SIZE)).max().orElse(0);
  }

  /** The upper and the lower figure, as far as beats tell them: 4 over 4, 6 over 8, 3+2 over 8. */
  public static List<String> figures(Meter meter) {
    boolean even = meter.beats().stream().distinct().count() == 1;
    Rational unit = even ? unit(meter.beats().get(0)) : unit(meter);
    String lower = Rational.of(4).dividedBy(unit).toString();
    String upper =
        even
            ? meter.length().quarters().dividedBy(unit).toString()
            : meter.beats().stream()
                .map(beat -> beat.quarters().dividedBy(unit).toString())
                .collect(Collectors.joining("+"));
    return List.of(upper, lower);
  }

  private static Rational unit(Length beat) {
    boolean ternary = beat.quarters().numerator().intValue() % 3 == 0;
    return ternary ? beat.quarters().dividedBy(3) : beat.quarters();
  }

  /** The longest value of which all beats are made. */
  private static Rational unit(Meter meter) {
    Rational unit = Rational.ONE;
    for (int i = 0; i < 6; i++) {
      Rational candidate = unit;
      if (meter.beats().stream().allMatch(b -> b.quarters().modulo(candidate).signum() == 0)) {
        return unit;
      }
      unit = unit.dividedBy(2);
    }
    return unit;
  }
}
