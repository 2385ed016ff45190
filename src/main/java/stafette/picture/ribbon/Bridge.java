package stafette.picture.ribbon;

import java.util.Comparator;
import java.util.List;
import stafette.picture.ink.Box;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/**
 * The way of the ribbon from lane to lane: a neck as wide as the overlap, rounded where it leaves
 * and where it arrives. Over a silence it is a thread.
 *
 * @param left where the overlap begins
 * @param right where it ends
 * @param fromY the middle of the lane that is left
 * @param toY the middle of the lane that is entered
 * @param half half the ribbon's height
 * @param roundFrom how far the rounding reaches before the overlap, on the lane that is left
 * @param roundTo how far it reaches after the overlap, on the lane that is entered
 */
record Bridge(
    double left,
    double right,
    double fromY,
    double toY,
    double half,
    double roundFrom,
    double roundTo) {
  static final double ROUND = 7;

  /** Beside music, which begins right below the ribbon. */
  static final double ROUND_BY_MUSIC = 3.5;

  private static final double NARROWEST = 1.8;
  private static final double HALO = 1.6;
  private static final double EDGE = 1.1;

  Bridge {
    double most = Math.max(0, (Math.abs(fromY - toY) - 2 * half) / 2);
    roundFrom = Math.min(roundFrom, most);
    roundTo = Math.min(roundTo, most);
  }

  /** Where on paper it is, ribbons left out. */
  Box box() {
    return new Box(
        drawnLeft() - roundFrom,
        Math.min(leaves(), arrives()),
        drawnRight() + roundTo,
        Math.max(leaves(), arrives()));
  }

  List<Mark> marks() {
    double halo = Math.min(HALO, Math.abs(arrives() - leaves()) / 4);
    Box clear =
        new Box(
            drawnLeft() - HALO,
            Math.min(leaves(), arrives()) + halo,
            drawnRight() + HALO,
            Math.max(leaves(), arrives()) - halo);
    return List.of(new Mark.Fill(Path.box(clear), Ink.PAPER), new Mark.Fill(neck(), Ink.JOIN));
  }

  private Path neck() {
    Path.Pen pen = new Path.Pen().move(drawnLeft() - roundFrom, leaves());
    pen.line(drawnRight(), leaves());
    arrive(pen);
    pen.line(drawnLeft(), arrives()).line(drawnLeft(), leaves() + direction() * roundFrom);
    return pen.curve(
            drawnLeft(),
            leaves() + direction() * roundFrom / 3,
            drawnLeft() - roundFrom / 3,
            leaves(),
            drawnLeft() - roundFrom,
            leaves())
        .close()
        .path();
  }

  /**
   * The neck's edges alone, interrupted where music is in their way.
   *
   * @param music what they must not cross
   */
  List<Mark> edges(List<Box> music) {
    Path.Pen pen =
        new Path.Pen()
            .move(drawnLeft() - roundFrom, leaves())
            .curve(
                drawnLeft() - roundFrom / 3,
                leaves(),
                drawnLeft(),
                leaves() + direction() * roundFrom / 3,
                drawnLeft(),
                leaves() + direction() * roundFrom);
    upright(pen, drawnLeft(), leaves() + direction() * roundFrom, arrives(), music);
    upright(pen, drawnRight(), leaves(), arrives() - direction() * roundTo, music);
    pen.move(drawnRight(), arrives() - direction() * roundTo);
    round(pen);
    return List.of(new Mark.Outline(pen.path(), EDGE, Ink.JOIN));
  }

  /** An upright line but for where music is. */
  private static void upright(Path.Pen pen, double x, double from, double to, List<Box> music) {
    double end = Math.max(from, to);
    double at = Math.min(from, to);
    List<Box> across =
        music.stream()
            .map(ink -> ink.grownBy(EDGE))
            .filter(ink -> ink.left() < x && x < ink.right())
            .sorted(Comparator.comparingDouble(Box::top))
            .toList();
    for (Box ink : across) {
      if (ink.top() > at) {
        pen.move(x, at).line(x, Math.min(end, ink.top()));
      }
      at = Math.max(at, ink.bottom());
      if (at >= end) {
        return;
      }
    }
    pen.move(x, at).line(x, end);
  }

  /** Down the right edge and round into the lane. */
  private void arrive(Path.Pen pen) {
    pen.line(drawnRight(), arrives() - direction() * roundTo);
    round(pen);
  }

  private void round(Path.Pen pen) {
    pen.curve(
        drawnRight(),
        arrives() - direction() * roundTo / 3,
        drawnRight() + roundTo / 3,
        arrives(),
        drawnRight() + roundTo,
        arrives());
  }

  /** A thread from the end of one ribbon to the beginning of the next. */
  List<Mark> thread() {
    double middle = (left + right) / 2;
    Path path =
        new Path.Pen().move(left, fromY).curve(middle, fromY, middle, toY, right, toY).path();
    return List.of(new Mark.Outline(path, 0.9, Ink.JOIN));
  }

  private int direction() {
    return fromY < toY ? 1 : -1;
  }

  private double drawnLeft() {
    return Math.min(left, (left + right - NARROWEST) / 2);
  }

  private double drawnRight() {
    return Math.max(right, (left + right + NARROWEST) / 2);
  }

  private double leaves() {
    return fromY + direction() * half;
  }

  private double arrives() {
    return toY - direction() * half;
  }
}
