package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stafette.picture.ink.Box;
import stafette.picture.ink.Mark;
import stafette.plan.Played;
import stafette.score.Dynamic;
import stafette.score.Stroke;

/** Dynamics below the staff: where a player enters, and where they change. */
public final class DynamicSigns {
  private static final double FROM_STAFF = 2.6;
  private static final double FROM_INK = 0.5;
  private static final double SCALE = 0.9;
  private static final int MEZZO = 0x1D190;

  private DynamicSigns() {}

  /**
   * Those of a row.
   *
   * @param marks what they stand clear of
   */
  public static List<Mark> of(List<Played> plays, Staff staff, BarRow row, List<Mark> marks) {
    List<Mark> signs = new ArrayList<>();
    for (Played played : plays) {
      Optional<Dynamic> inForce = Optional.empty();
      for (int j = played.first(); j <= played.last(); j++) {
        Stroke stroke = played.line().stroke(j);
        boolean isNew = !inForce.equals(Optional.of(stroke.dynamic()));
        inForce = Optional.of(stroke.dynamic());
        if (isNew && row.span().contains(stroke.onset())) {
          signs.add(below(staff, stroke.dynamic(), row.x(stroke.onset()), marks));
        }
      }
    }
    return signs;
  }

  private static Mark below(Staff staff, Dynamic dynamic, double x, List<Mark> marks) {
    Mark sign = staff.sign(letters(dynamic), x, staff.bottom() + FROM_STAFF * staff.space(), SCALE);
    Box box = sign.bounds();
    double lowest =
        marks.stream()
            .map(Mark::bounds)
            .filter(ink -> ink.left() < box.right() && box.left() < ink.right())
            .mapToDouble(Box::bottom)
            .max()
            .orElse(staff.bottom());
    double down = Math.max(0, lowest + FROM_INK * staff.space() - box.top());
    double baseline = staff.bottom() + FROM_STAFF * staff.space() + down;
    return staff.sign(letters(dynamic), x, baseline, SCALE);
  }

  private static String letters(Dynamic dynamic) {
    StringBuilder letters = new StringBuilder();
    for (char letter : dynamic.name().toLowerCase(Locale.ROOT).toCharArray()) {
      letters.appendCodePoint(letter == 'p' ? MEZZO - 1 : letter == 'm' ? MEZZO : MEZZO + 1);
    }
    return letters.toString();
  }
}
