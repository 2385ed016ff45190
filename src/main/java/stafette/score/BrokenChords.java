package stafette.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntBinaryOperator;
import stafette.time.Position;

/**
 * Broken octaves and broken chords of a line, read as their upper or lower notes.
 *
 * <p>Strokes on one note in different octaves, one after the other, are a broken octave, where two
 * such pairs follow one another: read as its upper notes the lower ones move up, so that the speed
 * stays. Where a stroke is a leap of a minor third or more from both its neighbours it belongs to a
 * broken chord: read as its upper notes only those below neither neighbour are left, with the
 * lengths that they have. All else stays: a scale is no chord. (A choice of ours.)
 */
final class BrokenChords {
  private static final int OCTAVE = 12;
  private static final int LEAP = 3;
  private static final int FEWEST_OF_OCTAVES = 4;

  private final Reading reading;
  private final IntBinaryOperator outer;

  private BrokenChords(Reading reading) {
    this.reading = reading;
    this.outer = reading == Reading.UPPER ? Math::max : Math::min;
  }

  static List<Stroke> read(List<Stroke> strokes, Reading reading) {
    if (reading == Reading.ALL) {
      return strokes;
    }
    BrokenChords chords = new BrokenChords(reading);
    return chords.withoutChords(chords.withoutOctaves(strokes));
  }

  private List<Stroke> withoutOctaves(List<Stroke> strokes) {
    List<Stroke> read = new ArrayList<>(strokes);
    int from = 0;
    while (from < strokes.size()) {
      int end = from;
      while (end < strokes.size() && groupEnd(strokes, end) > end + 1) {
        end = groupEnd(strokes, end);
      }
      if (end - from >= FEWEST_OF_OCTAVES) {
        move(read, from, end);
      }
      from = Math.max(end, from + 1);
    }
    return read;
  }

  /** After the last of the strokes from there on that sound one note, not always in one octave. */
  private static int groupEnd(List<Stroke> strokes, int from) {
    int end = from + 1;
    boolean differs = false;
    while (end < strokes.size() && octaves(strokes.get(from), strokes.get(end)).isPresent()) {
      differs |= octaves(strokes.get(from), strokes.get(end)).get() != 0;
      end++;
    }
    return differs ? end : from + 1;
  }

  /** How many octaves a single tone is above another; empty if they are different notes. */
  private static Optional<Integer> octaves(Stroke one, Stroke other) {
    boolean same =
        !one.isChord()
            && !other.isChord()
            && one.top() instanceof Pitch
            && other.top() instanceof Pitch
            && Math.floorMod(other.top().key() - one.top().key(), OCTAVE) == 0;
    return same ? Optional.of((other.top().key() - one.top().key()) / OCTAVE) : Optional.empty();
  }

  private void move(List<Stroke> read, int from, int end) {
    for (int start = from; start < end; ) {
      int stop = groupEnd(read, start);
      int key = read.get(start).top().key();
      for (int i = start; i < stop; i++) {
        key = outer.applyAsInt(key, read.get(i).top().key());
      }
      for (int i = start; i < stop; i++) {
        Pitch pitch = (Pitch) read.get(i).top();
        int octaves = (key - pitch.key()) / OCTAVE;
        Pitch moved = new Pitch(pitch.step(), pitch.alter(), pitch.octave() + octaves);
        read.set(i, read.get(i).withTones(List.of(moved)));
      }
      start = stop;
    }
  }

  private List<Stroke> withoutChords(List<Stroke> strokes) {
    List<Stroke> kept = new ArrayList<>();
    for (int i = 0; i < strokes.size(); i++) {
      if (!isBroken(strokes, i) || isOuter(strokes, i)) {
        kept.add(strokes.get(i));
      }
    }
    return kept;
  }

  private static boolean isBroken(List<Stroke> strokes, int index) {
    boolean before = index == 0 || isLeap(strokes.get(index - 1), strokes.get(index));
    boolean after =
        index == strokes.size() - 1 || isLeap(strokes.get(index), strokes.get(index + 1));
    return before && after;
  }

  /** Silence parts figures, and counts as a leap. */
  private static boolean isLeap(Stroke one, Stroke other) {
    Position end = one.span().end();
    boolean apart = end.isBefore(other.onset());
    return apart
        || (one.top() instanceof Pitch
            && other.top() instanceof Pitch
            && Math.abs(one.top().key() - other.top().key()) >= LEAP);
  }

  private boolean isOuter(List<Stroke> strokes, int index) {
    return isBeyond(strokes, index, index - 1) && isBeyond(strokes, index, index + 1);
  }

  private boolean isBeyond(List<Stroke> strokes, int index, int beside) {
    if (beside < 0 || beside >= strokes.size()) {
      return true;
    }
    int own = strokes.get(index).top().key();
    int other = strokes.get(beside).top().key();
    return reading == Reading.UPPER ? own >= other : own <= other;
  }
}
