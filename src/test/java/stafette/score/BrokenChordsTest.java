package stafette.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Broken octaves and chords read as they stand, or as their outer notes; figures of our own. */
class BrokenChordsTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "broken octaves, C4 C5 D4 D5 E4 E5, C5 C5 D5 D5 E5 E5, C4 C4 D4 D4 E4 E4",
    "an octave trembling, A3 A4 A3 A4, A4 A4 A4 A4, A3 A3 A3 A3",
    "two octaves apart, A3 A5 A3 A5, A5 A5 A5 A5, A3 A3 A3 A3",
    "one leap of an octave, C4 D4 D5 C5, C4 D4 D5 C5, C4 D4 D5 C5",
    "repeated notes, A4 A4 A4 A4, A4 A4 A4 A4, A4 A4 A4 A4",
    "a scale, C4 D4 E4 F4 G4, C4 D4 E4 F4 G4, C4 D4 E4 F4 G4",
    "a broken chord upwards, C4 E4 G4 C4 E4 G4, G4 G4, C4 C4",
    "up and down, C4 E4 G4 E4 C4 E4 G4 E4, G4 G4, C4 C4 E4",
    "a third trembling, C4 E4 C4 E4, E4 E4, C4 C4",
  })
  void figures(String figure, String written, String upper, String lower) throws NoSuchLine {
    assertEquals(written, read(written, Reading.ALL));
    assertEquals(upper, read(written, Reading.UPPER));
    assertEquals(lower, read(written, Reading.LOWER));
  }

  @Property
  void what_is_left_stands_in_the_line_or_an_octave_from_it(
      @ForAll @Size(min = 2, max = 24) List<@IntRange(min = 0, max = 13) Integer> steps,
      @ForAll Reading reading) {
    String written =
        steps.stream()
            .map(step -> "CDEFGAB".charAt(step % 7) + Integer.toString(4 + step / 7))
            .collect(Collectors.joining(" "));
    List<Stroke> before = TwoHands.voice(1, "1", written).strokes();
    List<Stroke> after = BrokenChords.read(before, reading);
    assertTrue(!after.isEmpty());
    for (Stroke stroke : after) {
      Stroke own =
          before.stream()
              .filter(one -> one.onset().equals(stroke.onset()))
              .findFirst()
              .orElseThrow();
      assertEquals(0, (own.top().key() - stroke.top().key()) % 12);
      assertEquals(own.length(), stroke.length());
    }
    assertEquals(after, BrokenChords.read(before, reading));
  }

  private static String read(String written, Reading reading) throws NoSuchLine {
    Score score = TwoHands.score("Piano", TwoHands.voice(1, "1", written));
    LineChoice choice =
        new LineChoice("P1", Optional.empty(), List.of(), List.of(), Optional.empty(), reading);
    Line line = choice.take(score);
    assertEquals(reading, line.source().reading());
    return line.strokes().stream()
        .map(stroke -> stroke.top().toString())
        .collect(Collectors.joining(" "));
  }
}
