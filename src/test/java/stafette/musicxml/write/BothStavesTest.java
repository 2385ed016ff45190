package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.Part;
import stafette.score.Reading;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.score.TremoloReading;

/** A line that two hands share is written back on both staves; pages of our own. */
class BothStavesTest {
  @Test
  void what_is_removed_is_gone_from_both_hands_and_the_rest_stays() throws Exception {
    Document page = page(".A.A.A.A.A.A.A.A", "A.A.A.A.A.A.A.A.", "D...............");
    Document after = write(page, SourceTreatment.REMOVE, 15);
    assertEquals(Set.of("0 [50]"), heard(part(after, "Piano")));
    assertEquals(heard(line(page)), heard(part(after, "Flute")));
  }

  @Test
  void a_cued_line_can_be_read_again_from_both_hands() throws Exception {
    Document page = page(".A.A.A.A.A.A.A.A", "A.A.A.A.A.A.A.A.", "................");
    byte[] cued = bytes(page, SourceTreatment.CUE, 15);
    Document withCues =
        MusicXmlReader.read(
            cued, Tremolo.AS_WRITTEN, (part, line, three) -> TremoloReading.MEASURED, true);
    assertEquals(heard(line(page)), heard(line(withCues)));
    Document sounding = MusicXmlReader.read(cued);
    assertEquals(Set.of(), heard(part(sounding, "Piano")));
  }

  @Test
  void notes_of_broken_octaves_that_were_moved_are_taken_out_too() throws Exception {
    Document page = page("A.A.A.A.A.A.A.A.", "................", ".A.A.A.A.A.A.A.A");
    Line line =
        new LineChoice(
                "Piano",
                Optional.empty(),
                List.of(1, 2),
                List.of("1", "3"),
                Optional.of(new ToneChoice.All()),
                Reading.UPPER)
            .take(page.score());
    Player flute = ByHand.player("Flute", "flute", page.score());
    Plan plan =
        new Plan(
            new Brief(line, List.of(flute), Invented.rules()), List.of(new Segment(0, 0, 0, 15)));
    Document after = MusicXmlReader.read(twice(page, plan, SourceTreatment.REMOVE));
    assertEquals(Set.of(), heard(part(after, "Piano")));
    assertEquals(heard(line), heard(part(after, "Flute")));
  }

  /** The left hand's eighth before the join lasts into a note of its key in the right hand. */
  @Test
  void a_note_holds_only_strokes_of_its_own_voice() throws Exception {
    Document page = page(".A.A.A.A.A.A.A.A", "a.a.a.a.a.a.a.a.", "................");
    Line line = line(page);
    Player piano = ByHand.player("Piano", "piano", page.score());
    Player flute = ByHand.player("Flute", "flute", page.score());
    Plan plan =
        new Plan(
            new Brief(line, List.of(flute, piano), Invented.rules()),
            List.of(new Segment(0, 0, 0, 7), new Segment(1, 0, 7, 15)));
    Document after = MusicXmlReader.read(twice(page, plan, SourceTreatment.REMOVE));
    assertEquals(heard(line.strokes().subList(0, 8)), heard(part(after, "Flute")));
    assertEquals(heard(line.strokes().subList(7, 16)), heard(part(after, "Piano")));
  }

  /** Both hands number their slurs 1; the piano keeps the first five chords. */
  @Test
  void a_slur_of_one_hand_does_not_end_in_the_other() throws Exception {
    String start = "<notations><slur number=\"1\" type=\"start\"/></notations>";
    String stop = "<notations><slur number=\"1\" type=\"stop\"/></notations>";
    Document page =
        MusicXmlReader.read(
            score(
                hands(quarters(4, 1, "", "", "", start), quarters(3, 2, "", "", "", start)),
                hands(quarters(4, 1, stop, "", "", ""), quarters(3, 2, "", stop, "", ""))));
    Line line = line(page);
    Player piano = ByHand.player("Piano", "piano", page.score());
    Player flute = ByHand.player("Flute", "flute", page.score());
    Plan plan =
        new Plan(
            new Brief(line, List.of(piano, flute), Invented.rules()),
            List.of(new Segment(0, 0, 0, 4), new Segment(1, 0, 4, 7)));
    Part after = part(MusicXmlReader.read(twice(page, plan, SourceTreatment.REMOVE)), "Piano");
    for (int hand = 1; hand <= 2; hand++) {
      List<Stroke> strokes = staff(after, hand);
      assertEquals(5, strokes.size());
      assertEquals(
          List.of(3),
          IntStream.range(0, 5).filter(i -> strokes.get(i).slurContinues()).boxed().toList());
    }
  }

  private static List<Stroke> staff(Part part, int staff) {
    return part.voices().stream()
        .filter(voice -> voice.staff() == staff)
        .flatMap(voice -> voice.strokes().stream())
        .toList();
  }

  private static String quarters(int octave, int hand, String... notations) {
    StringBuilder text = new StringBuilder();
    for (String each : notations) {
      text.append("<note><pitch><step>A</step><octave>").append(octave);
      text.append("</octave></pitch><duration>4</duration><voice>").append(hand);
      text.append("</voice><staff>").append(hand).append("</staff>").append(each).append("</note>");
    }
    return text.toString();
  }

  @Property(tries = 80)
  void nothing_is_lost_and_nothing_sounds_twice(
      @ForAll @Size(min = 16, max = 16) List<Hit> hits,
      @ForAll SourceTreatment treatment,
      @ForAll @IntRange(min = 0, max = 1) int own)
      throws Exception {
    String upper = "A" + text(hits, true).substring(1);
    String lower = text(hits, false).substring(0, 15) + "G";
    Document page = page(upper, lower, "D.......D.......");
    int last = line(page).count() - 1;
    Document after =
        own == 0
            ? write(page, treatment, last)
            : write(page, treatment, last, "Piano", 0, last / 2);
    assertEquals(Set.of(), lost(page, after));
    if (treatment != SourceTreatment.KEEP || own == 1) {
      Set<String> twice = new TreeSet<>(heard(part(after, "Piano")));
      twice.retainAll(heard(part(after, "Flute")));
      assertEquals(own == 0 ? Set.of() : landing(page, last / 2), twice);
    }
  }

  /** Who strikes a sixteenth. */
  enum Hit {
    RIGHT,
    LEFT,
    BOTH,
    NOBODY
  }

  private static String text(List<Hit> hits, boolean right) {
    return hits.stream()
        .map(hit -> hit == Hit.BOTH || hit == (right ? Hit.RIGHT : Hit.LEFT))
        .map(strikes -> strikes ? (right ? "A" : "G") : ".")
        .collect(Collectors.joining());
  }

  /** Sounds of before that nobody has any more. */
  private static Set<String> lost(Document before, Document after) {
    Set<String> lost = new TreeSet<>(heard(part(before, "Piano")));
    lost.removeAll(heard(part(after, "Piano")));
    lost.removeAll(heard(part(after, "Flute")));
    return lost;
  }

  private static Set<String> landing(Document page, int stroke) throws Exception {
    return heard(List.of(line(page).stroke(stroke)));
  }

  private static Document write(Document page, SourceTreatment treatment, int last)
      throws Exception {
    return MusicXmlReader.read(bytes(page, treatment, last));
  }

  private static byte[] bytes(Document page, SourceTreatment treatment, int last) throws Exception {
    Line line = line(page);
    Player flute = ByHand.player("Flute", "flute", page.score());
    Plan plan =
        new Plan(
            new Brief(line, List.of(flute), Invented.rules()), List.of(new Segment(0, 0, 0, last)));
    return twice(page, plan, treatment);
  }

  /** The piano keeps some of the line, the flute has the rest, sharing one note. */
  private static Document write(
      Document page, SourceTreatment treatment, int last, String own, int first, int landing)
      throws Exception {
    Line line = line(page);
    Player piano = ByHand.player(own, "piano", page.score());
    Player flute = ByHand.player("Flute", "flute", page.score());
    Plan plan =
        new Plan(
            new Brief(line, List.of(piano, flute), Invented.rules()),
            List.of(new Segment(0, 0, first, landing), new Segment(1, 0, landing, last)));
    return MusicXmlReader.read(twice(page, plan, treatment));
  }

  /**
   * Writes, and once more on what was written, which changes nothing where the line still sounds.
   */
  private static byte[] twice(Document page, Plan plan, SourceTreatment treatment)
      throws Exception {
    byte[] once = ScoreWriter.write(page, plan, treatment, player -> Optional.empty()).bytes();
    Document after = MusicXmlReader.read(once);
    byte[] again = ScoreWriter.write(after, plan, treatment, player -> Optional.empty()).bytes();
    assertArrayEquals(once, again);
    assertFalse(new String(once, StandardCharsets.UTF_8).contains("NaN"));
    return once;
  }

  private static Line line(Document page) throws Exception {
    return new LineChoice(
            "Piano",
            Optional.empty(),
            List.of(1, 2),
            List.of("1", "2"),
            Optional.of(new ToneChoice.All()),
            Reading.ALL)
        .take(page.score());
  }

  private static Part part(Document document, String name) {
    Score score = document.score();
    return score.part(name).orElseThrow();
  }

  private static Set<String> heard(Part part) {
    List<Stroke> all = new ArrayList<>();
    part.voices().forEach(voice -> all.addAll(voice.strokes()));
    return heard(all);
  }

  private static Set<String> heard(Line line) {
    return heard(line.strokes());
  }

  private static Set<String> heard(List<Stroke> strokes) {
    Set<String> heard = new TreeSet<>();
    for (Stroke stroke : strokes) {
      stroke.keys().forEach(key -> heard.add(stroke.onset().quarters() + " [" + key + "]"));
    }
    return heard;
  }

  /**
   * A bar of sixteenths: the right hand, the left hand, and a third voice in the left hand that has
   * nothing to do with the line; capitals are sixteenths, small letters eighths.
   */
  private static Document page(String upper, String lower, String third) throws Exception {
    return MusicXmlReader.read(
        score(
            hands(voice(upper, 1, 1, 4), voice(lower, 2, 2, 4))
                + "<backup><duration>16</duration></backup>"
                + voice(third, 3, 2, 3)));
  }

  private static String hands(String right, String left) {
    return right + "<backup><duration>16</duration></backup>" + left;
  }

  /** Bars of 4/4 of a piano, and of a flute that rests. */
  private static byte[] score(String... bars) {
    StringBuilder piano = new StringBuilder();
    StringBuilder flute = new StringBuilder();
    for (int i = 0; i < bars.length; i++) {
      String measure = "<measure number=\"" + (i + 1) + "\">";
      piano.append(measure).append(i == 0 ? attributes("<staves>2</staves>") : "");
      piano.append(bars[i]).append("</measure>\n");
      flute.append(measure).append(i == 0 ? attributes("") : "");
      flute.append("<note><rest measure=\"yes\"/><duration>16</duration></note></measure>\n");
    }
    return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">\n"
            + "<part-list><score-part id=\"P1\"><part-name>Piano</part-name></score-part>"
            + "<score-part id=\"P2\"><part-name>Flute</part-name></score-part></part-list>\n"
            + ("<part id=\"P1\">" + piano + "</part>\n")
            + ("<part id=\"P2\">" + flute + "</part>\n</score-partwise>\n"))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String attributes(String more) {
    return "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type>"
        + "</time>"
        + more
        + "</attributes>";
  }

  private static String voice(String sixteenths, int voice, int staff, int octave) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < sixteenths.length(); i++) {
      char letter = sixteenths.charAt(i);
      boolean eighth = Character.isLowerCase(letter);
      text.append("<note>")
          .append(
              letter == '.'
                  ? "<rest/>"
                  : "<pitch><step>"
                      + Character.toUpperCase(letter)
                      + "</step><octave>"
                      + octave
                      + "</octave></pitch>")
          .append("<duration>")
          .append(eighth ? 2 : 1)
          .append("</duration><voice>")
          .append(voice)
          .append("</voice><staff>")
          .append(staff)
          .append("</staff></note>");
      i += eighth ? 1 : 0;
    }
    return text.toString();
  }
}
