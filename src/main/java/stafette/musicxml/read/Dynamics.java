package stafette.musicxml.read;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import stafette.score.Dynamic;
import stafette.time.Bars;
import stafette.time.Position;

/**
 * The dynamics in force in a part. A staff follows its own marks and those that name no staff; one
 * that has none of its own follows all marks of the part, as the staves of keyboards share theirs.
 */
final class Dynamics {
  private static final int NO_STAFF = 0;

  private final Map<Integer, NavigableMap<Position, Dynamic>> byStaff = new HashMap<>();

  private Dynamics() {}

  static Dynamics of(WrittenPart part, Bars bars) {
    Dynamics dynamics = new Dynamics();
    for (int i = 0; i < part.measures().size(); i++) {
      for (DynamicMark mark : part.measures().get(i).dynamics()) {
        dynamics
            .byStaff
            .computeIfAbsent(mark.staff().orElse(NO_STAFF), staff -> new TreeMap<>())
            .put(TempoLayout.placed(bars.get(i).span().start(), mark.offset()), mark.dynamic());
      }
    }
    return dynamics;
  }

  /** What holds on a staff; mezzo forte before any mark. */
  NavigableMap<Position, Dynamic> on(int staff) {
    NavigableMap<Position, Dynamic> marks = new TreeMap<>(Map.of(Position.START, Dynamic.MF));
    Collection<Integer> staves =
        byStaff.containsKey(staff) ? java.util.List.of(NO_STAFF, staff) : byStaff.keySet();
    for (int each : staves) {
      marks.putAll(byStaff.getOrDefault(each, new TreeMap<>()));
    }
    return marks;
  }
}
