package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Box;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/** The sign that notes sound an octave off, and a broken line to the last of them. */
final class OctaveSign {
  private static final String ABOVE = Character.toString(0x1D136);
  private static final String BELOW = Character.toString(0x1D137);
  private static final double SCALE = 1.25;
  private static final double AIR = 0.5;
  private static final double HOOK = 0.9;
  private static final double DASH = 0.9;

  private OctaveSign() {}

  /**
   * Its marks.
   *
   * @param up whether the notes sound higher than written; then it stands above them
   * @param others what it must not touch
   */
  static List<Mark> of(Staff staff, double left, double right, boolean up, List<Mark> others) {
    double space = staff.space();
    Mark.Lettering plain = staff.sign(up ? ABOVE : BELOW, left, 0, SCALE);
    Box sign = plain.bounds();
    double end = Math.max(right, sign.right() + 2 * space);
    double top = staff.top() - AIR * space;
    double bottom = staff.bottom() + AIR * space;
    for (Mark other : others) {
      Box box = other.bounds();
      if (box.left() < end + AIR * space && left - AIR * space < box.right()) {
        top = Math.min(top, box.top() - AIR * space);
        bottom = Math.max(bottom, box.bottom() + AIR * space);
      }
    }
    double y = up ? top - sign.bottom() : bottom - sign.top();
    double line = up ? y + sign.top() + 0.2 * space : y + sign.bottom() - 0.2 * space;
    List<Mark> marks = new ArrayList<>();
    marks.add(staff.sign(up ? ABOVE : BELOW, left, y, SCALE));
    double hook = line + (up ? HOOK : -HOOK) * space;
    Path.Pen pen = new Path.Pen();
    for (double x = sign.right() + 0.5 * space; x < end; x += 1.8 * DASH * space) {
      pen.move(x, line).line(Math.min(end, x + DASH * space), line);
    }
    pen.move(end, line).line(end, hook);
    marks.add(new Mark.Outline(pen.path(), 0.12 * space, Ink.FULL));
    return marks;
  }
}
