package stafette.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.score.TwoHands.piano;
import static stafette.score.TwoHands.staff;
import static stafette.score.TwoHands.times;
import static stafette.score.TwoHands.voice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.time.Position;

/** What is one line of two hands, and what is not; figures of our own. */
class SharedHandsTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "left right, . A4, A4 .",
    "right left, E5 ., . E5",
    "left left right, . . A4, A4 A4 .",
    "right right left, C5 E5 ., . . A4",
    "left and three of the right, . C5 E5 A5, A4 . . .",
    "by fours, . . . . A4 B4 C5 D5, D4 E4 F4 G4 . . . .",
    "completing each other, A4 . A4 A4 . A4 . ., . A4 . . A4 . A4 A4",
    "octaves broken between the hands, . A4, A3 .",
    "chords in turn, . A4+C5, E4+A4 .",
    "written as eighths, . A4_2, A4_2 .",
  })
  void one_line_is(String figure, String upper, String lower) {
    Score score = piano(times(8, upper), times(8, lower));
    List<SharedHands.SharedLine> found = lines(score);
    assertEquals(1, found.size());
    assertEquals("1+2", found.get(0).strands().staffText());
    assertEquals(8 * upper.trim().split("\\s+").length, found.get(0).strokes().size());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "a stride bass under off-beats, . E5+G5 . E5+G5, C2 . G2 .",
    "an Alberti figure under a melody, E5_4 . . . G5_4 . . ., C4 G4 E4 G4 C4 G4 E4 G4",
    "two parts in counterpoint, A4 B4 C5 . D5 C5 B4 ., A3 . G3 F3 . E3 F3 G3",
    "both hands at once, A4 A4 A4 A4, E4 E4 E4 E4",
    "a hand alone, A4 A4 A4 A4 A4 A4 A4 A4, . . . . . . . .",
    "a bass note to each bar, . A4 A4 A4 A4 A4 A4 A4, A3 . . . . . . .",
    "a dotted dance, A4 . . A4, . A4 . .",
  })
  void no_shared_line_is(String figure, String upper, String lower) {
    Score score = piano(times(8, upper), times(8, lower.replace(". . . . . . . .", "A2_16 . . .")));
    assertEquals(List.of(), lines(score));
  }

  @Test
  void a_bass_and_its_chords_in_two_voices_of_the_left_hand_are_no_line() {
    Score score = staff("Piano", times(8, ". E4+G4 . E4+G4"), times(8, "C2 . G2 ."));
    assertEquals(List.of(), lines(score));
  }

  @Test
  void an_alberti_figure_whose_lowest_notes_are_held_is_no_line() {
    Score score = staff("Piano", times(8, ". G4 E4 G4"), times(8, "C4_4 . . ."));
    assertEquals(List.of(), lines(score));
  }

  @Test
  void voices_of_one_staff_share_a_line() {
    SharedHands.SharedLine line =
        lines(staff("Flutes 1.2", times(8, "A5 ."), times(8, ". A5"))).get(0);
    assertEquals("staff 1, voices 1+2", line.strands().inWords());
  }

  @Test
  void a_voice_that_changes_staves_shares_its_line_with_itself() {
    Score score =
        TwoHands.score("Piano", voice(1, "1", times(8, ". A4")), voice(2, "1", times(8, "A4 .")));
    assertEquals("both hands", lines(score).get(0).strands().inWords());
  }

  @Test
  void hands_that_strike_together_now_and_then_give_chords() {
    Score score = piano(times(4, "C5 A4 . A4 . A4 . A4"), times(4, "A4 . A4 . A4 . A4 ."));
    SharedHands.SharedLine line = lines(score).get(0);
    assertEquals(31, line.strokes().size(), "the chord before the line is none of it");
    assertEquals(2, line.strokes().get(7).tones().size());
  }

  @Test
  void what_one_hand_goes_on_with_alone_is_not_of_the_line() {
    Score score =
        piano(
            times(8, ". A4") + times(1, " A4 A4 A4 A4 A4 A4 A4 A4 A4 A4 A4 A4"), times(8, "A4 ."));
    int strokes = lines(score).get(0).strokes().size();
    assertTrue(strokes < 16 + 8, strokes + " strokes");
  }

  @Test
  void a_line_that_nobody_chose_a_voice_for_is_that_of_both_hands() throws NoSuchLine {
    Score score = piano(times(16, ". A4"), times(16, "A4 ."));
    LineChoice open =
        new LineChoice(
            "P1", Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
    assertEquals("1+2", open.take(score).source().strands().staffText());
    LineChoice right =
        new LineChoice(
            "P1", Optional.empty(), OptionalInt.of(1), Optional.empty(), Optional.empty());
    assertEquals(16, right.take(score).count());
  }

  @Property
  void a_stream_has_all_strokes_of_its_voices_and_none_twice(
      @ForAll @Size(min = 1, max = 40) List<Hit> hits) {
    Score score = piano(written(hits, true) + " A5", written(hits, false) + " C4");
    SharedHands hands = SharedHands.in(score.parts().get(0), score.bars().span()).get(0);
    Set<Position> onsets = new HashSet<>();
    for (Voice voice : score.parts().get(0).voices()) {
      voice.strokes().forEach(stroke -> onsets.add(stroke.onset()));
    }
    List<Position> woven = hands.strokes().stream().map(Stroke::onset).toList();
    assertEquals(onsets, Set.copyOf(woven));
    assertEquals(onsets.size(), woven.size());
    for (int i = 1; i < woven.size(); i++) {
      assertTrue(!hands.strokes().get(i - 1).span().end().isAfter(woven.get(i)));
    }
    for (SharedHands.SharedLine line : lines(score)) {
      assertTrue(hands.strokes().containsAll(line.strokes()));
      assertTrue(line.strokes().size() >= 8);
    }
  }

  /** Who strikes a sixteenth. */
  enum Hit {
    RIGHT,
    LEFT,
    BOTH,
    NOBODY
  }

  private static String written(List<Hit> hits, boolean right) {
    List<String> text = new ArrayList<>();
    for (Hit hit : hits) {
      boolean strikes = hit == Hit.BOTH || hit == (right ? Hit.RIGHT : Hit.LEFT);
      text.add(strikes ? (right ? "A4" : "G4_2") : ".");
    }
    return String.join(" ", text);
  }

  private static List<SharedHands.SharedLine> lines(Score score) {
    return SharedHands.in(score.parts().get(0), score.bars().span()).stream()
        .flatMap(hands -> hands.atTempo(score.tempo()).stream())
        .toList();
  }
}
