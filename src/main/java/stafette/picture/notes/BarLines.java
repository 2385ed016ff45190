package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Box;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.time.Landmarks.BarLine;

/** Bar lines: thin ones, double ones, those that end a piece or repeat. Widths are in spaces. */
public final class BarLines {
  private static final double THIN = 0.14;
  private static final double THICK = 0.5;
  private static final double APART = 0.5;
  private static final double TO_DOTS = 0.9;
  private static final double DOT = 0.2;

  private BarLines() {}

  /** What one takes before the line at the end of a bar, beside a thin one. */
  public static double widthBefore(BarLine line) {
    return switch (line) {
      case PLAIN -> 0;
      case DOUBLE -> APART;
      case FINAL -> THICK + APART;
      case REPEAT -> THICK + APART + TO_DOTS;
    };
  }

  /** What one takes after the line at the beginning of a bar, beside a thin one. */
  public static double widthAfter(BarLine line) {
    return line == BarLine.REPEAT ? THICK + APART + TO_DOTS : 0;
  }

  /** The line at the end of a bar, up to x. */
  static List<Mark> ending(Staff staff, BarLine line, double x) {
    return of(staff, line, x, -1);
  }

  /** The line at the beginning of a bar, from x, where it has one of its own. */
  static List<Mark> opening(Staff staff, BarLine line, double x) {
    return switch (line) {
      case PLAIN -> List.of();
      case DOUBLE, FINAL -> of(staff, BarLine.DOUBLE, x, -1);
      case REPEAT -> of(staff, line, x, 1);
    };
  }

  /**
   * Its marks.
   *
   * @param inwards 1 if the bar lies to the right of it, −1 if to the left
   */
  private static List<Mark> of(Staff staff, BarLine line, double x, int inwards) {
    double space = staff.space();
    double step = inwards * space;
    boolean isThick = line == BarLine.FINAL || line == BarLine.REPEAT;
    List<Mark> marks = new ArrayList<>();
    double thin = x;
    if (isThick) {
      double far = x + THICK * step;
      Box thick = new Box(Math.min(x, far), staff.top(), Math.max(x, far), staff.bottom());
      marks.add(new Mark.Fill(Path.box(thick), Ink.FULL));
      thin = far + APART * step;
    }
    marks.add(thin(staff, thin));
    if (line == BarLine.DOUBLE) {
      marks.add(thin(staff, x + APART * step));
    }
    if (line == BarLine.REPEAT) {
      double dots = thin + TO_DOTS / 2 * step;
      marks.add(Signs.dot(dots, staff.y(3), DOT * space));
      marks.add(Signs.dot(dots, staff.y(5), DOT * space));
    }
    return marks;
  }

  private static Mark thin(Staff staff, double x) {
    return new Mark.Outline(
        Path.line(x, staff.top(), x, staff.bottom()), THIN * staff.space(), Ink.FULL);
  }
}
