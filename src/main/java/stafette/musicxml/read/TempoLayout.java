package stafette.musicxml.read;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMark;

/**
 * Brings the tempi of all parts together. At one place a metronome mark beats a tempo for playback,
 * and that one a relation of note values; among equals the first part wins. A relation without a
 * tempo before it says nothing.
 */
final class TempoLayout {
  private final NavigableMap<Position, TempoSign> signs = new TreeMap<>();

  private TempoLayout() {}

  /** The marks by position; empty if the score states no tempo. */
  static Map<Position, TempoMark> of(List<WrittenPart> parts, Bars bars) {
    TempoLayout layout = new TempoLayout();
    for (WrittenPart part : parts) {
      for (int i = 0; i < part.measures().size(); i++) {
        for (WrittenMeasure.PlacedTempo tempo : part.measures().get(i).tempi()) {
          layout.add(placed(bars.get(i).span().start(), tempo.offset()), tempo.sign());
        }
      }
    }
    return layout.resolved();
  }

  /** A place that may lead out of its bar, but not out of the score. */
  static Position placed(Position barStart, Rational offset) {
    return new Position(barStart.quarters().plus(offset).max(Rational.ZERO));
  }

  private void add(Position position, TempoSign sign) {
    signs.merge(position, sign, (first, next) -> next.weight() > first.weight() ? next : first);
  }

  private Map<Position, TempoMark> resolved() {
    NavigableMap<Position, TempoMark> marks = new TreeMap<>(Comparator.naturalOrder());
    signs.forEach(
        (position, sign) -> {
          Optional<TempoMark> before =
              Optional.ofNullable(marks.lastEntry()).map(Map.Entry::getValue);
          sign.mark(before).ifPresent(mark -> marks.put(position, mark));
        });
    return marks;
  }
}
