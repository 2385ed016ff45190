package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.time.Bar;
import stafette.time.Position;

/** Which notes stand under one beam: those of a beat that follow one another without a rest. */
final class Beaming {
  private Beaming() {}

  static List<StemGroup> groups(List<NotatedItem> written, Staff staff, BarRow row) {
    List<StemGroup> groups = new ArrayList<>();
    List<NotatedItem> open = new ArrayList<>();
    for (NotatedItem next : written) {
      if (!open.isEmpty() && !goesOn(open.get(open.size() - 1), next, row.bars())) {
        groups.add(new StemGroup(staff, open, row));
        open.clear();
      }
      if (!next.isRest()) {
        open.add(next);
      }
    }
    if (!open.isEmpty()) {
      groups.add(new StemGroup(staff, open, row));
    }
    return groups;
  }

  private static boolean goesOn(NotatedItem before, NotatedItem next, List<Bar> bars) {
    return !next.isRest()
        && before.form().beams() > 0
        && next.form().beams() > 0
        && before.span().end().equals(next.onset())
        && beat(before.onset(), bars).equals(beat(next.onset(), bars));
  }

  /** Where the beat begins in which a position falls. */
  static Position beat(Position position, List<Bar> bars) {
    return bars.stream()
        .filter(bar -> bar.span().contains(position))
        .findFirst()
        .map(bar -> bar.beatStart(position))
        .orElse(position);
  }
}
