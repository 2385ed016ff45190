package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.read;
import static stafette.musicxml.read.Xml.score;
import static stafette.musicxml.read.Xml.strokes;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.write.TwoParts;
import stafette.musicxml.write.WrittenScore;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

/**
 * Where MusicXML 4.0 lets a decimal stand, it is taken exactly: durations, divisions, tempi. None
 * of them is rounded to a whole number.
 */
class FractionsTest {
  @Test
  void half_a_division_lasts_half_as_long_as_one() throws UnreadableScore {
    List<Stroke> strokes =
        strokes(score(ATTRIBUTES + decimal("1.5").repeat(3) + decimal("0.25") + decimal("43.25")));
    assertEquals("1/8 1/8 1/8 1/48 173/48", lengths(strokes));
    assertEquals(Position.ofQuarters(3, 8), strokes.get(3).onset());
  }

  @Test
  void a_forward_and_a_backup_of_half_a_division_move_by_half_a_division() throws UnreadableScore {
    String forward = "<forward><duration>1.5</duration></forward>";
    String backup = "<backup><duration>7.5</duration></backup>";
    List<Stroke> strokes =
        strokes(score(ATTRIBUTES + forward + decimal("6") + backup + decimal("1.5")));
    assertEquals(Position.START, strokes.get(0).onset());
    assertEquals(Position.ofQuarters(1, 8), strokes.get(1).onset());
  }

  @Test
  void divisions_of_half_a_quarter_make_each_of_them_a_half_note() throws UnreadableScore {
    assertEquals("2 1", lengths(strokes(score(divisions("0.5") + decimal("1") + decimal("0.5")))));
    assertEquals(
        "2/3 2/5",
        lengths(strokes(score(divisions("1.5") + decimal("1") + divisions("2.5") + decimal("1")))));
  }

  /** New notes are written in whole divisions, and the file's own hold again after them. */
  @Test
  void a_part_in_divisions_with_a_fraction_is_written_into() throws Exception {
    String flute = TwoParts.score(divisions("0.5") + "<note><rest/><duration>2</duration></note>");
    Document before = read(flute);
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, 4, 7));
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(
        List.of("1 [69] 1/4", "3/2 [69] 1/4", "5/4 [69] 1/4", "7/4 [69] 1/4"),
        TwoParts.strokes(after, "P2"));
    assertTrue(after.origin().text().contains("<divisions>0.5</divisions>"));
    assertEquals(1, after.score().bars().count());
    assertEquals(Length.ofQuarters(4, 1), after.score().bars().get(0).span().length());
    assertEquals(
        Rational.of(1, 2),
        after.origin().parts().get(1).measures().get(0).elements().stream()
            .reduce((first, last) -> last)
            .orElseThrow()
            .attributes()
            .divisions());
  }

  @Property(tries = 100)
  void a_bar_is_as_long_as_the_sum_of_its_durations_to_the_last_decimal(
      @ForAll @IntRange(min = 1, max = 40) int count,
      @ForAll @IntRange(min = 1, max = 99_999) int thousandths,
      @ForAll @IntRange(min = 1, max = 480) int divisions)
      throws UnreadableScore {
    String duration = thousandths / 1000 + ".%03d".formatted(thousandths % 1000);
    Length each = Length.ofQuarters(thousandths, 1000L * divisions);
    String notes =
        IntStream.range(0, count).mapToObj(i -> decimal(duration)).collect(Collectors.joining());
    Document document = read(score(divisions(Integer.toString(divisions)) + notes));
    assertEquals(each.times(Rational.of(count)), document.score().bars().get(0).span().length());
  }

  @Test
  void a_tempo_keeps_its_decimals() throws UnreadableScore {
    assertEquals("quarter = 66.67", tempo("<sound tempo=\"66.67\"/>"));
    assertEquals(
        "dotted quarter = 92.5",
        tempo(
            "<direction><direction-type><metronome><beat-unit>quarter</beat-unit><beat-unit-dot/>"
                + "<per-minute>92.5</per-minute></metronome></direction-type></direction>"));
  }

  /** Three eighths at 66.67 quarters a minute: 90 / 66.67 seconds. */
  @Test
  void the_clock_runs_by_the_decimals() throws UnreadableScore {
    Document document = read(score(ATTRIBUTES + "<sound tempo=\"66.67\"/>" + decimal("48")));
    assertEquals(
        Rational.of(9_000, 6_667), document.score().tempo().secondsAt(Position.ofQuarters(3, 2)));
  }

  private static String tempo(String mark) throws UnreadableScore {
    return read(score(ATTRIBUTES + mark + note("A", 4, 48, "")))
        .score()
        .tempo()
        .at(Position.START)
        .toString();
  }

  private static String divisions(String divisions) {
    return "<attributes><divisions>" + divisions + "</divisions></attributes>";
  }

  private static String decimal(String duration) {
    return note("A", 4, 0, "")
        .replace("<duration>0</duration>", "<duration>" + duration + "</duration>");
  }

  private static String lengths(List<Stroke> strokes) {
    return strokes.stream()
        .map(stroke -> stroke.length().quarters().toString())
        .collect(Collectors.joining(" "));
  }
}
