package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.picture.ink.Mark;
import stafette.time.Meter;

/** What stands at the beginning of a staff: clef, key signature, time signature. */
public final class StaffHeader {
  private static final double AIR = 0.5;

  private StaffHeader() {}

  /**
   * Its marks, ending a little before x.
   *
   * @param fifths so many sharps, or flats if below zero
   * @param meter the time signature, if it is to be shown
   */
  public static List<Mark> of(Staff staff, int fifths, Optional<Meter> meter, double x) {
    List<Mark> marks = new ArrayList<>();
    double at = x - width(staff, fifths, meter);
    Clef clef = staff.clef();
    double raised = clef.raisedSpaces() * staff.space();
    marks.add(staff.sign(clef.sign(), at, staff.bottom() - raised, 1));
    at += 2.95 * staff.space();
    marks.addAll(KeySignature.of(fifths).marks(staff, at));
    at += KeySignature.of(fifths).width() * staff.space();
    double left = at + air(fifths) * staff.space();
    meter.ifPresent(m -> marks.addAll(TimeSignature.marks(staff, m, left)));
    return marks;
  }

  public static double width(Staff staff, int fifths, Optional<Meter> meter) {
    return (2.95
            + KeySignature.of(fifths).width()
            + meter.map(m -> air(fifths) + TimeSignature.width(m)).orElse(0.0)
            + AIR)
        * staff.space();
  }

  /** Before the time signature. */
  private static double air(int fifths) {
    return fifths == 0 ? AIR : 2 * AIR;
  }
}
