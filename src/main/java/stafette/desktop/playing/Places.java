package stafette.desktop.playing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.time.BarBeat;
import stafette.time.Bars;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Where a plan can be heard from: on its clock, in microseconds, and in words. Every beat of its
 * bars is such a place, and every stroke.
 */
public final class Places {
  private static final Pattern NUMBER = Pattern.compile("\\d+[a-z]*(\\.\\d+)?(\\+\\d+/\\d+)?");

  /** The beginning of each beat, and the end of the last. */
  private final long[] beats;

  private final NavigableMap<Long, Position> positions = new TreeMap<>();

  private final Bars counted;

  private Places(Plan plan) {
    Line clock = plan.line();
    counted = clock.bars();
    List<Span> spans = plan.brief().bars().stream().flatMap(bar -> bar.beats().stream()).toList();
    beats = new long[spans.size() + 1];
    for (int i = 0; i < spans.size(); i++) {
      beats[i] = clock.micros(spans.get(i).start());
      positions.put(beats[i], spans.get(i).start());
    }
    beats[spans.size()] = clock.micros(spans.get(spans.size() - 1).end());
    for (Line line : plan.brief().lines()) {
      IntStream.range(0, line.count())
          .forEach(i -> positions.putIfAbsent(line.onsetMicros(i), line.stroke(i).onset()));
    }
  }

  public static Places of(Plan plan) {
    return new Places(plan);
  }

  /** The beginning. */
  public long first() {
    return beats[0];
  }

  /** The beginning of the next beat; of the last one if there is none. */
  public long next(long micros) {
    return beats[Math.min(beats.length - 2, begun(micros) + 1)];
  }

  /**
   * The beginning of the beat, or if it stands there, of the one before, as far as there is one.
   */
  public long previous(long micros) {
    return beats[Math.max(0, begun(micros - 1))];
  }

  /** The place nearest to a moment. */
  public long nearest(long micros) {
    Long before = positions.floorKey(micros);
    Long after = positions.ceilingKey(micros);
    if (before == null || after == null) {
      return Objects.requireNonNullElse(before == null ? after : before, first());
    }
    return micros - before <= after - micros ? before : after;
  }

  /** The place at a moment, or the last one before. */
  public BarBeat name(long micros) {
    return counted.nameOf(position(micros));
  }

  /** The position in the score at a moment, or the last one before. */
  public Position position(long micros) {
    return Objects.requireNonNullElse(
            positions.floorEntry(micros), Objects.requireNonNull(positions.firstEntry()))
        .getValue();
  }

  /**
   * The place that somebody means: a bar, or a bar and a beat, such as "12" or "bar 12, beat 3".
   */
  public OptionalLong find(String typed) {
    List<String> numbers =
        NUMBER.matcher(typed.toLowerCase(Locale.ROOT)).results().map(m -> m.group()).toList();
    if (numbers.isEmpty()) {
      return OptionalLong.empty();
    }
    return positions.entrySet().stream()
        .filter(place -> means(numbers, counted.nameOf(place.getValue())))
        .mapToLong(place -> place.getKey())
        .findFirst();
  }

  private static boolean means(List<String> numbers, BarBeat place) {
    return place.bar().equalsIgnoreCase(numbers.get(0))
        && (numbers.size() == 1 || place.beatText().equals(numbers.get(1)));
  }

  /**
   * Where the same place is on another clock over the same beats, such as at another tempo; the
   * beginning if the beats are others.
   */
  public long carried(long micros, Places other) {
    if (other.beats.length != beats.length) {
      return other.first();
    }
    int beat = Math.max(0, Math.min(beats.length - 2, begun(micros)));
    double share = (micros - beats[beat]) / (double) (beats[beat + 1] - beats[beat]);
    return Math.round(other.beats[beat] + share * (other.beats[beat + 1] - other.beats[beat]));
  }

  /** The last beat that has begun; -1 before the first. */
  private int begun(long micros) {
    int found = Arrays.binarySearch(beats, micros);
    return found >= 0 ? found : -found - 2;
  }
}
