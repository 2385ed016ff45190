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
  private static final double THREAD = 0.9;

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
    Path.Pen pen = new Path.Pen();
    double turn = leaves() + direction() * roundFrom;
    new Bend(drawnLeft() - roundFrom, leaves(), drawnLeft(), turn).draw(pen, music);
    upright(pen, drawnLeft(), turn, arrives(), music);
    double away = arrives() - direction() * roundTo;
    upright(pen, drawnRight(), leaves(), away, music);
    new Bend(drawnRight() + roundTo, arrives(), drawnRight(), away).draw(pen, music);
    return List.of(new Mark.Outline(pen.path(), EDGE, Ink.JOIN));
  }

  /** A curve that begins level and, at an edge, ends upright; along a thread it ends level too. */
  private record Bend(double x, double y, double toX, double toY, boolean upright) {
    private static final int PIECES = 16;

    Bend(double x, double y, double toX, double toY) {
      this(x, y, toX, toY, true);
    }

    private double firstX() {
      return upright ? x + (toX - x) * 2 / 3 : (x + toX) / 2;
    }

    private double secondX() {
      return upright ? toX : (x + toX) / 2;
    }

    private double secondY() {
      return upright ? y + (toY - y) / 3 : toY;
    }

    /** Whole, or in pieces but for where music is. */
    void draw(Path.Pen pen, List<Box> music) {
      Box all = new Box(Math.min(x, toX), Math.min(y, toY), Math.max(x, toX), Math.max(y, toY));
      List<Box> across =
          music.stream().map(ink -> ink.grownBy(EDGE)).filter(all.grownBy(EDGE)::overlaps).toList();
      if (across.isEmpty()) {
        pen.move(x, y).curve(firstX(), y, secondX(), secondY(), toX, toY);
        return;
      }
      for (int i = 0; i < PIECES; i++) {
        Box piece = piece(i / (double) PIECES, (i + 1) / (double) PIECES);
        if (across.stream().noneMatch(piece.grownBy(0.01)::overlaps)) {
          double from = i / (double) PIECES;
          double to = (i + 1) / (double) PIECES;
          pen.move(xAt(from), yAt(from)).line(xAt(to), yAt(to));
        }
      }
    }

    private Box piece(double from, double to) {
      return new Box(
          Math.min(xAt(from), xAt(to)),
          Math.min(yAt(from), yAt(to)),
          Math.max(xAt(from), xAt(to)),
          Math.max(yAt(from), yAt(to)));
    }

    private double xAt(double share) {
      return at(share, x, firstX(), secondX(), toX);
    }

    private double yAt(double share) {
      return at(share, y, y, secondY(), toY);
    }

    private static double at(double share, double a, double b, double c, double d) {
      double left = 1 - share;
      return left * left * left * a
          + 3 * left * left * share * b
          + 3 * left * share * share * c
          + share * share * share * d;
    }
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

  /**
   * A thread from the end of one ribbon to the beginning of the next, interrupted where music is in
   * its way.
   *
   * @param music what it must not cross
   */
  List<Mark> thread(List<Box> music) {
    Path.Pen pen = new Path.Pen();
    new Bend(left, fromY, right, toY, false).draw(pen, music);
    return pen.isEmpty() ? List.of() : List.of(new Mark.Outline(pen.path(), THREAD, Ink.JOIN));
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
