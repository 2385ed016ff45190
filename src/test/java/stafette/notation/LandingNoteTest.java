package stafette.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.score.Stroke;
import stafette.score.TwoHands;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/** Landing notes are plain to read (common practice, no source). */
class LandingNoteTest {
  private static final Meter SIX_EIGHT = Meter.of(List.of(6), 8);

  @Test
  void the_first_note_of_a_sextuplet_becomes_an_eighth() {
    assertEquals(Rational.of(1, 2), written(Meter.COMMON, Rational.ONE, Rational.of(1, 6)));
  }

  @Test
  void a_sixteenth_on_half_a_beat_becomes_an_eighth() {
    assertEquals(Rational.of(1, 2), written(Meter.COMMON, Rational.of(3, 2), Rational.of(1, 4)));
  }

  @Test
  void one_that_stands_off_the_beat_stays_as_it_is() {
    assertEquals(Rational.of(1, 4), written(Meter.COMMON, Rational.of(5, 4), Rational.of(1, 4)));
    assertEquals(Rational.of(1, 6), written(Meter.COMMON, Rational.of(4, 3), Rational.of(1, 6)));
  }

  @Test
  void in_a_beat_of_three_it_becomes_a_third_of_it() {
    assertEquals(Rational.of(1, 2), written(SIX_EIGHT, Rational.of(3, 2), Rational.of(1, 4)));
    assertEquals(Rational.of(1, 2), written(SIX_EIGHT, Rational.of(5, 2), Rational.of(1, 4)));
  }

  @Test
  void a_longer_note_stays_as_it_is() {
    assertEquals(Rational.ONE, written(Meter.COMMON, Rational.ONE, Rational.ONE));
  }

  @Test
  void it_is_shorter_where_there_is_no_time() {
    Stroke landing = stroke(Rational.ONE, Rational.of(1, 8));
    Stroke written =
        LandingNote.written(
            landing, bar(Meter.COMMON), end -> !end.isAfter(Position.ofQuarters(5, 4)));
    assertEquals(Rational.of(1, 4), written.length().quarters());
  }

  @Property
  void it_never_reaches_beyond_its_beat(@ForAll @IntRange(min = 0, max = 23) int sixth) {
    for (Meter meter : List.of(Meter.COMMON, SIX_EIGHT, Meter.of(List.of(2, 2, 3), 8))) {
      Bar bar = bar(meter);
      Stroke landing = stroke(Rational.of(sixth, 6), Rational.of(1, 6));
      if (bar.span().contains(landing.onset())) {
        Position end = LandingNote.written(landing, bar, free -> true).span().end();
        Span beat = Span.of(bar.beatStart(landing.onset()), bar.beatLengthAt(landing.onset()));
        assertEquals(false, end.isAfter(beat.end()), meter + " " + landing.onset());
      }
    }
  }

  private static Rational written(Meter meter, Rational onset, Rational length) {
    return LandingNote.written(stroke(onset, length), bar(meter), free -> true).length().quarters();
  }

  private static Bar bar(Meter meter) {
    return new Bar(0, "1", Span.of(Position.START, meter.length()), meter, Length.ZERO);
  }

  private static Stroke stroke(Rational onset, Rational length) {
    int sixteenths = onset.times(4).floor().intValueExact();
    String silence = TwoHands.times(sixteenths, ". ");
    Stroke first = TwoHands.voice(1, "1", silence + " A4").strokes().get(0);
    return new Stroke(
        Position.START.plus(new Length(onset)),
        first.tones(),
        List.of(new Value(new Length(length), Optional.empty())),
        List.of(),
        false,
        false,
        true,
        first.articulations(),
        first.dynamic(),
        first.manner());
  }
}
