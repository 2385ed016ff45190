package stafette.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

class HalvesTest {
  @Test
  void strokes_taken_in_turn_interlock_down_to_81_ms() {
    assertEquals(List.of(), tooClose(Invented.line(1, 4, 185), Hocket.STROKE));
    assertEquals(
        IntStream.range(0, 16).boxed().toList(), tooClose(Invented.line(1, 4, 186), Hocket.STROKE));
  }

  @Test
  void of_groups_those_notes_are_too_close_at_which_the_other_takes_over() {
    assertEquals(List.of(2, 3), tooClose(Invented.line(6, 3, 250, i -> Invented.A4), Hocket.GROUP));
  }

  @Test
  void by_beats_and_without_hockets_no_line_is_too_fast() {
    Line line = Invented.line(1, 4, 400);
    assertEquals(List.of(), tooClose(line, Hocket.BEAT));
    assertEquals(List.of(), tooClose(line, Hocket.NO));
  }

  @Test
  void a_slow_stretch_of_a_fast_line_interlocks() {
    List<Stroke> strokes =
        Stream.of(0, 1, 2, 3, 4, 6, 8, 10)
            .map(i -> Invented.stroke(at(i), Length.ofQuarters(1, 4), Invented.A4))
            .toList();
    Halves halves = Halves.of(Invented.lineOf(strokes, 200), Hocket.STROKE);
    assertFalse(halves.interlocks(4, 1));
    assertEquals(75_000, halves.apartMicros(4));
    assertTrue(halves.interlocks(5, 1));
    assertEquals(150_000, halves.apartMicros(5));
  }

  private static Position at(int sixteenth) {
    return Position.ofQuarters(sixteenth, 4);
  }

  private static List<Integer> tooClose(Line line, Hocket hocket) {
    Halves halves = Halves.of(line, hocket);
    return IntStream.range(0, line.count())
        .filter(stroke -> !halves.interlocks(stroke, 1))
        .boxed()
        .toList();
  }
}
