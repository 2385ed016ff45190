package stafette.picture.notes;

import java.util.List;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/** Bars that a player counts: a beam on the middle line between two strokes, how many above. */
final class CountedBars {
  private static final double SIZE = 2.4;
  private static final double AIR = 1;
  private static final double HALF_BEAM = 0.4;
  private static final double STROKE = 0.14;

  private CountedBars() {}

  static List<Mark> of(Staff staff, int bars, double left, double right) {
    double space = staff.space();
    double from = left + AIR * space;
    double to = right - AIR * space;
    double middle = staff.middle();
    String count = Integer.toString(bars);
    double x = (from + to - Face.FIGURES.width(count, SIZE * space)) / 2;
    Path.Pen strokes = new Path.Pen();
    for (double end : new double[] {from, to}) {
      strokes.move(end, middle - space).line(end, middle + space);
    }
    Box beam = new Box(from, middle - HALF_BEAM * space, to, middle + HALF_BEAM * space);
    return List.of(
        new Mark.Fill(Path.box(beam), Ink.FULL),
        new Mark.Outline(strokes.path(), STROKE * space, Ink.FULL),
        new Mark.Lettering(
            count, x, staff.top() - 0.6 * space, SIZE * space, Face.FIGURES, Ink.FULL));
  }
}
