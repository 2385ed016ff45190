package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.TempoMark;

/**
 * Brings the line's clock to that of a performance: a quarter note of silence goes before, so that
 * whoever is early has room, and all is stretched by the speed.
 */
public final class Clock {
  /** Sounds may ring on for so long after the line's end. */
  static final long TAIL_MICROS = 1_000_000;

  private static final double SECONDS_A_MINUTE = 60;
  private static final double MICROS = 1e6;

  private final Line line;
  private final double speed;
  private final long leadMicros;

  public Clock(Line line, double speed) {
    this.line = line;
    this.speed = speed;
    this.leadMicros = quarterMicros(line.tempo().at(line.clockStart()));
  }

  /** A moment of the performance, for one on the line's clock. */
  public long performed(long lineMicros) {
    return leadMicros + Math.round(lineMicros / speed);
  }

  /** A moment on the line's clock, for one of the performance: where a cursor stands. */
  public long ofLine(long performedMicros) {
    return Math.round((performedMicros - leadMicros) * speed);
  }

  /** How long a performance of the whole line takes. */
  public long lengthMicros() {
    return performed(line.micros(line.span().end())) + TAIL_MICROS;
  }

  List<Performance.Tempo> tempi() {
    List<Performance.Tempo> tempi = new ArrayList<>();
    line.tempo()
        .within(line.span())
        .forEach(
            (position, mark) ->
                tempi.add(
                    new Performance.Tempo(
                        tempi.isEmpty() ? 0 : performedAt(position), quarterMicros(mark))));
    return tempi;
  }

  private long performedAt(Position position) {
    return performed(line.micros(position));
  }

  private long quarterMicros(TempoMark mark) {
    return Math.round(SECONDS_A_MINUTE * MICROS / (mark.quartersPerMinute().toDouble() * speed));
  }
}
