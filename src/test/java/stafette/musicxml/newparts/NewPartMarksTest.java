package stafette.musicxml.newparts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.musicxml.write.ByHand;
import stafette.musicxml.write.ScoreWriter;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;

/** What concerns all parts goes along from a new part's model into its bars, empty or not. */
class NewPartMarksTest {
  private static final String LINE = note("A", 4, 3, "").repeat(16);

  private static String direction(String types, String more) {
    return "<direction placement=\"above\">" + types + more + "</direction>";
  }

  private static String type(String content) {
    return "<direction-type>" + content + "</direction-type>";
  }

  private static List<String> oboe(String... model) throws Exception {
    return NewPartText.measures("oboe", model);
  }

  @Test
  void tempi_and_rehearsal_marks_stand_once_above_all_new_parts_or_in_each_part_as_in_the_score()
      throws Exception {
    String mark = direction(type("<rehearsal>B</rehearsal>"), "");
    assertEquals(2, marks(Xml.score(ATTRIBUTES + mark + LINE), "<rehearsal>"), "the top one");
    String second = "<part id=\"P2\"><measure number=\"1\">%s</measure></part></score-partwise>";
    String both =
        Xml.score(ATTRIBUTES + mark + LINE)
            .replace(
                "</part-list>",
                "<score-part id=\"P2\"><part-name>Harp</part-name></score-part></part-list>")
            .replace("</score-partwise>", second.formatted(ATTRIBUTES + mark + rest(48)));
    assertEquals(4, marks(both, "<rehearsal>"), "all four");
  }

  /** How many marks a score has after two players have got parts above it. */
  private static int marks(String score, String mark) throws Exception {
    Document page = MusicXmlReader.read(score.getBytes(StandardCharsets.UTF_8));
    Line line = ByHand.line(page.score(), "P1", "1");
    List<Player> players =
        List.of(
            ByHand.player("Flute 1", "flute", page.score()),
            ByHand.player("Flute 2", "flute", page.score()));
    int middle = line.count() / 2;
    Plan plan =
        new Plan(
            new Brief(line, players, Invented.rules()),
            List.of(new Segment(0, 0, 0, middle), new Segment(1, 0, middle, line.count() - 1)));
    byte[] written =
        ScoreWriter.write(
                page,
                plan,
                SourceTreatment.KEEP,
                player ->
                    Optional.of(
                        new PartPlace("P1", PartPlace.Side.ABOVE, PartPlace.Kinship.NONE, 0)))
            .bytes();
    return new String(written, StandardCharsets.UTF_8).split(mark, -1).length - 1;
  }

  @Test
  void rehearsal_marks_and_tempi_stand_in_bars_of_rest() throws Exception {
    String marks =
        direction(type("<rehearsal id=\"r1\">B</rehearsal>"), "")
            + direction(
                type("<words>Più mosso</words>")
                    + type(
                        "<metronome><beat-unit>quarter</beat-unit><per-minute>80</per-minute>"
                            + "</metronome>"),
                "<sound tempo=\"80\"/>");
    String bar = oboe(ATTRIBUTES + LINE, marks + rest(48)).get(1);
    assertTrue(bar.contains("<rehearsal>B</rehearsal>"), bar);
    assertTrue(bar.contains("<words>Più mosso</words>"), bar);
    assertTrue(bar.contains("<per-minute>80</per-minute>"), bar);
    assertTrue(bar.indexOf("rehearsal") < bar.indexOf("metronome"), bar);
    assertTrue(bar.indexOf("metronome") < bar.indexOf("<rest"), bar);
    assertFalse(bar.contains("<sound"), bar);
  }

  @Test
  void a_tempo_within_a_rest_stands_at_its_place() throws Exception {
    String tempo =
        direction(
            type("<metronome><beat-unit>half</beat-unit><per-minute>60</per-minute></metronome>"),
            "");
    String bar = oboe(ATTRIBUTES + LINE, rest(24) + tempo + rest(24)).get(1);
    assertTrue(bar.contains("<offset sound=\"yes\">"), bar);
    assertTrue(bar.indexOf("<direction") < bar.indexOf("<rest measure=\"yes\"/>"), bar);
  }

  @Test
  void what_concerns_the_model_alone_stays_there() throws Exception {
    String own =
        direction(type("<words>dolce</words>"), "")
            + direction(type("<wedge type=\"crescendo\"/>"), "")
            + direction(type("<pedal type=\"start\"/>"), "");
    assertFalse(oboe(ATTRIBUTES + LINE, own + rest(48)).get(1).contains("<direction"));
  }

  @Test
  void words_that_slow_down_go_along_without_a_sound() throws Exception {
    String bar =
        oboe(ATTRIBUTES + LINE, direction(type("<words>poco rit.</words>"), "") + rest(48)).get(1);
    assertTrue(bar.contains("poco rit."), bar);
  }

  @Test
  void signs_of_repetition_go_along() throws Exception {
    String segno = direction(type("<segno id=\"s1\"/>"), "<sound segno=\"1\"/>");
    String back = direction(type("<words>D.S. al Fine</words>"), "<sound dalsegno=\"1\"/>");
    List<String> bars = oboe(ATTRIBUTES + LINE, segno + rest(48), rest(48) + back);
    assertTrue(bars.get(1).contains("<segno/>"), bars.get(1));
    assertTrue(bars.get(2).contains("D.S. al Fine"), bars.get(2));
  }

  @Test
  void repeats_endings_and_double_bars_stand_at_empty_bars() throws Exception {
    String left =
        "<barline location=\"left\"><bar-style>heavy-light</bar-style><ending number=\"1\""
            + " type=\"start\"/><repeat direction=\"forward\"/></barline>";
    String right =
        "<barline location=\"right\"><bar-style>light-heavy</bar-style><fermata id=\"f1\"/>"
            + "<ending number=\"1\" type=\"stop\"/><repeat direction=\"backward\"/></barline>";
    String bar = oboe(ATTRIBUTES + LINE, left + rest(48) + right).get(1);
    assertTrue(bar.contains(left), bar);
    assertTrue(bar.contains(right.replace(" id=\"f1\"", "")), bar);
  }

  @Test
  void a_fermata_stands_over_an_empty_bar_as_over_the_note_that_is_held() throws Exception {
    String held = "<note><rest/><duration>48</duration><notations><fermata/></notations></note>";
    String bar = oboe(ATTRIBUTES + LINE, held).get(1);
    assertEquals(1, NewPartText.all("<fermata", bar).size(), bar);
    String harp = NewPartText.measures("harp", ATTRIBUTES + LINE, held).get(1);
    assertEquals(2, NewPartText.all("<fermata", harp).size(), harp);
  }
}
