package stafette.score;

import java.util.List;
import java.util.Optional;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What is written in one voice of one staff.
 *
 * @param staff counted from 1
 * @param name as the score has it, mostly a number
 * @param strokes by onset
 */
public record Voice(int staff, String name, List<Stroke> strokes) {
  public Voice {
    strokes = List.copyOf(strokes);
  }

  /** The strokes whose onsets lie in a span. */
  public List<Stroke> within(Span span) {
    return strokes.subList(firstFrom(span.start()), firstFrom(span.end()));
  }

  /** The stroke that begins at a position, if one does. */
  public Optional<Stroke> at(Position position) {
    int index = firstFrom(position);
    return index < strokes.size() && strokes.get(index).onset().equals(position)
        ? Optional.of(strokes.get(index))
        : Optional.empty();
  }

  private int firstFrom(Position position) {
    int low = 0;
    int high = strokes.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (strokes.get(middle).onset().isBefore(position)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
