package stafette.picture.ink;

import java.util.List;

/** What a player already plays: slanted hairlines in a frame of hairlines. */
public final class Hatching {
  private static final double APART = 3.4;
  private static final double WIDTH = 0.55;

  private Hatching() {}

  public static List<Mark> of(Box box) {
    Path.Pen pen = new Path.Pen();
    double height = box.height();
    double first = Math.floor((box.left() - height) / APART) * APART;
    for (double foot = first; foot < box.right(); foot += APART) {
      double from = Math.max(box.left(), foot);
      double to = Math.min(box.right(), foot + height);
      if (to > from) {
        pen.move(from, box.bottom() - (from - foot)).line(to, box.bottom() - (to - foot));
      }
    }
    pen.move(box.left(), box.top()).line(box.right(), box.top());
    pen.move(box.left(), box.bottom()).line(box.right(), box.bottom());
    return List.of(new Mark.Outline(pen.path(), WIDTH, Ink.SOFT));
  }
}
