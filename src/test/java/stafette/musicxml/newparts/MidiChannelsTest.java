package stafette.musicxml.newparts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.write.ByHand;
import stafette.musicxml.write.OfficialSchema;
import stafette.musicxml.write.ScoreWriter;
import stafette.musicxml.write.TwoParts;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;

/** Which MIDI channel each new part gets. General MIDI keeps the tenth for percussion. */
class MidiChannelsTest {
  private static final Pattern CHANNEL = Pattern.compile("<midi-channel>(\\d+)</midi-channel>");

  /** A score whose parts state these channels, or none where it is 0; the first has a line. */
  private static Document score(int... channels) throws UnreadableScore {
    StringBuilder list = new StringBuilder();
    StringBuilder parts = new StringBuilder();
    for (int i = 0; i < channels.length; i++) {
      String id = "P" + (i + 1);
      list.append("<score-part id=\"" + id + "\"><part-name>Bell " + i + "</part-name>");
      list.append("<score-instrument id=\"" + id + "-I1\"><instrument-name>bell</instrument-name>");
      list.append("</score-instrument>");
      if (channels[i] > 0) {
        list.append("<midi-instrument id=\"" + id + "-I1\"><midi-channel>" + channels[i]);
        list.append("</midi-channel></midi-instrument>");
      }
      list.append("</score-part>\n");
      parts.append("<part id=\"" + id + "\"><measure number=\"1\">" + Xml.ATTRIBUTES);
      parts.append(TwoParts.SIXTEENTHS + "</measure></part>\n");
    }
    return MusicXmlReader.read(
        ("<score-partwise version=\"4.0\">\n<part-list>\n"
                + list
                + "</part-list>\n"
                + parts
                + "</score-partwise>\n")
            .getBytes(StandardCharsets.UTF_8));
  }

  /** The channels of new parts for these instruments, all after the same part. */
  private static List<Integer> channels(Document score, String... instruments) throws Exception {
    Line line = ByHand.line(score.score(), "P1", "1");
    List<Player> players = new ArrayList<>();
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < instruments.length; i++) {
      players.add(ByHand.player("New " + i, instruments[i], score.score()));
      segments.add(new Segment(i, 0, i % 16, i % 16));
    }
    segments.sort(Comparator.comparing(Segment::first));
    Plan plan = new Plan(new Brief(line, players, Invented.rules()), segments);
    byte[] written =
        ScoreWriter.write(
                score, plan, SourceTreatment.KEEP, player -> Optional.of(PartPlace.below("P1")))
            .bytes();
    assertEquals(List.of(), OfficialSchema.errors(written));
    String text = new String(written, StandardCharsets.UTF_8);
    return IntStream.range(0, instruments.length)
        .map(i -> text.indexOf("<part-name>New " + i + "<"))
        .mapToObj(at -> CHANNEL.matcher(text.substring(at)))
        .map(found -> found.find() ? Integer.parseInt(found.group(1)) : 0)
        .toList();
  }

  private static String[] flutes(int count) {
    return Collections.nCopies(count, "flute").toArray(String[]::new);
  }

  @Test
  void new_parts_at_one_place_have_a_channel_each() throws Exception {
    assertEquals(List.of(2, 3, 4), channels(score(1), flutes(3)));
  }

  @Test
  void no_new_part_has_a_channel_that_another_part_states() throws Exception {
    assertEquals(List.of(1, 3, 4, 6), channels(score(5, 2), flutes(4)));
  }

  @Test
  void the_tenth_is_left_to_percussion_and_the_eleventh_is_dealt_out_once() throws Exception {
    assertEquals(List.of(8, 9, 11, 12), channels(score(1, 2, 3, 4, 5, 6, 7), flutes(4)));
  }

  @Test
  void drums_have_the_tenth_and_take_no_other() throws Exception {
    assertEquals(
        List.of(10, 2, 10, 3), channels(score(1), "snare drum", "flute", "snare drum", "flute"));
  }

  @Test
  void fifteen_new_parts_beside_drums_have_all_other_channels() throws Exception {
    List<Integer> channels = channels(score(10), flutes(15));
    assertEquals(IntStream.rangeClosed(1, 16).filter(i -> i != 10).boxed().toList(), channels);
  }

  @Test
  void once_all_are_taken_those_with_the_fewest_parts_are_shared() throws Exception {
    Document full = score(1, 1, 2, 2, 3, 4, 5, 6, 7, 8, 9, 11, 12, 13, 14, 15, 16);
    assertEquals(List.of(3, 4, 5), channels(full, flutes(3)));
    assertEquals(16, channels(full, flutes(13)).get(12));
    assertEquals(List.of(1, 2), channels(score(2), flutes(16)).subList(14, 16));
  }

  @Test
  void parts_that_state_none_are_taken_to_have_the_next_free_ones() throws Exception {
    assertEquals(List.of(5, 6), channels(score(0, 1, 0, 2), flutes(2)));
  }
}
