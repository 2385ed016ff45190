package stafette.musicxml.read;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import stafette.score.Dynamic;
import stafette.score.Manner;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * What marks leave in force in a part: dynamics, or ways of playing. A staff follows its own marks
 * and those that name no staff; one that has none of its own follows all marks of the part, as the
 * staves of keyboards share theirs.
 */
final class MarksInForce<T> {
  private static final int NO_STAFF = 0;

  private final T first;
  private final Map<Integer, NavigableMap<Position, T>> byStaff = new HashMap<>();

  private MarksInForce(T first) {
    this.first = first;
  }

  /** Mezzo forte before any mark. */
  static MarksInForce<Dynamic> dynamics(WrittenPart part, Bars bars) {
    MarksInForce<Dynamic> marks = new MarksInForce<>(Dynamic.MF);
    for (int i = 0; i < part.measures().size(); i++) {
      for (DynamicMark mark : part.measures().get(i).dynamics()) {
        marks.put(bars.get(i).span().start(), mark.offset(), mark.staff(), mark.dynamic());
      }
    }
    return marks;
  }

  static MarksInForce<Manner> manners(WrittenPart part, Bars bars) {
    MarksInForce<Manner> marks = new MarksInForce<>(Manner.PLAIN);
    for (int i = 0; i < part.measures().size(); i++) {
      for (MannerMark mark : part.measures().get(i).manners()) {
        marks.put(bars.get(i).span().start(), mark.offset(), mark.staff(), mark.manner());
      }
    }
    return marks;
  }

  private void put(Position bar, Rational offset, Optional<Integer> staff, T mark) {
    byStaff
        .computeIfAbsent(staff.orElse(NO_STAFF), each -> new TreeMap<>())
        .put(TempoLayout.placed(bar, offset), mark);
  }

  /** What holds on a staff, from where on. */
  NavigableMap<Position, T> on(int staff) {
    NavigableMap<Position, T> marks = new TreeMap<>(Map.of(Position.START, first));
    Collection<Integer> staves =
        byStaff.containsKey(staff) ? List.of(NO_STAFF, staff) : byStaff.keySet();
    for (int each : staves) {
      marks.putAll(byStaff.getOrDefault(each, new TreeMap<>()));
    }
    return marks;
  }
}
