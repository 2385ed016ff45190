package stafette.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.score.Line;
import stafette.score.Manner;
import stafette.score.Part;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.score.Voice;
import stafette.time.Length;
import stafette.time.Position;

/** What a part of the score keeps its player from. */
class GivenStretchTest {
  private static final Pitch C5 = new Pitch(Step.C, 0, 5);

  /** Half a second each. */
  private static final Line LINE = Invented.line(8, 1, 120);

  @Test
  void notes_that_touch_are_one_passage_and_a_silence_parts_them() {
    assertEquals(
        List.of(
            new GivenStretch(500_000, 1_500_000, List.of(500_000L, 1_000_000L)),
            new GivenStretch(2_000_000, 2_500_000, List.of(2_000_000L))),
        given(1, 2, 4));
  }

  @Test
  void the_least_silence_parts_them_too() {
    List<Stroke> strokes =
        List.of(
            Invented.stroke(Position.START, Length.ofQuarters(99, 100), C5),
            Invented.stroke(Position.ofQuarters(1, 1), Length.QUARTER, C5));
    assertEquals(2, GivenStretch.of(part(strokes), List.of(LINE)).size());
  }

  @Test
  void the_lines_own_notes_are_no_passage_and_another_tone_beside_them_is() {
    List<Stroke> own =
        List.of(
            Invented.stroke(Position.ofQuarters(1, 1), Length.QUARTER, Invented.A4),
            Invented.stroke(Position.ofQuarters(2, 1), Length.QUARTER, C5));
    assertEquals(
        List.of(new GivenStretch(1_000_000, 1_500_000, List.of(1_000_000L))),
        GivenStretch.of(part(own), List.of(LINE)));
  }

  @Test
  void a_note_of_the_line_that_is_held_on_is_a_passage_and_one_at_a_landings_length_is_none() {
    Line sixteenths = Invented.line(16, 4, 120);
    assertEquals(
        List.of(new GivenStretch(500_000, 1_250_000, List.of(500_000L))),
        GivenStretch.of(
            part(List.of(a(Position.START, 1, 2), a(Position.ofQuarters(1, 1), 3, 2))),
            List.of(sixteenths)));
  }

  private static Stroke a(Position onset, long quarters, long parts) {
    return Invented.stroke(onset, Length.ofQuarters(quarters, parts), Invented.A4);
  }

  @Test
  void a_bows_tremolo_that_a_wind_reads_as_measured_is_no_passage() {
    Stroke bowed = Invented.stroke(Position.START, Length.QUARTER, C5);
    Stroke trembling =
        new Stroke(
            bowed.onset(),
            bowed.tones(),
            bowed.values(),
            List.of(),
            false,
            false,
            false,
            Set.of(),
            bowed.dynamic(),
            Manner.PLAIN);
    List<Stroke> read =
        IntStream.range(0, 9)
            .mapToObj(
                at -> Invented.stroke(Position.ofQuarters(at, 8), Length.ofQuarters(1, 8), C5))
            .toList();
    assertEquals(
        List.of(new GivenStretch(500_000, 562_500, List.of(500_000L))),
        GivenStretch.of(part(read), List.of(Invented.lineOf(List.of(trembling), 120))));
  }

  /** Quarters at these numbers. */
  private static List<GivenStretch> given(int... quarters) {
    List<Stroke> strokes =
        IntStream.of(quarters)
            .mapToObj(at -> Invented.stroke(Position.ofQuarters(at, 1), Length.QUARTER, C5))
            .toList();
    return GivenStretch.of(part(strokes), List.of(LINE));
  }

  private static Part part(List<Stroke> strokes) {
    return new Part("P2", "Reed", List.of(), List.of(new Voice(1, "1", strokes)));
  }
}
