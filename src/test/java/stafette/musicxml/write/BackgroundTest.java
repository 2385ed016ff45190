package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.musicxml.share.Background;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;

/** Background parts: around what a player has, in place of the line that it doubled, or new. */
class BackgroundTest {
  private static final String EMPTY =
      Xml.ATTRIBUTES + "<note><rest measure=\"yes\"/><duration>48</duration></note>";

  @Provide
  Arbitrary<RandomPlansTest.Case> cases() {
    return Arbitraries.longs().map(RandomPlansTest::score);
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void random_thinnings_are_written_whole_and_only_once(
      @ForAll("cases") RandomPlansTest.Case given, @ForAll Random chance) throws Exception {
    Document before = TwoParts.read(given.text());
    Line line = ByHand.line(before.score(), "P1", "#1-#3");
    for (String name : List.of("Flute", "Piccolo")) {
      Optional<Line> left = random(given, line, name.equals("Flute"), chance);
      if (left.isPresent()) {
        WrittenScore written = write(before, background(before, line, left.get(), name));
        Document after = MusicXmlReader.read(written.bytes());
        String text = after.origin().text();
        assertEquals(beside(before, name, left.get()), TwoParts.strokes(after, name), text);
        assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, "P1"), text);
        RandomPlansTest.barsAddUp(after);
        assertEquals(List.of(), OfficialSchema.errors(written.bytes()), text);
        WrittenScore again = write(after, background(after, line, left.get(), name));
        assertEquals(List.of(), again.replacements(), text);
        assertArrayEquals(written.bytes(), again.bytes());
      }
    }
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void another_thinning_takes_the_place_of_one_that_was_written(
      @ForAll("cases") RandomPlansTest.Case given, @ForAll Random chance) throws Exception {
    Document before = TwoParts.read(given.text());
    Line line = ByHand.line(before.score(), "P1", "#1-#3");
    Optional<Line> one = random(given, line, true, chance);
    Optional<Line> other = random(given, line, true, chance);
    if (one.isPresent() && other.isPresent()) {
      WrittenScore written = write(before, background(before, line, one.get(), "Flute"));
      Document between = MusicXmlReader.read(written.bytes());
      Document after =
          MusicXmlReader.read(
              write(between, background(between, line, other.get(), "Flute")).bytes());
      String text = after.origin().text();
      assertEquals(beside(before, "Flute", other.get()), TwoParts.strokes(after, "Flute"), text);
      RandomPlansTest.barsAddUp(after);
    }
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void the_line_is_thinned_in_its_own_part(
      @ForAll("cases") RandomPlansTest.Case given, @ForAll Random chance) throws Exception {
    Document before = TwoParts.read(given.text());
    Line line = ByHand.line(before.score(), "P1", "#1-#3");
    Optional<Line> left = random(given, line, false, chance);
    if (left.isPresent()) {
      WrittenScore written = write(before, background(before, line, left.get(), "Piano"));
      Document after = MusicXmlReader.read(written.bytes());
      String text = after.origin().text();
      List<String> kept = left.get().strokes().stream().map(TwoParts::heard).sorted().toList();
      assertEquals(kept, TwoParts.strokes(after, "P1"), text);
      assertEquals(TwoParts.strokes(before, "P2"), TwoParts.strokes(after, "P2"));
      RandomPlansTest.barsAddUp(after);
      assertEquals(List.of(), OfficialSchema.errors(written.bytes()), text);
    }
  }

  /** Such as a grace note after the last note of a bar, which some write with a duration of 0. */
  @Test
  void a_note_without_length_at_the_end_goes_with_the_line_that_is_thinned() throws Exception {
    String ornament = TwoParts.SIXTEENTHS + Xml.note("A", 4, 0, "<voice>1</voice>");
    Document before =
        TwoParts.read(TwoParts.of(List.of(Xml.ATTRIBUTES + ornament), List.of(Xml.rest(48))));
    Line line = ByHand.line(before.score(), "P1", "1");
    Line left = ThinnedStroke.line(line, ThinnedStroke.of(line, 0, 15, Thinning.BEATS, true));
    Document after =
        MusicXmlReader.read(write(before, background(before, line, left, "Piano")).bytes());
    assertEquals(
        List.of("0 [69] 1", "1 [69] 1", "2 [69] 1", "3 [69] 1"), TwoParts.strokes(after, "P1"));
  }

  @Test
  void a_part_that_doubles_the_line_has_it_thinned_and_bars_left_out_rest() throws Exception {
    String bars =
        TwoParts.score(Xml.ATTRIBUTES + TwoParts.SIXTEENTHS, TwoParts.SIXTEENTHS, Xml.rest(48));
    Document before = TwoParts.read(bars);
    Line line = ByHand.line(before.score(), "P1", "1-2");
    Line left = ThinnedStroke.line(line, ThinnedStroke.of(line, 0, 15, Thinning.BEATS, true));
    WrittenScore written = write(before, background(before, line, left, "Flute"));
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(
        List.of("0 [69] 1", "1 [69] 1", "2 [69] 1", "3 [69] 1"), TwoParts.strokes(after, "P2"));
    String second =
        after.origin().parts().get(1).measures().get(1).whole().in(after.origin().text());
    assertTrue(second.contains("<rest measure=\"yes\""), second);
    assertEquals(2, written.replacements().size());
  }

  @Test
  void a_chord_that_holds_more_than_the_line_is_not_taken_apart() throws Exception {
    String chord =
        Xml.note("A", 4, 12, "") + Xml.note("C", 5, 12, "").replace("<note>", "<note><chord/>");
    Document before = TwoParts.read(TwoParts.score(Xml.ATTRIBUTES + chord + Xml.rest(36)));
    Line line = ByHand.line(before.score(), "P1", "1");
    Line beats = ThinnedStroke.line(line, ThinnedStroke.of(line, 0, 15, Thinning.BEATS, true));
    assertThrows(
        UnwritablePlan.class, () -> write(before, background(before, line, beats, "Flute")));
    Line later = ThinnedStroke.line(line, ThinnedStroke.of(line, 4, 15, Thinning.BEATS, true));
    WrittenScore written = write(before, background(before, line, later, "Flute"));
    assertTrue(new String(written.bytes(), StandardCharsets.UTF_8).contains(chord));
  }

  @Test
  void a_relay_and_its_colour_are_written_together() throws Exception {
    Document before = TwoParts.read(TwoParts.score(EMPTY));
    Line line = ByHand.line(before.score(), "P1", "1");
    Line left = ThinnedStroke.line(line, ThinnedStroke.of(line, 0, 15, Thinning.HALF, true));
    WrittenScore written =
        ScoreWriter.write(
            before,
            Optional.of(TwoParts.plan(before, 0, 15)),
            List.of(background(before, line, left, "Piccolo")),
            WrittenAs.plain(SourceTreatment.REMOVE),
            player -> Optional.empty());
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(List.of(), TwoParts.strokes(after, "P1"));
    assertEquals(TwoParts.strokes(before, "P1"), TwoParts.strokes(after, "Flute"));
    assertEquals(8, TwoParts.strokes(after, "Piccolo").size());
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()));
  }

  private static WrittenScore write(Document document, Background background)
      throws UnwritablePlan {
    return ScoreWriter.write(
        document,
        Optional.empty(),
        List.of(background),
        WrittenAs.plain(SourceTreatment.KEEP),
        player -> Optional.empty());
  }

  private static Background background(Document document, Line line, Line left, String name) {
    Player player = ByHand.player(name, "flute", document.score());
    Plan plan =
        new Plan(
            new Brief(left, List.of(player), Invented.rules()),
            List.of(new Segment(0, 0, 0, left.count() - 1)));
    return new Background(plan, ThinnedStroke.everything(line));
  }

  private static List<String> beside(Document before, String name, Line left) {
    List<String> all = new ArrayList<>(TwoParts.strokes(before, name));
    left.strokes().forEach(stroke -> all.add(TwoParts.heard(stroke)));
    return all.stream().sorted().toList();
  }

  /** A pattern for each beat by chance; nothing where a player who has something else plays it. */
  private static Optional<Line> random(
      RandomPlansTest.Case given, Line line, boolean around, Random chance) {
    List<ThinnedStroke> kept = new ArrayList<>();
    boolean sounding = chance.nextBoolean();
    for (int first = 0; first < line.count(); ) {
      int last = first;
      while (last + 1 < line.count() && line.sameBeat(last + 1)) {
        last++;
      }
      Thinning pattern = Thinning.values()[chance.nextInt(Thinning.values().length)];
      ThinnedStroke.of(line, first, last, pattern, sounding).stream()
          .filter(k -> !around || RandomPlansTest.isFree(given, k.stroke().span()))
          .forEach(kept::add);
      first = last + 1;
    }
    return kept.isEmpty() ? Optional.empty() : Optional.of(ThinnedStroke.line(line, kept));
  }
}
