package stafette.score;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * The notes of several voices as one stream. What is struck at once becomes a chord. No stroke
 * lasts beyond the next onset, and a slur goes on only within its own voice.
 */
final class Weave {
  private final List<Woven> strokes = new ArrayList<>();

  /**
   * A stroke of the stream.
   *
   * @param by the voices that strike it, from above
   */
  private record Woven(Stroke stroke, Set<Strand> by) {}

  private Weave(List<Voice> voices, Span span) {
    Map<Position, Woven> byOnset = new TreeMap<>();
    for (Voice voice : voices) {
      for (Stroke stroke : voice.within(span)) {
        Woven own = new Woven(stroke, Set.of(Strand.of(voice)));
        byOnset.merge(stroke.onset(), own, Weave::together);
      }
    }
    strokes.addAll(byOnset.values());
  }

  /**
   * The strokes of voices in a span, by onset.
   *
   * @param voices from above
   */
  static List<Stroke> of(List<Voice> voices, Span span) {
    return new Weave(voices, span).woven();
  }

  private static Woven together(Woven upper, Woven lower) {
    Set<Strand> by = new HashSet<>(upper.by);
    by.addAll(lower.by);
    return new Woven(upper.stroke.with(lower.stroke), by);
  }

  private List<Stroke> woven() {
    List<Stroke> woven = new ArrayList<>();
    for (int i = 0; i < strokes.size(); i++) {
      Stroke stroke = strokes.get(i).stroke;
      boolean comes = i > 0 && goesOn(i);
      boolean continues = i + 1 < strokes.size() && goesOn(i + 1);
      Optional<Position> next =
          Optional.of(i + 1)
              .filter(n -> n < strokes.size())
              .map(n -> strokes.get(n).stroke.onset());
      Stroke own = stroke.slurred(stroke.slurred() && comes, stroke.slurContinues() && continues);
      woven.add(next.map(own::until).orElse(own));
    }
    return woven;
  }

  /** Whether a stroke is of the same voice as the one before. */
  private boolean goesOn(int index) {
    return strokes.get(index).by.stream().anyMatch(strokes.get(index - 1).by::contains);
  }

  /** A length that ends where another sound begins. */
  static List<Value> until(List<Value> values, Position onset, Position end) {
    List<Value> kept = new ArrayList<>();
    Position at = onset;
    for (Value value : values) {
      if (!at.isBefore(end)) {
        break;
      }
      Position stop = at.plus(value.length());
      Length length = stop.isAfter(end) ? end.since(at) : value.length();
      kept.add(new Value(length, value.tuplet()));
      at = stop;
    }
    return kept;
  }
}
