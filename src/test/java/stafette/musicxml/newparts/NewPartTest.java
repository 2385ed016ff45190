package stafette.musicxml.newparts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertIterableEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.Attributes;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.write.ByHand;
import stafette.musicxml.write.OfficialSchema;
import stafette.musicxml.write.ScoreWriter;
import stafette.musicxml.write.TwoParts;
import stafette.musicxml.write.WrittenScore;
import stafette.plan.Plan;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.Transposition;

/** A part for a player whom the score doesn't know is one like the others. */
class NewPartTest {
  private static final String KEY_OF_D =
      "<attributes><divisions>12</divisions><key><fifths>2</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";
  private static final String KEY_OF_E =
      "<attributes><key><fifths>4</fifths></key><time><beats>3</beats><beat-type>4</beat-type></time></attributes>";
  private static final String DOUBLE =
      "<barline location=\"right\"><bar-style>light-light</bar-style></barline>";

  /** A pickup, a bar in D major, one of three quarters in E major, and a last one. */
  private static Document before() throws UnreadableScore {
    String pickup =
        "<measure number=\"0\" implicit=\"yes\">" + KEY_OF_D + note("A", 4, 12, "") + "</measure>";
    return TwoParts.read(
        TwoParts.of(
            List.of(
                pickup,
                TwoParts.SIXTEENTHS + DOUBLE,
                KEY_OF_E + note("B", 4, 3, "").repeat(12),
                rest(36)),
            List.of(pickup, rest(48), KEY_OF_E + rest(36), rest(36))));
  }

  private static Document after(String name, String instrument) throws Exception {
    return written(before(), name, instrument);
  }

  /** A score once a new player has all of the piano's line. */
  private static Document written(Document before, String name, String instrument)
      throws Exception {
    int bars = before.score().bars().count();
    Line line = ByHand.line(before.score(), "P1", "#1-#" + bars);
    Plan plan =
        new Plan(
            new stafette.plan.Brief(
                line,
                List.of(ByHand.player(name, instrument, before.score())),
                stafette.Invented.rules()),
            List.of(new stafette.plan.Segment(0, 0, 0, line.count() - 1)));
    WrittenScore written =
        ScoreWriter.write(
            before, plan, SourceTreatment.KEEP, player -> Optional.of(PartPlace.below("P1")));
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, name));
    return after;
  }

  @Test
  void lengths_for_which_a_tuplet_would_be_too_large_stand_without_one() throws Exception {
    String prime = KEY_OF_D.replace(">12<", ">1009<");
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(prime + note("A", 4, 1, "") + note("A", 4, 1008, "") + rest(3027)),
                List.of(rest(4))));
    assertTrue(written(before, "Oboe 1", "oboe").score().part("Oboe 1").isPresent());
  }

  private static Attributes inBar(Document document, int part, int bar) {
    List<Origin.ElementText> elements =
        document.origin().parts().get(part).measures().get(bar).elements();
    return elements.get(elements.size() - 1).attributes();
  }

  @Test
  void a_part_in_b_flat_sounds_right_and_has_its_own_keys() throws Exception {
    Document after = after("Clarinet", "clarinet in B-flat");
    assertEquals(new Transposition(-1, -2), inBar(after, 1, 1).transposition());
    assertEquals(4, inBar(after, 1, 1).fifths());
    assertEquals(6, inBar(after, 1, 2).fifths());
    assertEquals("3/4", inBar(after, 1, 2).time());
    assertEquals(List.of("G2"), inBar(after, 1, 0).clefs());
  }

  @Test
  void a_part_that_sounds_octaves_away_says_so() throws Exception {
    assertEquals(
        new Transposition(7, 12), inBar(after("Piccolo", "piccolo"), 1, 1).transposition());
    assertEquals(
        new Transposition(-7, -12), inBar(after("Bass", "double bass"), 1, 1).transposition());
  }

  private static String key(int fifths) {
    return "<attributes><key><fifths>" + fifths + "</fifths></key></attributes>";
  }

  private static final String SHARP_F =
      "<note><pitch><step>F</step><alter>1</alter><octave>5</octave></pitch><duration>3</duration></note>";

  @Test
  void a_key_that_changes_within_a_bar_changes_there() throws Exception {
    String eight = SHARP_F.repeat(8);
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(Xml.ATTRIBUTES + eight + key(1) + eight, eight + eight + key(0), eight),
                List.of(Xml.ATTRIBUTES + rest(48), rest(48), rest(48))));
    Document after = written(before, "Oboe", "oboe");
    String oboe = after.origin().parts().get(1).whole().in(after.origin().text());
    assertEquals(2, oboe.split("<accidental>", -1).length - 1, oboe);
    assertEquals(1, inBar(after, 1, 0).fifths());
    assertEquals(1, inBar(after, 1, 1).fifths());
    assertEquals(0, inBar(after, 1, 2).fifths());
    List<Origin.ElementText> first = after.origin().parts().get(1).measures().get(0).elements();
    assertEquals(0, first.get(1).attributes().fifths());
  }

  @Test
  void a_part_in_which_a_key_changes_within_a_bar_is_written_the_same_again() throws Exception {
    String eight = SHARP_F.repeat(8);
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(Xml.ATTRIBUTES + eight + key(1) + eight),
                List.of(Xml.ATTRIBUTES + rest(48))));
    Document after = written(before, "Oboe", "oboe");
    assertEquals(after.origin().text(), written(after, "Oboe", "oboe").origin().text());
  }

  @Test
  void a_part_in_which_a_key_changes_under_a_long_note_is_written_the_same_again()
      throws Exception {
    String dotted = note("C", 5, 36, "");
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(Xml.ATTRIBUTES + SHARP_F.repeat(4) + dotted),
                List.of(Xml.ATTRIBUTES + rest(24) + key(1) + rest(24))));
    Document after =
        MusicXmlReader.read(
            TwoParts.write(before, TwoParts.plan(before, 0, 4), SourceTreatment.KEEP).bytes());
    assertIterableEquals(before.score().bars(), after.score().bars());
  }

  @Test
  void a_key_that_changes_under_a_long_note_changes_after_it() throws Exception {
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(
                    Xml.ATTRIBUTES
                        + note("C", 5, 36, "")
                        + "<backup><duration>12</duration></backup>"
                        + key(2)
                        + "<forward><duration>12</duration></forward>"
                        + note("D", 5, 12, "")),
                List.of(Xml.ATTRIBUTES + rest(48))));
    Document after = written(before, "Oboe", "oboe");
    assertEquals(2, inBar(after, 1, 0).fifths());
  }

  @Test
  void a_time_that_changes_within_a_bar_counts_from_the_next_one() throws Exception {
    String time = "<attributes><time><beats>3</beats><beat-type>4</beat-type></time></attributes>";
    String half = note("A", 4, 3, "").repeat(8);
    Document before =
        TwoParts.read(
            TwoParts.of(
                List.of(KEY_OF_D + half + time + half, note("A", 4, 3, "").repeat(12)),
                List.of(KEY_OF_D + rest(48), rest(36))));
    Document after = written(before, "Oboe", "oboe");
    assertIterableEquals(before.score().bars(), after.score().bars());
    List<Integer> beats = new ArrayList<>();
    Matcher found =
        Pattern.compile("<beats>(\\d)")
            .matcher(after.origin().parts().get(1).whole().in(after.origin().text()));
    found.results().forEach(beat -> beats.add(Integer.parseInt(beat.group(1))));
    assertEquals(List.of(4, 3), beats);
  }

  @Test
  void a_low_instrument_has_a_clef_that_its_players_read_for_these_notes() throws Exception {
    assertEquals(List.of("C4"), inBar(after("Bassoon", "bassoon"), 1, 1).clefs());
    assertEquals(List.of("C3"), inBar(after("Viola", "viola"), 1, 1).clefs());
  }

  @Test
  void bars_have_the_same_numbers_barlines_and_lengths() throws Exception {
    Document after = after("Oboe", "oboe");
    Origin origin = after.origin();
    assertEquals(before().score().bars().get(0), after.score().bars().get(0));
    assertEquals(before().score().bars().get(2), after.score().bars().get(2));
    List<Origin.MeasureText> measures = origin.parts().get(1).measures();
    assertEquals(
        "<measure number=\"0\" implicit=\"yes\">", measures.get(0).startTag().in(origin.text()));
    assertTrue(measures.get(1).whole().in(origin.text()).contains(DOUBLE));
    assertTrue(measures.get(3).whole().in(origin.text()).contains("<rest measure=\"yes\"/>"));
  }

  @Test
  void it_stands_after_its_neighbour_in_list_and_score_alike() throws Exception {
    Document after = after("Oboe", "oboe");
    assertEquals(
        List.of("Piano", "Oboe", "Flute"),
        after.score().parts().stream().map(part -> part.name()).toList());
    String list = after.origin().partList().in(after.origin().text());
    assertTrue(list.indexOf("Piano") < list.indexOf("Oboe"));
    assertTrue(list.indexOf("Oboe") < list.indexOf("Flute"));
  }

  @Test
  void new_parts_have_ids_that_nothing_else_has() throws Exception {
    Document after = after("Oboe", "oboe");
    List<String> ids = after.score().parts().stream().map(part -> part.id()).toList();
    assertEquals(ids.size(), ids.stream().distinct().count());
    assertEquals(List.of("P1", "P3", "P2"), ids);
  }
}
