package stafette.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

class LineChoiceTest {
  private static final Pitch E5 = new Pitch(Step.E, 0, 5);
  private static final Pitch C5 = new Pitch(Step.C, 0, 5);
  private static final Pitch G4 = new Pitch(Step.G, 0, 4);

  private final Voice upper = new Voice(1, "1", eighths(16, G4, C5, E5));
  private final Voice lower = new Voice(2, "5", eighths(16, G4));
  private final Score score =
      new Score(
          Optional.empty(),
          List.of(
              new Part("P1", "Piano", List.of(), List.of(upper, lower)),
              new Part("P2", "Oboe", List.of(), List.of(new Voice(1, "1", accentedQuarters())))),
          Bars.regular(Meter.COMMON, 2),
          TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(120))),
          true);

  @Test
  void chords_without_a_choice_of_tone_are_refused_with_their_place() {
    String message = refusalOf(() -> choice("1", 1, Optional.empty()).take(score));
    assertTrue(message.startsWith("Piano, bar 1, beat 1: the line has chords"), message);
  }

  @Test
  void a_tone_is_taken_from_the_top_from_the_bottom_or_whole() throws NoSuchLine {
    assertEquals(List.of(E5), tones("top"));
    assertEquals(List.of(C5), tones("2"));
    assertEquals(List.of(G4), tones("bottom"));
    assertEquals(List.of(G4, C5, E5), tones("all"));
  }

  @Test
  void a_tone_that_no_chord_has_is_refused() {
    assertThrows(NoSuchLine.class, () -> choice("1", 1, ToneChoice.parse("4")).take(score));
  }

  @Test
  void without_a_bar_the_whole_part_is_taken() throws NoSuchLine {
    LineChoice whole =
        new LineChoice(
            "piano", Optional.empty(), OptionalInt.of(2), Optional.empty(), Optional.empty());
    assertEquals(16, whole.take(score).count());
  }

  @Test
  void a_part_or_voice_that_is_not_there_is_refused_and_the_others_are_named() {
    LineChoice nobody =
        new LineChoice(
            "Tuba", Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
    String message = refusalOf(() -> nobody.take(score));
    assertTrue(message.contains("P1 Piano") && message.contains("P2 Oboe"), message);
    LineChoice silent =
        new LineChoice(
            "P1", Optional.empty(), OptionalInt.of(3), Optional.empty(), Optional.empty());
    assertTrue(refusalOf(() -> silent.take(score)).contains("staff 2 voice 5"));
  }

  @Test
  void another_part_that_attacks_with_an_accent_covers_the_handoff_with_four_points()
      throws NoSuchLine {
    Line line = choice("1-2", 2, Optional.empty()).take(score);
    assertEquals(4, line.cover(0));
    assertEquals(0, line.cover(1));
    assertEquals(4, line.cover(2));
  }

  @Test
  void bars_are_found_by_printed_number_and_by_count() throws NoSuchLine {
    Bars bars = score.bars();
    Span second = bars.get(1).span();
    assertEquals(second, new BarChoice("2").in(bars));
    assertEquals(second, new BarChoice("#2-#2").in(bars));
    assertEquals(Position.START, new BarChoice("1-2").in(bars).start());
  }

  @Test
  void bars_that_are_not_there_or_upside_down_are_refused() {
    for (String wrong : List.of("3", "#3", "#0", "2-1", "", "1-2-3", "x")) {
      assertThrows(NoSuchLine.class, () -> new BarChoice(wrong).in(score.bars()), wrong);
    }
  }

  @Test
  void a_number_that_is_printed_twice_must_be_counted() {
    Bar one = new Bar(0, "1", Span.of(Position.START, Length.QUARTER), Meter.COMMON, Length.ZERO);
    Bar again =
        new Bar(
            1, "1", Span.of(Position.ofQuarters(1, 1), Length.QUARTER), Meter.COMMON, Length.ZERO);
    String message = refusalOf(() -> new BarChoice("1").in(new Bars(List.of(one, again))));
    assertTrue(message.contains("#1"), message);
  }

  private List<Tone> tones(String tone) throws NoSuchLine {
    return choice("1", 1, ToneChoice.parse(tone)).take(score).stroke(0).tones();
  }

  private static LineChoice choice(String bars, int staff, Optional<ToneChoice> tone) {
    return new LineChoice(
        "P1", Optional.of(new BarChoice(bars)), OptionalInt.of(staff), Optional.empty(), tone);
  }

  private static List<Stroke> eighths(int count, Tone... tones) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      strokes.add(stroke(Position.ofQuarters(i, 2), Length.ofQuarters(1, 2), Set.of(), tones));
    }
    return strokes;
  }

  private static List<Stroke> accentedQuarters() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      strokes.add(
          stroke(Position.ofQuarters(i, 1), Length.QUARTER, Set.of(Articulation.ACCENT), E5));
    }
    return strokes;
  }

  private static Stroke stroke(
      Position onset, Length length, Set<Articulation> marks, Tone... tones) {
    return new Stroke(
        onset,
        List.of(tones),
        List.of(new Value(length, Optional.empty())),
        List.of(),
        false,
        false,
        true,
        marks,
        Dynamic.MF,
        Manner.PLAIN);
  }

  private static String refusalOf(Executable taking) {
    return String.valueOf(assertThrows(NoSuchLine.class, taking).getMessage());
  }
}
