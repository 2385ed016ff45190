package stafette.score;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import stafette.Invented;
import stafette.time.Length;
import stafette.time.Position;

/**
 * The line's clock of whole microseconds must not turn what is exact on paper into more or less.
 */
class LineClockTest {
  @Property
  void strokes_a_beat_apart_are_within_a_beat_at_any_tempo(
      @ForAll @IntRange(min = 20, max = 250) int quartersPerMinute,
      @ForAll @IntRange(min = 1, max = 8) int perBeat,
      @ForAll @IntRange(max = 100) int first) {
    Line line = Invented.line(first + perBeat + 1, perBeat, quartersPerMinute, i -> Invented.A4);
    int last = first + perBeat;
    assertTrue(line.onsetMicros(last) - line.onsetMicros(first) <= line.beatMicros(last));
  }

  @Property
  void a_silence_of_a_beat_is_a_rest_at_any_tempo(
      @ForAll @IntRange(min = 20, max = 250) int quartersPerMinute,
      @ForAll @IntRange(max = 100) int beat) {
    List<Stroke> strokes = new ArrayList<>();
    for (int at = 0; at <= beat + 2; at++) {
      if (at != beat + 1) {
        strokes.add(Invented.stroke(Position.ofQuarters(at, 1), Length.QUARTER, Invented.A4));
      }
    }
    Line line = Invented.lineOf(strokes, quartersPerMinute);
    assertTrue(line.restsBefore(line.count() - 1));
  }
}
