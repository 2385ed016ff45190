package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import javax.sound.midi.MidiEvent;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMark;

/**
 * Counts in the score's quarter notes, with its tempo marks and metres, so that whoever opens the
 * file sees bars and beats. Each take begins where the time of the one before leads to.
 */
final class ScoreClock implements TickClock {
  /** A common resolution; divisible by 2, 3 and 5. */
  private static final int TICKS = 960;

  private static final long MINUTE_MICROS = 60_000_000;

  private final NavigableMap<Long, Anchor> anchors = new TreeMap<>();
  private final List<MidiEvent> marks = new ArrayList<>();

  /**
   * From a moment on a tempo holds.
   *
   * @param tick what is counted by then
   * @param microsPerQuarter exactly
   */
  private record Anchor(long tick, double microsPerQuarter) {}

  ScoreClock(List<Performance.Take> takes) {
    takes.forEach(this::add);
  }

  private void add(Performance.Take take) {
    long start = anchors.isEmpty() ? 0 : tick(take.fromMicros());
    Line line = take.plan().line();
    Position from = take.excerpt().start();
    for (Map.Entry<Position, TempoMark> mark : line.tempo().within(take.excerpt()).entrySet()) {
      Position at = mark.getKey();
      double micros = MINUTE_MICROS / mark.getValue().quartersPerMinute().toDouble();
      long tick = start + ticks(at.since(from));
      anchors.put(
          take.fromMicros() + line.micros(at) - line.micros(from), new Anchor(tick, micros));
      marks.add(Messages.tempo(Math.round(micros), tick));
    }
    addMetres(take, start);
  }

  private void addMetres(Performance.Take take, long start) {
    Position from = take.excerpt().start();
    String before = "";
    for (Bar bar : take.plan().line().bars()) {
      Position at = bar.span().start().isBefore(from) ? from : bar.span().start();
      if (at.isBefore(bar.span().end()) && take.excerpt().contains(at)) {
        Rational unit = unit(bar).quarters();
        Rational above = bar.span().end().since(at).quarters().dividedBy(unit);
        Rational below = Rational.of(4).dividedBy(unit);
        String metre = above + "/" + below;
        if (!metre.equals(before) && isMetre(above, below)) {
          marks.add(
              Messages.timeSignature(
                  above.numerator().intValue(),
                  below.numerator().intValue(),
                  start + ticks(at.since(from))));
          before = metre;
        }
      }
    }
  }

  /** The note value that a time signature counts: a third of a dotted beat. */
  private static Length unit(Bar bar) {
    return bar.meter().beats().stream()
        .filter(beat -> beat.quarters().numerator().intValue() % 3 == 0)
        .findFirst()
        .map(beat -> new Length(beat.quarters().dividedBy(3)))
        .orElseGet(() -> bar.meter().beats().get(0));
  }

  private static boolean isMetre(Rational above, Rational below) {
    return above.isWhole()
        && above.compareTo(Rational.of(255)) <= 0
        && below.isWhole()
        && below.numerator().bitCount() == 1;
  }

  private static long ticks(Length length) {
    return length.quarters().times(TICKS).rounded().longValueExact();
  }

  @Override
  public int resolution() {
    return TICKS;
  }

  @Override
  public long tick(long micros) {
    Map.Entry<Long, Anchor> before = anchors.floorEntry(micros);
    Map.Entry<Long, Anchor> anchor = before == null ? anchors.firstEntry() : before;
    return anchor.getValue().tick
        + Math.round((micros - anchor.getKey()) * TICKS / anchor.getValue().microsPerQuarter);
  }

  @Override
  public List<MidiEvent> marks() {
    return marks;
  }
}
