package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.score.Articulation;

/**
 * Marks of articulation: on the side of the head, dots and lines in the spaces of the staff, all
 * others beyond it; strong accents and bows always above.
 */
final class Articulations {
  private static final double APART = 0.95;
  private static final double FROM_STAFF = 0.7;
  private static final double FROM_HEAD = 0.6;

  private final Staff staff;
  private final double x;
  private final List<Mark> marks = new ArrayList<>();

  private Articulations(Staff staff, double x) {
    this.staff = staff;
    this.x = x;
  }

  /**
   * The marks of a note.
   *
   * @param x the middle of the head
   * @param reach what the note has so far
   */
  static List<Mark> of(Staff staff, NotatedItem note, double x, Reaches.InkReach reach) {
    List<Articulation> all = note.sound().articulations().stream().sorted().toList();
    Articulations articulations = new Articulations(staff, x);
    double space = staff.space();
    int away = reach.up() ? 1 : -1;
    double y = (reach.up() ? reach.bottom() : reach.top()) + away * FROM_HEAD * space;
    for (Articulation mark : all) {
      if (!staysAbove(mark)) {
        y = articulations.placed(mark, y, away);
        articulations.add(mark, y, away);
        y += away * APART * space;
      }
    }
    double high = Math.min(staff.top() - FROM_STAFF * space, reach.top() - FROM_HEAD * space);
    high = reach.up() ? high : Math.min(high, y);
    for (Articulation mark : all) {
      if (staysAbove(mark)) {
        articulations.add(mark, high, -1);
        high -= APART * space;
      }
    }
    return articulations.marks;
  }

  private static boolean staysAbove(Articulation mark) {
    return switch (mark) {
      case STRONG_ACCENT, UP_BOW, DOWN_BOW -> true;
      default -> false;
    };
  }

  private static boolean fitsIntoSpace(Articulation mark) {
    return mark == Articulation.STACCATO || mark == Articulation.TENUTO;
  }

  /** From y on, the first place for a mark. */
  private double placed(Articulation mark, double y, int away) {
    double space = staff.space();
    if (!fitsIntoSpace(mark)) {
      return away > 0
          ? Math.max(y, staff.bottom() + FROM_STAFF * space)
          : Math.min(y, staff.top() - FROM_STAFF * space);
    }
    boolean inside = y > staff.top() - space / 4 && y < staff.bottom() + space / 4;
    double fromTop = (y - staff.top()) / space - 0.5;
    double next = away > 0 ? Math.ceil(fromTop - 0.01) : Math.floor(fromTop + 0.01);
    return inside ? staff.top() + (next + 0.5) * space : y;
  }

  private void add(Articulation mark, double y, int away) {
    double space = staff.space();
    double w = 0.6 * space;
    double h = 0.36 * space;
    switch (mark) {
      case STACCATO, SPICCATO -> marks.add(Signs.dot(x, y, 0.21 * space));
      case STACCATISSIMO -> marks.add(wedge(y, away));
      case TENUTO -> line(1, -w, y, w, y);
      case DETACHED_LEGATO -> {
        marks.add(Signs.dot(x, y, 0.21 * space));
        line(1, -w, y + away * 0.5 * space, w, y + away * 0.5 * space);
      }
      case ACCENT -> {
        line(1, -w, y - h, w, y);
        line(1, w, y, -w, y + h);
      }
      case STRONG_ACCENT -> {
        line(1, -h, y + h, 0, y - h * 1.4);
        line(1, 0, y - h * 1.4, h, y + h);
      }
      case STRESS -> line(1, -h, y + h, h, y - h);
      case UP_BOW -> {
        line(1, -h, y - w, 0, y + w);
        line(1, 0, y + w, h, y - w);
      }
      case DOWN_BOW -> {
        line(2.2, -w, y - h, w, y - h);
        line(1, -w, y - h, -w, y + h);
        line(1, w, y - h, w, y + h);
      }
    }
  }

  private Mark wedge(double y, int away) {
    double base = y + away * 0.45 * staff.space();
    return new Mark.Fill(
        new Path.Pen()
            .move(x, y - away * 0.4 * staff.space())
            .line(x - 0.22 * staff.space(), base)
            .line(x + 0.22 * staff.space(), base)
            .close()
            .path(),
        Ink.FULL);
  }

  /** A line from one x to another, both counted from the middle of the head. */
  private void line(double thick, double from, double y1, double to, double y2) {
    marks.add(
        new Mark.Outline(
            Path.line(x + from, y1, x + to, y2), 0.14 * thick * staff.space(), Ink.FULL));
  }
}
