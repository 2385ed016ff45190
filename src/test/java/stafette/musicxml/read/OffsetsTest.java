package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.read;
import static stafette.musicxml.read.Xml.score;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Where in a measure a direction or a sound holds: at the cursor, moved by its offset in divisions;
 * the offset of a direction moves its sound only if it says so (MusicXML 4.0, element offset).
 */
class OffsetsTest {
  private static final String QUARTER = note("A", 4, 12, "");

  @Test
  void a_sound_holds_from_where_it_stands_in_its_own_bar() throws UnreadableScore {
    assertEquals("0=60 5=90", tempi(sound(60, "") + full(), QUARTER + sound(90, "") + rest(3)));
  }

  @Test
  void its_offset_moves_it_on_from_there() throws UnreadableScore {
    assertEquals("0=60 6=90", tempi(sound(60, "") + full(), QUARTER + sound(90, "12") + rest(3)));
  }

  @Test
  void an_offset_below_zero_may_lead_back_into_the_bar_before() throws UnreadableScore {
    assertEquals("0=60 7/2=90", tempi(sound(60, "") + full(), sound(90, "-6") + full()));
  }

  @Test
  void no_offset_leads_out_of_the_score() throws UnreadableScore {
    assertEquals("0=60", tempi(sound(60, "-48") + full()));
  }

  @Test
  void an_offset_may_be_a_fraction_of_a_division() throws UnreadableScore {
    assertEquals("0=60 9/8=90", tempi(sound(60, "") + QUARTER + sound(90, "1.5") + rest(3)));
  }

  @Test
  void the_offset_of_a_direction_is_its_sounds_too() throws UnreadableScore {
    String direction = direction("<offset sound=\"yes\">12</offset>" + sound(90, ""));
    assertEquals("0=60 2=90", tempi(sound(60, "") + QUARTER + direction + rest(3)));
  }

  @Test
  void an_offset_that_is_for_the_eye_alone_moves_nothing() throws UnreadableScore {
    String direction = direction("<offset sound=\"no\">12</offset>" + sound(90, ""));
    assertEquals("0=60 1=90", tempi(sound(60, "") + QUARTER + direction + rest(3)));
  }

  @Test
  void the_offset_of_a_sound_goes_before_that_of_its_direction() throws UnreadableScore {
    String direction = direction("<offset sound=\"yes\">12</offset>" + sound(90, "24"));
    assertEquals("0=60 3=90", tempi(sound(60, "") + QUARTER + direction + rest(3)));
  }

  @Test
  void a_metronome_mark_is_moved_with_its_direction() throws UnreadableScore {
    String mark =
        "<metronome><beat-unit>quarter</beat-unit><per-minute>92.5</per-minute></metronome>";
    assertEquals(
        "0=60 2=185/2",
        tempi(
            sound(60, "")
                + QUARTER
                + "<direction><direction-type>"
                + mark
                + "</direction-type><offset>12</offset></direction>"
                + rest(3)));
  }

  @Test
  void a_dynamic_mark_holds_from_where_its_offset_puts_it() throws UnreadableScore {
    String piano =
        "<direction><direction-type><dynamics><pp/></dynamics></direction-type>"
            + "<offset>12</offset></direction>";
    List<Stroke> strokes = Xml.strokes(score(ATTRIBUTES + piano + full()));
    assertEquals(
        "MF PP PP PP",
        strokes.stream().map(stroke -> stroke.dynamic().name()).collect(Collectors.joining(" ")));
  }

  /** The tempi in quarters a minute, by the quarter from which each holds. */
  private static String tempi(String... measures) throws UnreadableScore {
    measures[0] = ATTRIBUTES + measures[0];
    Score score = read(score(measures)).score();
    Rational end = score.bars().get(score.bars().count() - 1).span().end().quarters();
    return score.tempo().within(new Span(Position.START, new Position(end))).entrySet().stream()
        .map(mark -> mark.getKey().quarters() + "=" + mark.getValue().quartersPerMinute())
        .collect(Collectors.joining(" "));
  }

  private static String sound(int tempo, String offset) {
    return offset.isEmpty()
        ? "<sound tempo=\"" + tempo + "\"/>"
        : "<sound tempo=\"" + tempo + "\"><offset>" + offset + "</offset></sound>";
  }

  private static String direction(String rest) {
    return "<direction><direction-type><words>x</words></direction-type>" + rest + "</direction>";
  }

  private static String full() {
    return QUARTER.repeat(4);
  }

  private static String rest(int quarters) {
    return Xml.rest(12 * quarters);
  }
}
