package stafette.picture.notes;

import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/** Small signs beside a note. */
final class Signs {
  /** How wide a black head is, in spaces. */
  static final double HEAD = 1.19;

  static final double WHOLE_HEAD = 1.66;
  private static final double HEAD_CENTRE = 0.134;

  private Signs() {}

  /** A head whose left edge is at x and whose middle is at y. */
  static Mark head(Staff staff, NoteForm form, double x, double y, double scale) {
    double baseline = y + HEAD_CENTRE * staff.size() * scale;
    return staff.sign(form.head(), x, baseline, scale);
  }

  /** How wide a rest is without its dots, in spaces. */
  static double restWidth(NoteForm form) {
    return 4 * (Face.MUSIC.width(form.rest(), 1) - 2 * Staff.BEARING);
  }

  /** An accidental whose left edge is at x. */
  static Mark accidental(Staff staff, int alter, double x, double y) {
    return accidental(staff, alter, x, y, 1);
  }

  /** An accidental of another size whose left edge is at x. */
  static Mark accidental(Staff staff, int alter, double x, double y, double size) {
    String sign =
        Character.toString(
            switch (alter) {
              case 1 -> 0x266F;
              case -1 -> 0x266D;
              case 2 -> 0x1D12A;
              case -2 -> 0x1D12B;
              default -> 0x266E;
            });
    double scale = size * (alter == 1 ? 0.72 : 0.95);
    double centre =
        switch (alter) {
          case 1 -> 0.178;
          case 0 -> 0.0955;
          case 2 -> 0.131;
          default -> 0.115;
        };
    return staff.sign(sign, x, y + centre * staff.size() * scale, scale);
  }

  /** How wide an accidental is with the air after it, in spaces. */
  static double accidentalWidth(int alter) {
    return switch (alter) {
      case 1 -> 1.5;
      case -2 -> 1.65;
      case 2 -> 1.3;
      default -> 1.15;
    };
  }

  static Mark dot(double x, double y, double radius) {
    double k = radius * 0.5523;
    return new Mark.Fill(
        new Path.Pen()
            .move(x + radius, y)
            .curve(x + radius, y + k, x + k, y + radius, x, y + radius)
            .curve(x - k, y + radius, x - radius, y + k, x - radius, y)
            .curve(x - radius, y - k, x - k, y - radius, x, y - radius)
            .curve(x + k, y - radius, x + radius, y - k, x + radius, y)
            .close()
            .path(),
        Ink.FULL);
  }

  /** One flag, its stem's end at x and y. */
  static Mark flag(double x, double y, int up, double space) {
    double s = space * up;
    return new Mark.Fill(
        new Path.Pen()
            .move(x, y)
            .curve(
                x + 0.1 * space,
                y + 0.9 * s,
                x + 1.15 * space,
                y + 1.2 * s,
                x + 0.75 * space,
                y + 2.5 * s)
            .curve(x + 0.95 * space, y + 1.5 * s, x + 0.35 * space, y + 1.15 * s, x, y + 0.85 * s)
            .close()
            .path(),
        Ink.FULL);
  }

  /** A curve from note to note, thicker in its middle; away is 1 for below, -1 for above. */
  static Mark arc(double left, double right, double y, int away, double space) {
    double height = away * Math.min(1.6, 0.5 + (right - left) / space * 0.06) * space;
    double thick = away * 0.24 * space;
    double third = (right - left) / 4;
    return new Mark.Fill(
        new Path.Pen()
            .move(left, y)
            .curve(left + third, y + height + thick, right - third, y + height + thick, right, y)
            .curve(
                right - third,
                y + height - thick * 0.2,
                left + third,
                y + height - thick * 0.2,
                left,
                y)
            .close()
            .path(),
        Ink.FULL);
  }
}
