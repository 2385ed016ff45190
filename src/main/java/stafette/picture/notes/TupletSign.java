package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/**
 * The figure of a tuplet, clear of whatever is behind it, with a bracket where no beam shows the
 * group.
 */
final class TupletSign {
  private static final double SIZE = 1.55;

  private TupletSign() {}

  /**
   * Its marks.
   *
   * @param y the base line of the figure
   * @param above whether it stands above the notes
   */
  static List<Mark> of(
      String figure,
      double left,
      double right,
      double y,
      boolean above,
      boolean beamed,
      double space) {
    List<Mark> marks = new ArrayList<>();
    double size = SIZE * space;
    double width = Face.FIGURES.width(figure, size);
    double middle = (left + right) / 2;
    Mark.Lettering words =
        new Mark.Lettering(figure, middle - width / 2, y, size, Face.FIGURES, Ink.FULL);
    marks.add(new Mark.Fill(Path.box(words.bounds().grownBy(0.1 * space)), Ink.PAPER));
    marks.add(words);
    if (!beamed) {
      double line = y - 0.38 * size;
      double hook = line + (above ? 0.6 : -0.6) * space;
      double gap = width / 2 + 0.3 * space;
      Path.Pen pen = new Path.Pen().move(left, hook).line(left, line);
      if (middle - gap > left) {
        pen.line(middle - gap, line).move(middle + gap, line);
      }
      pen.line(right, line).line(right, hook);
      marks.add(new Mark.Outline(pen.path(), 0.11 * space, Ink.FULL));
    }
    return marks;
  }
}
