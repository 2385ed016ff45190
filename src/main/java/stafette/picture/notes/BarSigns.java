package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.picture.ink.Mark;
import stafette.time.Meter;

/**
 * What changes at a bar within a row, after its bar line.
 *
 * @param key the new key signature; of no width if it stays
 * @param meter the new time signature, if it changes
 * @param opening what a repeat sign takes before them, in spaces
 */
record BarSigns(KeySignature key, Optional<Meter> meter, double opening) {
  private static final double AIR = 0.7;

  /** In spaces, from the bar line to where the lead before the first note begins. */
  double width() {
    double keyWidth = key.width() > 0 ? AIR + key.width() : 0;
    return opening + keyWidth + meter.map(m -> AIR + TimeSignature.width(m)).orElse(0.0);
  }

  List<Mark> marks(Staff staff, double barLine) {
    double space = staff.space();
    double at = barLine + (opening + AIR) * space;
    List<Mark> marks = new ArrayList<>(key.marks(staff, at));
    double afterKey = key.width() > 0 ? at + (key.width() + AIR) * space : at;
    meter.ifPresent(m -> marks.addAll(TimeSignature.marks(staff, m, afterKey)));
    return marks;
  }
}
