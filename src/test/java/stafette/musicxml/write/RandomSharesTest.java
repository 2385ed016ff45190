package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Tremolo;

/**
 * Random lines with tuplets, rests, ties and slurs, of which their own player keeps some stretches:
 * its part has just these, bars add up, slurs hold where notes stay side by side, and with cues the
 * whole line can be read again.
 */
class RandomSharesTest {
  private static final Pattern NOTE = Pattern.compile("<note><pitch>.*?</note>");

  @Provide
  Arbitrary<Long> seeds() {
    return Arbitraries.longs();
  }

  /** A line with slurs here and there. */
  static String score(long seed) {
    String text = RandomPlansTest.score(seed).text();
    Random random = new Random(seed + 1);
    int end = text.indexOf("<part id=\"P2\"");
    StringBuilder result = new StringBuilder();
    Matcher notes = NOTE.matcher(text);
    boolean open = false;
    while (notes.find()) {
      boolean ours = notes.start() < end;
      String sign = !ours || random.nextInt(3) > 0 ? "" : open ? "stop" : "start";
      open = sign.isEmpty() ? open : !open;
      String slur = "<notations><slur type=\"" + sign + "\" number=\"1\"/></notations></note>";
      notes.appendReplacement(
          result, sign.isEmpty() ? "$0" : notes.group().replace("</note>", slur));
    }
    return notes.appendTail(result).toString();
  }

  static Plan plan(Document score, Line line, long seed) {
    Random random = new Random(seed + 2);
    List<Player> players =
        List.of(
            ByHand.player("Piano", "piano", score.score()),
            ByHand.player("Horn 7", "horn in F", score.score()));
    List<Segment> segments = new ArrayList<>();
    int player = random.nextInt(2);
    int first = 0;
    while (first < line.count()) {
      int last = Math.min(line.count() - 1, first + random.nextInt(8));
      segments.add(new Segment(player, 0, first, last));
      player = 1 - player;
      first = last == line.count() - 1 ? line.count() : last + random.nextInt(2);
      first = Math.max(first, segments.get(segments.size() - 1).first() + 1);
    }
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }

  private static Set<Integer> own(Plan plan) {
    Set<Integer> own = new TreeSet<>();
    for (Segment segment : plan.segmentsOf(0)) {
      for (int i = segment.first(); i <= segment.last(); i++) {
        own.add(i);
      }
    }
    return own;
  }

  @Property(tries = 60, shrinking = ShrinkingMode.OFF)
  void the_lines_own_part_has_just_its_share(
      @ForAll("seeds") long seed, @ForAll SourceTreatment treatment) throws Exception {
    Document before = TwoParts.read(score(seed));
    Line line = ByHand.line(before.score(), "P1", "#1-#3");
    Plan plan = plan(before, line, seed);
    WrittenScore written = TwoParts.write(before, plan, treatment);
    Document after = MusicXmlReader.read(written.bytes());
    String text = after.origin().text();
    Set<Integer> own = own(plan);
    List<String> share = own.stream().map(line::stroke).map(TwoParts::heard).sorted().toList();
    assertEquals(share, TwoParts.strokes(after, "P1"), text);
    assertEquals(List.of(), OfficialSchema.errors(written.bytes()), text);
    RandomPlansTest.barsAddUp(after);
    if (treatment == SourceTreatment.CUE) {
      Document withCues = MusicXmlReader.read(written.bytes(), Tremolo.AS_WRITTEN, true);
      assertEquals(line.strokes(), ByHand.line(withCues.score(), "P1", "#1-#3").strokes(), text);
    } else if (!own.isEmpty()) {
      slursHold(line, own, after);
    }
  }

  private static void slursHold(Line line, Set<Integer> own, Document after) throws Exception {
    List<Stroke> read = ByHand.line(after.score(), "P1", "#1-#3").strokes();
    int at = 0;
    for (int i : own) {
      assertEquals(
          own.contains(i - 1) && line.stroke(i).slurred(),
          read.get(at).slurred(),
          i + " of " + own + " in " + after.origin().text());
      at++;
    }
  }
}
