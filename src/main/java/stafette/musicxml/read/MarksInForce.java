package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import stafette.score.Dynamic;
import stafette.time.Bars;
import stafette.time.Position;

/**
 * What marks leave in force in a part: dynamics, or ways of playing. A staff follows its own marks
 * and those that name no staff; one that has none of its own follows all marks of the part, as the
 * staves of keyboards share theirs.
 */
final class MarksInForce<T> {
  private static final int NO_STAFF = 0;

  private final T first;
  private final Map<Integer, NavigableMap<Position, List<UnaryOperator<T>>>> byStaff =
      new HashMap<>();

  private MarksInForce(T first) {
    this.first = first;
  }

  /** Mezzo forte before any mark. */
  static MarksInForce<Dynamic> dynamics(WrittenPart part, Bars bars) {
    return of(Dynamic.MF, part, WrittenMeasure::dynamics, bars);
  }

  /** Each movement begins as the instrument is usually played. */
  static MarksInForce<MannerInForce> manners(WrittenPart part, Bars bars) {
    MarksInForce<MannerInForce> all = of(MannerInForce.PLAIN, part, WrittenMeasure::manners, bars);
    bars.movementStarts()
        .forEach(
            start ->
                all.byStaff
                    .computeIfAbsent(NO_STAFF, staff -> new TreeMap<>())
                    .computeIfAbsent(start, at -> new ArrayList<>())
                    .add(0, before -> MannerInForce.PLAIN));
    return all;
  }

  private static <T> MarksInForce<T> of(
      T first, WrittenPart part, Function<WrittenMeasure, List<PlacedMark<T>>> marks, Bars bars) {
    MarksInForce<T> all = new MarksInForce<>(first);
    for (int i = 0; i < part.measures().size(); i++) {
      for (PlacedMark<T> mark : marks.apply(part.measures().get(i))) {
        all.byStaff
            .computeIfAbsent(mark.staff().orElse(NO_STAFF), staff -> new TreeMap<>())
            .computeIfAbsent(
                TempoLayout.placed(bars.get(i).span().start(), mark.offset()),
                at -> new ArrayList<>())
            .add(mark.change());
      }
    }
    return all;
  }

  /** What holds on a staff, from where on. */
  NavigableMap<Position, T> on(int staff) {
    NavigableMap<Position, List<UnaryOperator<T>>> marks = new TreeMap<>();
    Collection<Integer> staves =
        byStaff.containsKey(staff) ? List.of(NO_STAFF, staff) : byStaff.keySet();
    for (int each : staves) {
      byStaff
          .getOrDefault(each, new TreeMap<>())
          .forEach((at, changes) -> marks.merge(at, changes, MarksInForce::joined));
    }
    NavigableMap<Position, T> inForce = new TreeMap<>(Map.of(Position.START, first));
    T before = first;
    for (Map.Entry<Position, List<UnaryOperator<T>>> mark : marks.entrySet()) {
      for (UnaryOperator<T> change : mark.getValue()) {
        before = change.apply(before);
      }
      inForce.put(mark.getKey(), before);
    }
    return inForce;
  }

  private static <E> List<E> joined(List<E> first, List<E> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }
}
