package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.text.UnreadableScore;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Landmarks;
import stafette.time.Landmarks.BarLine;
import stafette.time.Landmarks.TempoWords;

/** Where sections begin. */
class SectionsTest {
  private static final String NOTE = Xml.note("A", 4, 48, "");

  private static String line(String location, String inside) {
    return "<barline" + location + ">" + inside + "</barline>";
  }

  /** Indices of the bars that begin a section, when the second of three has something in it. */
  private static List<Integer> sections(String before, String after) throws UnreadableScore {
    Bars bars =
        Xml.read(Xml.score(Xml.ATTRIBUTES + NOTE, before + NOTE + after, NOTE)).score().bars();
    return IntStream.range(0, bars.count()).filter(bars::beginsSection).boxed().toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<bar-style>light-light</bar-style>",
        "<bar-style>light-heavy</bar-style>",
        "<bar-style>light-heavy</bar-style><repeat direction=\"backward\"/>",
        "<repeat direction=\"backward\"/>"
      })
  void a_section_begins_after_a_double_bar_line_or_a_repeat_sign(String inside)
      throws UnreadableScore {
    assertEquals(List.of(2), sections("", line(" location=\"right\"", inside)));
    assertEquals(List.of(2), sections("", line("", inside)));
  }

  @Test
  void a_repeat_sign_before_a_bar_begins_one_with_it() throws UnreadableScore {
    String sign = "<bar-style>heavy-light</bar-style><repeat direction=\"forward\"/>";
    assertEquals(List.of(1), sections(line(" location=\"left\"", sign), ""));
  }

  @Test
  void a_rehearsal_mark_begins_one_wherever_it_stands_in_its_bar() throws UnreadableScore {
    String mark =
        "<direction><direction-type><rehearsal>B</rehearsal></direction-type></direction>";
    assertEquals(List.of(1), sections(mark, ""));
    assertEquals(List.of(1), sections("", mark));
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dashed", "none", "regular"})
  void other_bar_lines_begin_none(String style) throws UnreadableScore {
    String inside = "<bar-style>" + style + "</bar-style>";
    assertEquals(List.of(), sections("", line(" location=\"right\"", inside)));
    assertEquals(
        List.of(),
        sections(line(" location=\"middle\"", "<bar-style>light-light</bar-style>"), ""));
  }

  @Test
  void a_bar_has_its_rehearsal_mark_its_bar_lines_and_words_for_the_tempo() throws UnreadableScore {
    String before =
        direction("<rehearsal>B</rehearsal>", "")
            + direction("<words>Allegro</words>", "<sound tempo=\"120\"/>")
            + direction("<words>dolce</words>", "")
            + line(" location=\"left\"", "<repeat direction=\"forward\"/>");
    String after =
        direction("<words>poco rit.</words>", "") + line("", "<bar-style>light-light</bar-style>");
    Bar bar =
        Xml.read(Xml.score(Xml.ATTRIBUTES + NOTE, before + NOTE + after, NOTE))
            .score()
            .bars()
            .get(1);
    Landmarks landmarks = bar.landmarks();
    assertEquals(Optional.of("B"), landmarks.rehearsal());
    assertEquals(BarLine.REPEAT, landmarks.before());
    assertEquals(BarLine.DOUBLE, landmarks.after());
    assertEquals(
        List.of("Allegro", "poco rit."), landmarks.tempo().stream().map(TempoWords::text).toList());
    assertEquals(bar.span().start(), landmarks.tempo().get(0).at());
  }

  private static String direction(String type, String sound) {
    return "<direction><direction-type>" + type + "</direction-type>" + sound + "</direction>";
  }
}
