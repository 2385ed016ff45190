package stafette.picture;

import java.util.List;

/**
 * The way of the ribbon from lane to lane: a neck as wide as the overlap, rounded where it leaves
 * and where it arrives. Over a silence it is a thread.
 *
 * @param left where the overlap begins
 * @param right where it ends
 * @param fromY the middle of the lane that is left
 * @param toY the middle of the lane that is entered
 * @param half half the ribbon's height
 */
record Bridge(double left, double right, double fromY, double toY, double half) {
  private static final double NARROWEST = 1.8;
  private static final double ROUND = 7;
  private static final double HALO = 1.6;

  /** Where on paper it is, ribbons left out. */
  Box box() {
    double round = round();
    return new Box(
        drawnLeft() - round,
        Math.min(leaves(), arrives()),
        drawnRight() + round,
        Math.max(leaves(), arrives()));
  }

  List<Mark> marks() {
    double halo = Math.min(HALO, gap() / 4);
    Box clear =
        new Box(
            drawnLeft() - HALO,
            Math.min(leaves(), arrives()) + halo,
            drawnRight() + HALO,
            Math.max(leaves(), arrives()) - halo);
    return List.of(new Mark.Fill(Path.box(clear), Ink.PAPER), new Mark.Fill(neck(), Ink.JOIN));
  }

  /** The neck's edges alone, so that music behind it can be read. */
  List<Mark> edges() {
    double round = round();
    double turn = fromY < toY ? round : -round;
    double a = drawnLeft();
    double b = drawnRight();
    Path path =
        new Path.Pen()
            .move(a - round, leaves())
            .curve(a - round / 3, leaves(), a, leaves() + turn / 3, a, leaves() + turn)
            .line(a, arrives())
            .move(b, leaves())
            .line(b, arrives() - turn)
            .curve(b, arrives() - turn / 3, b + round / 3, arrives(), b + round, arrives())
            .path();
    return List.of(new Mark.Stroke(path, 1.1, Ink.JOIN));
  }

  private Path neck() {
    double round = round();
    double turn = fromY < toY ? round : -round;
    double a = drawnLeft();
    double b = drawnRight();
    return new Path.Pen()
        .move(a - round, leaves())
        .line(b, leaves())
        .line(b, arrives() - turn)
        .curve(b, arrives() - turn / 3, b + round / 3, arrives(), b + round, arrives())
        .line(a, arrives())
        .line(a, leaves() + turn)
        .curve(a, leaves() + turn / 3, a - round / 3, leaves(), a - round, leaves())
        .close()
        .path();
  }

  /** A thread from the end of one ribbon to the beginning of the next. */
  List<Mark> thread() {
    double middle = (left + right) / 2;
    Path path =
        new Path.Pen().move(left, fromY).curve(middle, fromY, middle, toY, right, toY).path();
    return List.of(new Mark.Stroke(path, 0.9, Ink.JOIN));
  }

  private double drawnLeft() {
    return Math.min(left, (left + right - NARROWEST) / 2);
  }

  private double drawnRight() {
    return Math.max(right, (left + right + NARROWEST) / 2);
  }

  private double leaves() {
    return fromY < toY ? fromY + half : fromY - half;
  }

  private double arrives() {
    return fromY < toY ? toY - half : toY + half;
  }

  private double gap() {
    return Math.abs(arrives() - leaves());
  }

  private double round() {
    return Math.min(ROUND, gap() / 2);
  }
}
