package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Rational;

/** What stands at the beginning of a staff: clef, key signature, time signature. */
final class StaffHeader {
  private static final int[] SHARPS = {8, 5, 9, 6, 3, 7, 4};
  private static final int[] FLATS = {4, 7, 3, 6, 2, 5, 1};
  private static final double AIR = 0.5;

  private StaffHeader() {}

  /**
   * Its marks, ending a little before x.
   *
   * @param fifths so many sharps, or flats if below zero
   * @param meter the time signature, if it is to be shown
   */
  static List<Mark> of(Staff staff, int fifths, Optional<Meter> meter, double x) {
    List<Mark> marks = new ArrayList<>();
    double at = x - width(staff, fifths, meter);
    Clef clef = staff.clef();
    double raised = clef.raisedSpaces() * staff.space();
    marks.add(staff.sign(clef.sign(), at, staff.bottom() - raised, 1));
    at += 2.95 * staff.space();
    for (int i = 0; i < Math.min(7, Math.abs(fifths)); i++) {
      int step = (fifths > 0 ? SHARPS : FLATS)[i] - lowered(clef);
      marks.add(Signs.accidental(staff, Integer.signum(fifths), at, staff.y(step)));
      at += staff.space();
    }
    double left = at + AIR * staff.space();
    meter.ifPresent(m -> addTime(staff, m, left, marks));
    return marks;
  }

  static double width(Staff staff, int fifths, Optional<Meter> meter) {
    return (2.95
            + Math.min(7, Math.abs(fifths))
            + meter.map(m -> AIR + timeWidth(m)).orElse(0.0)
            + AIR)
        * staff.space();
  }

  private static int lowered(Clef clef) {
    return switch (clef) {
      case BASS -> 2;
      case ALTO -> 1;
      case TENOR -> -1;
      case TREBLE, PERCUSSION -> 0;
    };
  }

  private static void addTime(Staff staff, Meter meter, double left, List<Mark> marks) {
    double size = 2.75 * staff.space();
    double middle = left + timeWidth(meter) * staff.space() / 2;
    List<String> figures = figures(meter);
    double y = staff.middle();
    for (String figure : figures) {
      double x = middle - Face.FIGURES.width(figure, size) / 2;
      marks.add(new Mark.Words(figure, x, y, size, Face.FIGURES, Ink.FULL));
      y += 2 * staff.space();
    }
  }

  private static double timeWidth(Meter meter) {
    return figures(meter).stream().mapToDouble(f -> Face.FIGURES.width(f, 2.75)).max().orElse(0);
  }

  /** The upper and the lower figure, as far as beats tell them: 4 over 4, 6 over 8, 3+2 over 8. */
  static List<String> figures(Meter meter) {
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
