package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.read;
import static stafette.musicxml.read.Xml.score;

import org.junit.jupiter.api.Test;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Score;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;

class BarsAndTempoTest {
  @Test
  void a_score_without_a_tempo_is_taken_at_120_and_says_so() throws UnreadableScore {
    Score score = read(score(ATTRIBUTES + note("A", 4, 48, ""))).score();
    assertFalse(score.tempoStated());
    assertEquals("quarter = 120", score.tempo().at(Position.START).toString());
  }

  @Test
  void a_metronome_mark_in_dotted_quarters_is_read() throws UnreadableScore {
    assertEquals(
        "dotted quarter = 92", tempoOf(metronome("quarter</beat-unit><beat-unit-dot/>", "92")));
  }

  @Test
  void a_mark_beats_a_differing_sound_tempo_at_the_same_place() throws UnreadableScore {
    assertEquals(
        "half = 60", tempoOf(metronome("half</beat-unit>", "60") + "<sound tempo=\"100\"/>"));
  }

  @Test
  void a_sound_tempo_alone_counts_in_quarters() throws UnreadableScore {
    assertEquals("quarter = 92.5", tempoOf("<sound tempo=\"92.5\"/>"));
  }

  @Test
  void words_around_the_number_of_a_mark_are_passed_over() throws UnreadableScore {
    assertEquals("quarter = 92", tempoOf(metronome("quarter</beat-unit>", "c. 92-96")));
  }

  @Test
  void a_tempo_of_zero_or_beyond_reason_is_passed_over() throws UnreadableScore {
    assertEquals("quarter = 120", tempoOf("<sound tempo=\"0\"/>"));
    assertEquals("quarter = 120", tempoOf("<sound tempo=\"1e99999999\"/>"));
  }

  @Test
  void a_mark_in_the_middle_of_a_bar_holds_from_its_beat() throws UnreadableScore {
    Score score =
        read(score(
                ATTRIBUTES + note("A", 4, 24, "") + "<sound tempo=\"60\"/>" + note("A", 4, 24, "")))
            .score();
    assertEquals(Rational.of(60), score.tempo().at(Position.ofQuarters(2, 1)).quartersPerMinute());
  }

  @Test
  void a_pickup_counts_its_beats_from_the_end() throws UnreadableScore {
    Score score =
        read(score(
                "<measure number=\"0\" implicit=\"yes\">"
                    + ATTRIBUTES
                    + note("A", 4, 12, "")
                    + "</measure>",
                "<measure number=\"1\">" + note("A", 4, 48, "") + "</measure>"))
            .score();
    assertEquals("bar 0, beat 4", score.bars().nameOf(Position.START).toString());
    assertEquals("bar 1, beat 1", score.bars().nameOf(Position.ofQuarters(1, 1)).toString());
  }

  @Test
  void additive_metres_have_a_beat_for_each_group() throws UnreadableScore {
    String attributes =
        "<attributes><divisions>12</divisions><time><beats>3+2</beats><beat-type>8</beat-type></time></attributes>";
    Score score = read(score(attributes + note("A", 4, 30, ""))).score();
    assertEquals(2, score.bars().get(0).beats().size());
    assertEquals(Length.ofQuarters(3, 2), score.bars().get(0).beats().get(0).length());
  }

  @Test
  void a_bar_without_anything_in_it_is_as_long_as_its_metre() throws UnreadableScore {
    Score score = read(score(ATTRIBUTES, "<measure number=\"2\"/>", note("A", 4, 48, ""))).score();
    assertEquals(Position.ofQuarters(8, 1), score.bars().get(2).span().start());
  }

  @Test
  void divisions_may_change_and_durations_may_have_a_point() throws UnreadableScore {
    String finer = "<attributes><divisions>24</divisions></attributes>";
    String half =
        "<note><pitch><step>A</step><octave>4</octave></pitch><duration>48.0</duration></note>";
    Score score = read(score(ATTRIBUTES + note("A", 4, 24, "") + finer + half)).score();
    assertEquals(Length.ofQuarters(4, 1), score.bars().get(0).span().length());
    assertTrue(score.parts().get(0).voices().get(0).strokes().size() == 2);
  }

  private static String tempoOf(String inMeasure) throws UnreadableScore {
    return read(score(ATTRIBUTES + inMeasure + note("A", 4, 48, "")))
        .score()
        .tempo()
        .at(Position.START)
        .toString();
  }

  private static String metronome(String unit, String perMinute) {
    return "<direction><direction-type><metronome><beat-unit>"
        + unit
        + "<per-minute>"
        + perMinute
        + "</per-minute></metronome></direction-type></direction>";
  }
}
