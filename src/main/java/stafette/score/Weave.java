package stafette.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * The notes of several voices as one stream. What is struck at once becomes a chord. No stroke
 * lasts beyond the next onset, and a slur goes on only within its own voice.
 */
final class Weave {
  private final List<Woven> woven;
  private final List<Stroke> strokes;

  /**
   * A stroke as it is written.
   *
   * @param by the voices that strike it
   * @param heldTo where its last sound ends
   */
  private record Woven(Stroke stroke, Set<Strand> by, Position heldTo) {
    static Woven of(Stroke stroke, Strand by) {
      return new Woven(stroke, Set.of(by), stroke.span().end());
    }

    Woven with(Woven lower) {
      Set<Strand> both = new TreeSet<>(by);
      both.addAll(lower.by);
      Position last = heldTo.isBefore(lower.heldTo) ? lower.heldTo : heldTo;
      return new Woven(stroke.with(lower.stroke), both, last);
    }
  }

  private Weave(List<Woven> woven) {
    this.woven = woven;
    this.strokes = IntStream.range(0, woven.size()).mapToObj(this::inStream).toList();
  }

  /**
   * The strokes of voices in a span, by onset.
   *
   * @param voices from above
   */
  static Weave of(List<Voice> voices, Span span) {
    Map<Position, Woven> byOnset = new TreeMap<>();
    for (Voice voice : voices) {
      for (Stroke stroke : voice.within(span)) {
        byOnset.merge(stroke.onset(), Woven.of(stroke, Strand.of(voice)), Woven::with);
      }
    }
    return new Weave(List.copyOf(byOnset.values()));
  }

  List<Stroke> strokes() {
    return strokes;
  }

  /** The voices that strike a stroke. */
  Set<Strand> by(int index) {
    return woven.get(index).by;
  }

  /** Whether the stroke before is written longer than to this one. */
  boolean isHeldBefore(int index) {
    return index < woven.size()
        && woven.get(index).stroke.onset().isBefore(woven.get(index - 1).heldTo);
  }

  private Stroke inStream(int index) {
    Stroke stroke = woven.get(index).stroke;
    boolean comes = index > 0 && goesOn(index);
    boolean last = index == woven.size() - 1;
    boolean continues = !last && goesOn(index + 1);
    Stroke own = stroke.slurred(stroke.slurred() && comes, stroke.slurContinues() && continues);
    return last ? own : own.until(woven.get(index + 1).stroke.onset());
  }

  /** Whether a stroke is of the same voice as the one before. */
  private boolean goesOn(int index) {
    return !Collections.disjoint(by(index), by(index - 1));
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
