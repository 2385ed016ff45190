package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.musicxml.text.Origin;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.NoSuchLine;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Random lines with tuplets, rests and ties, a player who has something of its own on some beats,
 * another without a part, and random plans: what is written is read back, bars add up, and writing
 * again changes nothing.
 */
class RandomPlansTest {
  private static final int BARS = 3;
  private static final int BEATS = 4;
  private static final String[] STEPS = {"C", "D", "E", "F", "G", "A", "B"};

  /** Divisions in which the flute's own notes are given. */
  private static final List<Integer> DIVISIONS = List.of(1, 2, 12);

  /**
   * A score with a line, and the beats on which the flute has notes of its own.
   *
   * @param seed for the plan
   */
  record Case(String text, List<Boolean> taken, long seed) {}

  @Provide
  Arbitrary<Case> cases() {
    return Arbitraries.longs().map(RandomPlansTest::score);
  }

  static Case score(long seed) {
    Random random = new Random(seed);
    List<String> piano = new ArrayList<>();
    List<String> flute = new ArrayList<>();
    List<Boolean> taken = new ArrayList<>();
    int divisions = DIVISIONS.get(random.nextInt(DIVISIONS.size()));
    boolean held = false;
    for (int bar = 0; bar < BARS; bar++) {
      StringBuilder line = new StringBuilder(bar == 0 ? Xml.ATTRIBUTES : "");
      for (int beat = 0; beat < BEATS; beat++) {
        boolean hold = random.nextInt(4) == 0 && !(bar == BARS - 1 && beat == BEATS - 1);
        line.append(beat(random, held, hold));
        held = hold;
      }
      piano.add(line.toString());
      String attributes = Xml.ATTRIBUTES.replace(">12<", ">" + divisions + "<");
      flute.add((bar == 0 ? attributes : "") + own(random, divisions, taken));
    }
    return new Case(TwoParts.of(piano, flute), taken, random.nextLong());
  }

  /** One beat of the line, in twelfths; a note that is held is an A. */
  private static String beat(Random random, boolean held, boolean hold) {
    int parts = List.of(1, 2, 3, 4, 6).get(random.nextInt(5));
    int normal = parts % 3 == 0 ? parts / 3 * 2 : 1;
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < parts; i++) {
      boolean from = i == 0 && held;
      boolean to = i == parts - 1 && hold;
      String ties =
          (from ? "<tie type=\"stop\"/>" : "")
              + (to ? "<tie type=\"start\"/>" : "")
              + (parts % 3 == 0 ? modification(parts, normal) : "");
      boolean silent = !from && !to && random.nextInt(5) == 0;
      String step = from || to ? "A" : STEPS[random.nextInt(STEPS.length)];
      text.append(
          silent
              ? Xml.rest(12 / parts).replace("</note>", ties + "</note>")
              : Xml.note(step, 4, 12 / parts, ties));
    }
    return text.toString();
  }

  private static String modification(int actual, int normal) {
    return "<time-modification><actual-notes>"
        + actual
        + "</actual-notes><normal-notes>"
        + normal
        + "</normal-notes></time-modification>";
  }

  /** A bar of the flute: free in one of many ways, or with notes of its own on some beats. */
  private static String own(Random random, int divisions, List<Boolean> taken) {
    int way = random.nextInt(6);
    StringBuilder text = new StringBuilder();
    for (int beat = 0; beat < BEATS; beat++) {
      boolean plays = way > 3 && random.nextInt(3) == 0;
      taken.add(plays);
      text.append(plays ? Xml.note("C", 7, divisions, "") : Xml.rest(divisions));
    }
    int whole = BEATS * divisions;
    return switch (way) {
      case 0 -> "<note><rest measure=\"yes\"/><duration>" + whole + "</duration></note>";
      case 1 -> "<forward><duration>" + whole + "</duration></forward>";
      case 2 -> "";
      default -> text.toString();
    };
  }

  static Plan plan(Case given, Document document) throws NoSuchLine {
    Random random = new Random(given.seed);
    Line line = ByHand.line(document.score(), "P1", "#1-#" + BARS);
    List<Player> players =
        List.of(
            ByHand.player("Flute", "flute", document.score()),
            ByHand.player("Horn 7", "horn in F", document.score()));
    List<Segment> segments = new ArrayList<>();
    for (int player = 0; player < players.size(); player++) {
      int first = 0;
      while (first < line.count()) {
        int last = first;
        while (last + 1 < line.count()
            && last - first < 8
            && (player == 1 || isFree(given, line.stroke(last + 1).span()))) {
          last++;
        }
        boolean free = player == 1 || isFree(given, line.stroke(first).span());
        int end = first + random.nextInt(last - first + 1);
        if (free && random.nextInt(4) > 0) {
          segments.add(new Segment(player, 0, first, end));
        }
        first = end + 1 + random.nextInt(3);
      }
    }
    if (segments.isEmpty()) {
      segments.add(new Segment(1, 0, 0, line.count() - 1));
    }
    segments.sort(Comparator.comparing(Segment::first));
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }

  static boolean isFree(Case given, Span span) {
    for (int beat = 0; beat < given.taken.size(); beat++) {
      Span own =
          new Span(
              stafette.time.Position.ofQuarters(beat, 1),
              stafette.time.Position.ofQuarters(beat + 1, 1));
      if (given.taken.get(beat) && own.overlaps(span)) {
        return false;
      }
    }
    return true;
  }

  @Property(shrinking = ShrinkingMode.OFF)
  void random_plans_are_written_whole_and_only_once(@ForAll("cases") Case given) throws Exception {
    Document before = TwoParts.read(given.text);
    Plan plan = plan(given, before);
    WrittenScore written = TwoParts.write(before, plan);
    Document after = MusicXmlReader.read(written.bytes());
    String text = after.origin().text();
    for (int i = 0; i < plan.brief().players().size(); i++) {
      Player player = plan.brief().players().get(i);
      List<String> expected = new ArrayList<>();
      player.part().ifPresent(id -> expected.addAll(TwoParts.strokes(before, id)));
      for (Segment segment : plan.segmentsOf(i)) {
        ByHand.written(plan, segment, before.score())
            .forEach(stroke -> expected.add(TwoParts.heard(stroke)));
      }
      assertEquals(
          expected.stream().sorted().toList(), TwoParts.strokes(after, player.name()), text);
    }
    barsAddUp(after);
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()), text);
    WrittenScore again = TwoParts.write(after, plan(given, after));
    assertEquals(List.of(), again.replacements(), text);
    assertArrayEquals(written.bytes(), again.bytes());
  }

  @Property(shrinking = ShrinkingMode.OFF)
  void what_the_line_leaves_is_whole(@ForAll("cases") Case given, @ForAll SourceTreatment treatment)
      throws Exception {
    Document before = TwoParts.read(given.text);
    Plan plan = plan(given, before);
    WrittenScore written = TwoParts.write(before, plan, treatment);
    Document after = MusicXmlReader.read(written.bytes());
    String text = after.origin().text();
    List<String> left =
        treatment == SourceTreatment.KEEP ? TwoParts.strokes(before, "P1") : List.of();
    assertEquals(left, TwoParts.strokes(after, "P1"), text);
    barsAddUp(after);
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()), text);
  }

  static void barsAddUp(Document document) {
    for (Origin.PartText part : document.origin().parts()) {
      for (int i = 0; i < part.measures().size(); i++) {
        Rational end = document.score().bars().get(i).span().start().quarters();
        for (Origin.ElementText element : part.measures().get(i).elements()) {
          Optional<Origin.NoteText> note = element.note().filter(n -> !n.chord());
          if (note.isPresent()) {
            assertEquals(end, element.onset().quarters(), part.id() + " bar " + i);
            end = end.plus(note.get().length().quarters());
          }
        }
        boolean written = !part.measures().get(i).elements().isEmpty();
        if (written && !end.equals(document.score().bars().get(i).span().start().quarters())) {
          assertEquals(document.score().bars().get(i).span().end().quarters(), end);
        }
      }
    }
  }
}
