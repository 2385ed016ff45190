package stafette.limits;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.score.Line;

/**
 * How the pedals of a harp go along a stretch of single strings: the first setting is free, and
 * each next one is reached by pedals that move between the last stroke that needs their old
 * position and the first that needs the new one. The left foot has D, C and B, the right one E, F,
 * G and A; both move at once, and each foot's moves are {@value #APART_SECONDS} s apart (a
 * judgement: common practice, no source). Settings are kept as long as they serve; of the next ones
 * the one that serves longest is taken, with the fewest moves.
 */
public final class PedalCourse {
  private static final double APART_SECONDS = 0.5;
  private static final long APART_MICROS = (long) (APART_SECONDS * 1e6);

  /** Of so many changes the first are tried, those with the fewest moves before others. */
  private static final int MOST_TRIED = 100;

  private final Line line;
  private final int end;
  private final double stretch;
  private final List<PedalSetup> setups = new ArrayList<>();
  private final double[] footFree = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
  private int last;

  /**
   * A setting of the pedals.
   *
   * @param stroke the first stroke that it serves
   */
  public record PedalSetup(int stroke, HarpPedals.Setting setting) {}

  /** One change: from which setting to which, by their numbers. */
  private record PedalMove(int from, int to) {}

  private PedalCourse(Line line, int first, int end, double stretch) {
    this.line = line;
    this.end = end;
    this.stretch = stretch;
    last = first - 1;
    follow(first);
  }

  /**
   * The course from a stroke on, as far as one can be found.
   *
   * @param stretch by how much all times are stretched; below 1 is faster
   */
  public static PedalCourse from(Line line, int first, double stretch) {
    return new PedalCourse(line, first, line.count(), stretch);
  }

  /** The course of a turn alone, whatever comes after it. */
  public static PedalCourse of(Line line, int first, int last) {
    return new PedalCourse(line, first, last + 1, 1);
  }

  /** The last stroke that can be pedalled; before the first if none can. */
  public int last() {
    return last;
  }

  /** The settings up to a stroke, one after the other. */
  public List<PedalSetup> upTo(int stroke) {
    return setups.stream().filter(setup -> setup.stroke <= stroke).toList();
  }

  private void follow(int first) {
    int from = first;
    BitSet settings = serving(first);
    while (!settings.isEmpty() && last < end - 1) {
      BitSet longest = (BitSet) settings.clone();
      int next = from;
      while (next < end && keeps(longest, serving(next))) {
        longest.and(serving(next));
        next++;
      }
      last = next - 1;
      Optional<PedalMove> change = next < end ? change(from, next, longest) : Optional.empty();
      int setting = change.map(PedalMove::from).orElseGet(() -> longest.nextSetBit(0));
      setups.add(new PedalSetup(from, HarpPedals.setting(setting)));
      settings = new BitSet();
      if (change.isPresent()) {
        settings.set(change.get().to);
        from = next;
      }
    }
  }

  private static boolean keeps(BitSet settings, BitSet others) {
    return settings.intersects(others);
  }

  private BitSet serving(int stroke) {
    return HarpPedals.giving(line.stroke(stroke).keys());
  }

  /** The change before a stroke to a setting that serves as long as can be; empty if none can. */
  private Optional<PedalMove> change(int from, int next, BitSet before) {
    List<BitSet> after = new ArrayList<>();
    List<Integer> until = new ArrayList<>();
    BitSet serving = (BitSet) serving(next).clone();
    for (int j = next; j < end && keeps(serving, serving(j)); j++) {
      int known = serving.cardinality();
      serving.and(serving(j));
      if (after.isEmpty() || serving.cardinality() < known) {
        after.add((BitSet) serving.clone());
        until.add(j);
      } else {
        until.set(until.size() - 1, j);
      }
    }
    for (int i = after.size() - 1; i >= 0; i--) {
      Optional<PedalMove> change = change(from, next, until.get(i), before, after.get(i));
      if (change.isPresent()) {
        return change;
      }
    }
    return Optional.empty();
  }

  private Optional<PedalMove> change(int from, int next, int until, BitSet before, BitSet after) {
    for (PedalMove change : fewestMoves(before, after)) {
      double[] free = footFree.clone();
      if (isInTime(change, from, next, until, free)) {
        System.arraycopy(free, 0, footFree, 0, free.length);
        return Optional.of(change);
      }
    }
    return Optional.empty();
  }

  /** From each setting to the nearest others, those with the fewest moves of all first. */
  private static List<PedalMove> fewestMoves(BitSet before, BitSet after) {
    List<List<PedalMove>> byMoves = new ArrayList<>();
    for (int moves = 0; moves <= HarpPedals.PEDALS; moves++) {
      byMoves.add(new ArrayList<>());
    }
    for (int to = after.nextSetBit(0); to >= 0; to = after.nextSetBit(to + 1)) {
      for (int one = before.nextSetBit(0); one >= 0; one = before.nextSetBit(one + 1)) {
        List<PedalMove> alike = byMoves.get(HarpPedals.moves(one, to));
        if (alike.size() < MOST_TRIED) {
          alike.add(new PedalMove(one, to));
        }
      }
    }
    return byMoves.stream().flatMap(List::stream).limit(MOST_TRIED).toList();
  }

  /** Whether both feet have the time, the most urgent pedal first. */
  private boolean isInTime(PedalMove change, int from, int next, int until, double[] free) {
    HarpPedals.Setting one = HarpPedals.setting(change.from);
    HarpPedals.Setting other = HarpPedals.setting(change.to);
    List<Integer> moving =
        IntStream.range(0, HarpPedals.PEDALS)
            .filter(pedal -> one.alter(pedal) != other.alter(pedal))
            .boxed()
            .sorted(Comparator.comparingDouble(pedal -> firstUse(other, pedal, next, until)))
            .toList();
    for (int pedal : moving) {
      int foot = HarpPedals.isLeft(pedal) ? 0 : 1;
      double at = Math.max(free[foot], lastUse(one, pedal, from, next - 1));
      if (at > firstUse(other, pedal, next, until)) {
        return false;
      }
      free[foot] = at + APART_MICROS;
    }
    return true;
  }

  private double lastUse(HarpPedals.Setting setting, int pedal, int from, int until) {
    for (int j = until; j >= from; j--) {
      if (setting.uses(pedal, line.stroke(j).keys())) {
        return line.onsetMicros(j) * stretch;
      }
    }
    return line.onsetMicros(from) * stretch;
  }

  private double firstUse(HarpPedals.Setting setting, int pedal, int from, int until) {
    for (int j = from; j <= until; j++) {
      if (setting.uses(pedal, line.stroke(j).keys())) {
        return line.onsetMicros(j) * stretch;
      }
    }
    return line.onsetMicros(until) * stretch;
  }
}
