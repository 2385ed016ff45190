package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.read;
import static stafette.musicxml.read.Xml.rest;
import static stafette.musicxml.read.Xml.score;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Score;
import stafette.score.ToneChoice;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Rank;
import stafette.time.Rational;

class BarGroupsTest {
  private static final int SIXTEENTH = 3;
  private static final int EIGHTH = 6;
  private static final int QUARTER = 12;

  @Test
  void beams_say_the_groups_of_seven_eighths() throws UnreadableScore {
    assertEquals("2+2+3", eighths("7", beamed(SIXTEENTH, 4, 4, 6)));
    assertEquals("3+2+2", eighths("7", beamed(EIGHTH, 3, 2, 2)));
    assertEquals("2+3", eighths("5", beamed(SIXTEENTH, 4, 6)));
    assertEquals("3+3+2+3", eighths("11", beamed(EIGHTH, 3, 3, 2, 3)));
    assertEquals("5+5", eighths("10", beamed(SIXTEENTH, 10, 10)));
  }

  @Test
  void sixteenths_may_be_the_unit() throws UnreadableScore {
    Bar bar = bar("5", "16", beamed(SIXTEENTH, 3, 2));
    assertEquals(List.of(Length.ofQuarters(3, 4), Length.ofQuarters(1, 2)), bar.counted().beats());
  }

  @Test
  void strokes_are_strong_where_groups_begin_and_weak_within_them() throws UnreadableScore {
    Score score = read(score(time("7", "8") + beamed(SIXTEENTH, 4, 4, 6))).score();
    var part = score.parts().get(0);
    var voice = part.voices().get(0);
    var line = score.line(part, voice, voice.strokes(), new ToneChoice.All());
    Rank in = Rank.ELSEWHERE;
    assertEquals(
        List.of(
            Rank.BAR, in, Rank.HALF, in, Rank.BEAT, in, Rank.HALF, in, Rank.BEAT, in, Rank.HALF, in,
            Rank.HALF, in),
        IntStream.range(0, line.count()).mapToObj(line::rank).toList());
    assertEquals("bar 1, beat 3", score.bars().nameOf(line.stroke(8).onset()).toString());
    assertEquals(750_000, line.beatMicros(8));
    assertEquals(500_000, line.beatMicros(7));
  }

  @Test
  void the_eighths_of_a_group_of_five_are_alike() throws UnreadableScore {
    Bar bar = bar("10", "8", beamed(SIXTEENTH, 10, 10));
    assertEquals(Rank.HALF, bar.rankOf(bar.span().start().plus(Length.ofQuarters(1, 1))));
    assertEquals(Rank.ELSEWHERE, bar.rankOf(bar.span().start().plus(Length.ofQuarters(5, 4))));
  }

  @Test
  void accents_say_them_where_nothing_is_beamed() throws UnreadableScore {
    assertEquals("3+2", eighths("5", accented(5, 0, 3)));
    assertEquals("2+3", eighths("5", accented(5, 2)));
  }

  @Test
  void beams_outweigh_accents() throws UnreadableScore {
    String accentsAgainst = accented(5, 3) + back(5 * EIGHTH) + inVoice("2", beamed(EIGHTH, 2, 3));
    assertEquals("2+3", eighths("5", accentsAgainst));
  }

  @Test
  void without_beams_or_accents_or_with_accents_everywhere_each_eighth_is_a_beat()
      throws UnreadableScore {
    String each = "1+1+1+1+1";
    assertEquals(each, eighths("5", accented(5)));
    assertEquals(each, eighths("5", accented(5, 0, 1, 2, 3, 4)));
    assertEquals(each, eighths("5", beamed(EIGHTH, 5)));
    assertEquals(each, eighths("5", beamed(SIXTEENTH, 2, 2, 2, 2, 2)));
  }

  @Test
  void what_stands_between_beams_is_a_group_or_several() throws UnreadableScore {
    assertEquals("2+2+3", eighths("7", beamed(EIGHTH, 2) + plain(QUARTER) + beamed(EIGHTH, 3)));
    assertEquals("2+2+3", eighths("7", plain(QUARTER) + plain(QUARTER) + beamed(EIGHTH, 3)));
    assertEquals("3+2", eighths("5", beamed(EIGHTH, 3) + rest(QUARTER)));
    assertEquals("2+3+2", eighths("7", plain(QUARTER) + plain(QUARTER + EIGHTH) + beamed(3, 4)));
  }

  @Test
  void an_eighth_alone_belongs_to_the_shorter_group_beside_it() throws UnreadableScore {
    assertEquals("3+2+2", eighths("7", rest(EIGHTH) + beamed(EIGHTH, 2, 2, 2)));
    assertEquals("2+2+3", eighths("7", beamed(EIGHTH, 2, 2, 2) + plain(EIGHTH)));
    assertEquals(
        "2+2+3",
        eighths("7", beamed(EIGHTH, 2) + rest(EIGHTH) + beamed(SIXTEENTH, 2) + beamed(EIGHTH, 3)));
  }

  @Test
  void beams_that_end_within_an_eighth_say_nothing_there() throws UnreadableScore {
    assertEquals(
        "2+3", eighths("5", beamed(SIXTEENTH, 3) + rest(SIXTEENTH) + beamed(SIXTEENTH, 6)));
  }

  @Test
  void under_one_beam_the_broken_inner_ones_say_the_groups() throws UnreadableScore {
    String notes =
        IntStream.range(0, 14)
            .mapToObj(
                i ->
                    note(
                        "A",
                        4,
                        SIXTEENTH,
                        beam(1, state(i, 0, 13))
                            + beam(
                                2,
                                i < 4 ? state(i, 0, 3) : i < 8 ? state(i, 4, 7) : state(i, 8, 13))))
            .collect(Collectors.joining());
    assertEquals("2+2+3", eighths("7", notes));
  }

  @Test
  void the_voice_with_most_beamed_notes_decides() throws UnreadableScore {
    String slow = beamed(EIGHTH, 3, 2, 2) + back(7 * EIGHTH);
    assertEquals("2+2+3", eighths("7", slow + inVoice("2", beamed(SIXTEENTH, 4, 4, 6))));
  }

  @Test
  void metres_that_say_their_groups_and_bars_that_are_cut_are_left_alone() throws UnreadableScore {
    assertEquals("3+3", eighths("6", beamed(EIGHTH, 2, 2, 2)));
    assertEquals("3+2+2", eighths("3+2+2", beamed(EIGHTH, 2, 2, 3)));
    Bar cut = bar("7", "8", beamed(EIGHTH, 2, 3));
    assertEquals(cut.meter(), cut.counted());
    Bar four = bar("4", "4", beamed(EIGHTH, 3, 3, 2));
    assertEquals(four.meter(), four.counted());
  }

  private static String eighths(String beats, String notes) throws UnreadableScore {
    return bar(beats, "8", notes).counted().beats().stream()
        .map(beat -> beat.quarters().times(Rational.of(2)).toString())
        .collect(Collectors.joining("+"));
  }

  private static Bar bar(String beats, String beatType, String notes) throws UnreadableScore {
    return read(score(time(beats, beatType) + notes)).score().bars().get(0);
  }

  private static String time(String beats, String beatType) {
    return "<attributes><divisions>12</divisions><time><beats>"
        + beats
        + "</beats><beat-type>"
        + beatType
        + "</beat-type></time></attributes>";
  }

  private static String beamed(int duration, Integer... groups) {
    return Stream.of(groups)
        .flatMap(
            size ->
                IntStream.range(0, size)
                    .mapToObj(i -> note("A", 4, duration, beam(1, state(i, 0, size - 1)))))
        .collect(Collectors.joining());
  }

  private static String state(int i, int first, int last) {
    return i == first ? "begin" : i == last ? "end" : "continue";
  }

  private static String beam(int number, String state) {
    return "<beam number=\"" + number + "\">" + state + "</beam>";
  }

  private static String plain(int duration) {
    return note("A", 4, duration, "");
  }

  private static String accented(int eighths, Integer... accents) {
    String accent = "<notations><articulations><accent/></articulations></notations>";
    return IntStream.range(0, eighths)
        .mapToObj(i -> note("A", 4, EIGHTH, List.of(accents).contains(i) ? accent : ""))
        .collect(Collectors.joining());
  }

  private static String back(int duration) {
    return "<backup><duration>" + duration + "</duration></backup>";
  }

  private static String inVoice(String voice, String notes) {
    return notes.replace("</duration>", "</duration><voice>" + voice + "</voice>");
  }
}
