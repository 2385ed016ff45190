package stafette.desktop.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.desktop.texts.Texts;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.work.ChangedPart;

/** What writing changes, bar by bar. */
class BarByBarTest {
  private static final Line LINE = Invented.line(6, 4, 120);

  private static ChangedPart part(List<Integer> bars, List<Line> before, List<Line> after) {
    List<Bar> changed = bars.stream().map(LINE.bars()::get).toList();
    return new ChangedPart("Oboe", Optional.empty(), false, changed, before, after);
  }

  private static Line strokes(int from, int to) {
    return LINE.only(IntStream.range(from, to).boxed().toList(), false);
  }

  private static List<String> lines(ChangedPart part, Locale locale) {
    return new BarByBar(Texts.in(locale)).lines(List.of(part));
  }

  @Test
  void bars_that_change_alike_and_stand_in_a_row_share_a_line() {
    ChangedPart part =
        part(List.of(0, 1, 2, 4), List.of(strokes(0, 1)), List.of(strokes(0, 48), strokes(64, 80)));
    assertEquals(
        List.of(
            "Oboe, bar 1: 16 notes, before one note",
            "Oboe, bars 2–3: 16 notes in each, before no notes",
            "Oboe, bar 5: 16 notes, before no notes"),
        lines(part, Locale.ENGLISH));
  }

  @Test
  void bars_that_are_emptied_are_told_in_german_too() {
    ChangedPart part = part(List.of(0, 1), List.of(strokes(0, 32)), List.of());
    assertEquals(
        List.of("Oboe, Takte 1–2, je Takt: keine Noten, vorher 16 Noten"),
        lines(part, Locale.GERMAN));
  }
}
