package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Mark;

/**
 * A key signature, or the naturals that end one.
 *
 * @param alter of all its signs: 1 for sharps, −1 for flats, 0 for naturals
 * @param fifths of whose key the signs are, from −7 to 7
 */
record KeySignature(int alter, int fifths) {
  private static final int[] SHARPS = {8, 5, 9, 6, 3, 7, 4};
  private static final int[] FLATS = {4, 7, 3, 6, 2, 5, 1};

  /** Sharps under a tenor clef, lest the first stand above the staff. */
  private static final int[] TENOR_SHARPS = {2, 6, 3, 7, 4, 8, 5};

  static KeySignature of(int fifths) {
    return new KeySignature(Integer.signum(fifths), fifths);
  }

  /** What stands where one key gives way to another: naturals only where no sign is left. */
  static KeySignature change(int before, int after) {
    return before == after ? of(0) : after == 0 ? new KeySignature(0, before) : of(after);
  }

  /** In spaces. */
  double width() {
    return Math.min(7, Math.abs(fifths)) * apart();
  }

  /** How far one sign stands from the next, in spaces. */
  private double apart() {
    return alter == 0 ? 0.9 : 1;
  }

  List<Mark> marks(Staff staff, double left) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < Math.min(7, Math.abs(fifths)); i++) {
      double x = left + i * apart() * staff.space();
      marks.add(Signs.accidental(staff, alter, x, staff.y(step(i, staff.clef()))));
    }
    return marks;
  }

  private int step(int index, Clef clef) {
    if (fifths > 0 && clef == Clef.TENOR) {
      return TENOR_SHARPS[index];
    }
    return (fifths > 0 ? SHARPS : FLATS)[index] - lowered(clef);
  }

  private static int lowered(Clef clef) {
    return switch (clef) {
      case BASS -> 2;
      case ALTO -> 1;
      case TENOR -> -1;
      case TREBLE, PERCUSSION -> 0;
    };
  }
}
