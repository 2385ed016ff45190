package stafette.score;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rank;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.time.TempoMap;

/**
 * Where strokes fall in the bars and on the clock. What has been reckoned exactly is kept for every
 * line with this clock: lines of some of the strokes are made by the thousand.
 */
final class LineClock {
  private static final Rational MICROS = Rational.of(1_000_000);

  private final Bars bars;
  private final TempoMap tempo;
  private final Position start;
  private final Rational zeroSeconds;
  private final Map<Position, Long> micros = new ConcurrentHashMap<>();
  private final Map<Position, BeatOnClock> beats = new ConcurrentHashMap<>();
  private final Map<Integer, Long> barMicros = new ConcurrentHashMap<>();

  LineClock(Bars bars, TempoMap tempo, Position start) {
    this.bars = bars;
    this.tempo = tempo;
    this.start = start;
    zeroSeconds = tempo.secondsAt(start);
  }

  /**
   * The beat in which an onset falls.
   *
   * @param micros how long it lasts on the clock, rounded up
   * @param rank of the onset in it
   */
  record BeatOnClock(Position start, Length length, long micros, Rank rank) {
    Span span() {
      return Span.of(start, length);
    }
  }

  Position start() {
    return start;
  }

  /** A position on the clock, rounded once. */
  long micros(Position position) {
    return micros.computeIfAbsent(position, this::reckon);
  }

  private long reckon(Position position) {
    return tempo.secondsAt(position).minus(zeroSeconds).times(MICROS).rounded().longValueExact();
  }

  /** How long the bar lasts in which an onset falls, an incomplete one as if it were full. */
  long barMicros(Position onset) {
    Bar bar = bars.at(onset);
    return barMicros.computeIfAbsent(
        bar.index(), index -> roundedUp(Span.of(bar.span().start(), bar.meter().length())));
  }

  BeatOnClock beat(Position onset) {
    return beats.computeIfAbsent(onset, this::reckonBeat);
  }

  private BeatOnClock reckonBeat(Position onset) {
    Bar bar = bars.at(onset);
    Position first = bar.beatStart(onset);
    Length length = bar.beatLengthAt(onset);
    return new BeatOnClock(first, length, roundedUp(Span.of(first, length)), bars.rankOf(onset));
  }

  private long roundedUp(Span beat) {
    Rational exact = tempo.secondsOf(beat).times(MICROS);
    return exact.negated().floor().negate().longValueExact();
  }
}
