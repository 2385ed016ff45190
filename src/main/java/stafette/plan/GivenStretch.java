package stafette.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * A stretch without silence that the score already gives a player, on the line's clock.
 *
 * @param fromMicros its first onset
 * @param toMicros the end of its last sound
 * @param strokeMicros the onsets of its strokes, slurred notes left out
 * @param changeMicros the least rest after it before the player may play the line, where the line
 *     is played in another manner; 0 if not
 */
public record GivenStretch(
    long fromMicros, long toMicros, List<Long> strokeMicros, long changeMicros) {
  /** To take up another instrument and be ready: a judgement, common practice, no source. */
  private static final long INSTRUMENT_MICROS = 10_000_000;

  /** Common practice, no source. */
  private static final Rational LONGEST_LANDING_IN_BEATS = Rational.of(1, 2);

  public GivenStretch {
    strokeMicros = List.copyOf(strokeMicros);
  }

  /** Whether the player only takes up another instrument. */
  public boolean isChange() {
    return strokeMicros.isEmpty() && fromMicros == toMicros;
  }

  /** A stretch that is played as the line is. */
  public GivenStretch(long fromMicros, long toMicros, List<Long> strokeMicros) {
    this(fromMicros, toMicros, strokeMicros, 0);
  }

  /** The same stretch after which the rest must be so long that it is enough within a margin. */
  GivenStretch within(Margin margin) {
    long change = (long) Math.ceil(changeMicros / margin.shortened());
    return new GivenStretch(fromMicros, toMicros, strokeMicros, change);
  }

  /**
   * What a part of the score already has to play, beside the lines: strokes with a line's own tones
   * at its own onsets, not held, are the line, and so are those into which a line's unmeasured
   * tremolo falls where an instrument reads its slashes as measured.
   */
  public static List<GivenStretch> of(Part part, List<Line> lines) {
    return of(part.voices().stream().flatMap(voice -> voice.strokes().stream()).toList(), lines);
  }

  /** What some strokes that the score gives a player make, beside the lines. */
  public static List<GivenStretch> of(List<Stroke> strokesGiven, List<Line> lines) {
    Bars bars = lines.get(0).bars();
    return of(strokesGiven, lines, (stroke, ofLine) -> !isHeld(stroke, ofLine, bars));
  }

  /** The same for who has the line thinned: the notes that are left may last longer. */
  public static List<GivenStretch> besideThinned(Part part, List<Line> lines) {
    List<Stroke> all = part.voices().stream().flatMap(voice -> voice.strokes().stream()).toList();
    return of(all, lines, (stroke, ofLine) -> true);
  }

  private static List<GivenStretch> of(
      List<Stroke> strokesGiven, List<Line> lines, BiPredicate<Stroke, Stroke> mayBe) {
    Line line = lines.get(0);
    Map<Position, List<Stroke>> own = new HashMap<>();
    for (Line each : lines) {
      each.strokes()
          .forEach(
              stroke -> own.computeIfAbsent(stroke.onset(), at -> new ArrayList<>()).add(stroke));
    }
    List<Stroke> unmeasured =
        own.values().stream().flatMap(List::stream).filter(each -> !each.measured()).toList();
    List<Stroke> given =
        strokesGiven.stream()
            .filter(stroke -> !isOf(own, stroke, mayBe) && !isWithin(unmeasured, stroke))
            .sorted(Comparator.comparing(Stroke::onset))
            .toList();
    List<GivenStretch> result = new ArrayList<>();
    List<Long> strokes = new ArrayList<>();
    long from = 0;
    long to = 0;
    Manner last = Manner.PLAIN;
    for (Stroke stroke : given) {
      long onset = line.micros(stroke.onset());
      if (!strokes.isEmpty() && onset > to) {
        result.add(stretch(from, to, strokes, last, line));
        strokes.clear();
      }
      if (strokes.isEmpty()) {
        from = onset;
        to = onset;
      }
      boolean again = !strokes.isEmpty() && strokes.get(strokes.size() - 1) == onset;
      if (!again && (strokes.isEmpty() || !stroke.slurred())) {
        strokes.add(onset);
      }
      to = Math.max(to, line.micros(stroke.span().end()));
      last = stroke.manner();
    }
    if (!strokes.isEmpty()) {
      result.add(stretch(from, to, strokes, last, line));
    }
    return result;
  }

  private static GivenStretch stretch(
      long from, long to, List<Long> strokes, Manner last, Line line) {
    return new GivenStretch(from, to, strokes, MannerChange.micros(last, line.stroke(0).manner()));
  }

  /**
   * What a player has to play on another instrument than the line: a while before each such
   * stretch, and after it, goes into the change.
   *
   * @param there on the instrument with which the line is played
   * @param elsewhere on others
   */
  public static List<GivenStretch> withChanges(
      List<GivenStretch> there, List<GivenStretch> elsewhere) {
    List<GivenStretch> all = new ArrayList<>(there);
    for (GivenStretch each : elsewhere) {
      all.add(
          new GivenStretch(each.fromMicros, each.toMicros, each.strokeMicros, INSTRUMENT_MICROS));
    }
    all.sort(Comparator.comparingLong(GivenStretch::fromMicros));
    List<GivenStretch> busy = new ArrayList<>();
    long until = Long.MIN_VALUE;
    for (GivenStretch each : all) {
      long from = Math.max(each.fromMicros - INSTRUMENT_MICROS, until);
      if (each.changeMicros == INSTRUMENT_MICROS && from < each.fromMicros) {
        busy.add(new GivenStretch(from, from, List.of(), INSTRUMENT_MICROS));
      }
      busy.add(each);
      until = Math.max(until, each.toMicros);
    }
    return busy;
  }

  private static boolean isOf(
      Map<Position, List<Stroke>> lines, Stroke stroke, BiPredicate<Stroke, Stroke> mayBe) {
    List<Stroke> own =
        lines.getOrDefault(stroke.onset(), List.of()).stream()
            .filter(each -> mayBe.test(stroke, each))
            .toList();
    return !own.isEmpty()
        && stroke.tones().stream()
            .allMatch(tone -> own.stream().anyMatch(each -> each.sounds(tone)));
  }

  /** Whether it goes on sounding where the line's own has ended, longer than a landing note may. */
  private static boolean isHeld(Stroke stroke, Stroke ofLine, Bars bars) {
    Length landing =
        bars.at(stroke.onset()).beatLengthAt(stroke.onset()).times(LONGEST_LANDING_IN_BEATS);
    return stroke.length().compareTo(ofLine.length()) > 0 && stroke.length().compareTo(landing) > 0;
  }

  private static boolean isWithin(List<Stroke> unmeasured, Stroke stroke) {
    return unmeasured.stream()
        .filter(each -> each.span().contains(stroke.onset()))
        .anyMatch(each -> stroke.tones().stream().allMatch(each::sounds));
  }
}
