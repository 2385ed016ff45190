package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Articulation;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Slurring;
import stafette.score.Stroke;

/** Slurs that a line was given, in the parts of those who play it. */
class NewSlursTest {
  private static final String DOT =
      "<notations><articulations><staccato/></articulations></notations>";
  private static final String SLUR_BEGINS = "<notations><slur type=\"start\"/></notations>";
  private static final String SLUR_ENDS = "<notations><slur type=\"stop\"/></notations>";

  /** A scale up and down in sixteenths with dots, the second beat slurred already. */
  private static String bar() {
    return IntStream.range(0, 16)
        .mapToObj(
            i ->
                note(
                    String.valueOf("CDEFGABAGFEDCDEF".charAt(i)),
                    4,
                    3,
                    i == 4 ? SLUR_BEGINS : i == 7 ? SLUR_ENDS : i > 4 && i < 7 ? "" : DOT))
        .collect(Collectors.joining());
  }

  private static Document score() throws Exception {
    return TwoParts.read(
        TwoParts.of(List.of(ATTRIBUTES + bar(), bar()), List.of(ATTRIBUTES + rest(48), rest(48))));
  }

  private static Line line(Document score, Slurring slurring) throws Exception {
    return slurring.of(ByHand.line(score.score(), "P1", "#1-#2"));
  }

  private static Plan plan(Document score, Line line) {
    List<Player> players =
        List.of(
            ByHand.player("Piano", "piano", score.score()),
            ByHand.player("Flute", "flute", score.score()),
            ByHand.player("Oboe", "oboe", score.score()));
    return new Plan(
        new Brief(line, players, Invented.rules()),
        List.of(new Segment(1, 0, 0, 10), new Segment(0, 0, 10, 24), new Segment(2, 0, 24, 31)));
  }

  @ParameterizedTest
  @EnumSource(SourceTreatment.class)
  void they_are_read_back_as_they_were_planned(SourceTreatment treatment) throws Exception {
    Document before = score();
    for (Slurring slurring : Slurring.changes()) {
      Plan plan = plan(before, line(before, slurring));
      WrittenScore written = TwoParts.write(before, plan, treatment);
      assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
      Document after = MusicXmlReader.read(written.bytes());
      for (Segment segment : plan.segments()) {
        assertEquals(
            withoutLastDot(planned(plan, segment)),
            withoutLastDot(strokes(ByHand.partOf(plan.player(segment), after.score()))),
            slurring + " " + segment);
      }
      Plan again = plan(after, plan.line());
      assertEquals(List.of(), TwoParts.write(after, again, treatment).replacements());
    }
  }

  @Test
  void where_the_lines_own_player_has_no_share_its_part_stays_as_it_is() throws Exception {
    Document before = score();
    Line line = line(before, Slurring.PAIRS);
    Plan plan = TwoParts.plan(before, line, "Flute", 0, 31);
    Document after = MusicXmlReader.read(TwoParts.write(before, plan).bytes());
    assertEquals(text(before), text(after));
    assertEquals(32, strokes(ByHand.partOf(plan.brief().players().get(0), after.score())).size());
  }

  @Test
  void a_line_as_written_gets_none() throws Exception {
    Document before = score();
    Document after =
        MusicXmlReader.read(
            TwoParts.write(before, plan(before, line(before, Slurring.AS_WRITTEN))).bytes());
    assertEquals(0, text(after).split("<slur", -1).length - 1 - 2);
    assertFalse(text(after).contains("<notations></notations>"));
  }

  private static String text(Document document) {
    return document.origin().parts().get(0).whole().in(document.origin().text());
  }

  /** A segment's strokes, slurs cut off where the player begins and ends. */
  private static List<String> planned(Plan plan, Segment segment) {
    return IntStream.rangeClosed(segment.first(), segment.last())
        .mapToObj(
            j ->
                told(
                    plan.line().stroke(j),
                    j > segment.first() && plan.line().stroke(j).slurred(),
                    j < segment.last() && plan.line().stroke(j).slurContinues()))
        .toList();
  }

  /** A landing note is an eighth; one from which the slur would have gone on may be dotted. */
  private static List<String> withoutLastDot(List<String> strokes) {
    List<String> all = new ArrayList<>(strokes);
    all.set(all.size() - 1, all.get(all.size() - 1).replace(" dotted", "").replace(" 1/2", " 1/4"));
    return all;
  }

  private static List<String> strokes(Part part) {
    return part.voices().stream()
        .flatMap(voice -> voice.strokes().stream())
        .map(stroke -> told(stroke, stroke.slurred(), stroke.slurContinues()))
        .toList();
  }

  private static String told(Stroke stroke, boolean slurred, boolean continues) {
    boolean dotted = stroke.articulations().contains(Articulation.STACCATO);
    return TwoParts.heard(stroke)
        + (slurred ? " slurred" : "")
        + (continues ? " goes on" : "")
        + (dotted ? " dotted" : "");
  }
}
