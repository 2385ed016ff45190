package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import stafette.score.Articulation;

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

  static double headWidth(NoteForm form) {
    return form.halvings() == 0 ? WHOLE_HEAD : HEAD;
  }

  /** An accidental whose left edge is at x. */
  static Mark accidental(Staff staff, int alter, double x, double y) {
    return accidental(staff, alter, x, y, 1);
  }

  /** The same in another size. */
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

  /**
   * Marks of articulation, from the head outward.
   *
   * @param x the middle of the head
   * @param y where the nearest may stand
   * @param away 1 for below the head, -1 for above
   */
  static List<Mark> articulations(
      List<Articulation> marks, double x, double y, int away, double space) {
    List<Mark> result = new ArrayList<>();
    double at = y;
    for (Articulation mark : marks) {
      result.addAll(articulation(mark, x, at, away, space));
      at += away * space * 0.95;
    }
    return result;
  }

  private static List<Mark> articulation(
      Articulation mark, double x, double y, int away, double space) {
    double w = 0.6 * space;
    double h = 0.36 * space;
    return switch (mark) {
      case STACCATO, SPICCATO -> List.of(dot(x, y, 0.21 * space));
      case STACCATISSIMO -> List.of(wedge(x, y, away, space));
      case TENUTO -> List.of(line(space, x - w, y, x + w, y));
      case DETACHED_LEGATO ->
          List.of(
              dot(x, y, 0.21 * space),
              line(space, x - w, y + away * 0.5 * space, x + w, y + away * 0.5 * space));
      case ACCENT ->
          List.of(line(space, x - w, y - h, x + w, y), line(space, x + w, y, x - w, y + h));
      case STRONG_ACCENT ->
          List.of(
              line(space, x - h, y + h, x, y - h * 1.4), line(space, x, y - h * 1.4, x + h, y + h));
      case STRESS -> List.of(line(space, x - h, y + h, x + h, y - h));
      case UP_BOW ->
          List.of(line(space, x - h, y - w, x, y + w), line(space, x, y + w, x + h, y - w));
      case DOWN_BOW ->
          List.of(
              line(space * 2.2, x - w, y - h, x + w, y - h),
              line(space, x - w, y - h, x - w, y + h),
              line(space, x + w, y - h, x + w, y + h));
    };
  }

  private static Mark wedge(double x, double y, int away, double space) {
    double base = y + away * 0.45 * space;
    return new Mark.Fill(
        new Path.Pen()
            .move(x, y - away * 0.4 * space)
            .line(x - 0.22 * space, base)
            .line(x + 0.22 * space, base)
            .close()
            .path(),
        Ink.FULL);
  }

  private static Mark line(double space, double x1, double y1, double x2, double y2) {
    return new Mark.Stroke(Path.line(x1, y1, x2, y2), 0.14 * space, Ink.FULL);
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
