package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import stafette.Invented;
import stafette.cli.SampleJobs;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.Xml;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;

/** The rules for what is written, on the samples and on random lines. */
class WrittenScoresTest {
  private static final List<Integer> ALTERS = List.of(-1, 0, 0, 1);
  private static final List<String> ACCIDENTALS = List.of("flat", "natural", "sharp");

  /** The beginning of a bar, or a note of a line that is in no tie. */
  private static final Pattern BAR_OR_NOTE =
      Pattern.compile(
          "<measure |<step>([B-G])</step>(<octave>4</octave></pitch><duration>\\d+</duration>)");

  @TempDir private Path folder = Path.of("");

  @TestFactory
  Stream<DynamicTest> samples_are_written_by_the_rules() {
    return SampleJobs.samples().stream()
        .flatMap(
            sample ->
                Stream.of(SourceTreatment.values())
                    .map(
                        treatment ->
                            DynamicTest.dynamicTest(
                                sample + " " + treatment, () -> sample(sample, treatment))));
  }

  private void sample(String sample, SourceTreatment treatment) throws Exception {
    Path written = folder.resolve(sample + "-" + treatment + ".musicxml");
    String source = treatment.name().toLowerCase(Locale.ROOT);
    assertEquals(0, SampleJobs.write(sample, source, written));
    String before = Files.readString(Path.of("samples", sample + ".musicxml"));
    assertEquals(List.of(), WrittenRules.broken(before, Files.readString(written)));
  }

  @TestFactory
  Stream<DynamicTest> turns_made_by_hand_are_written_by_the_rules() {
    return Stream.of("lantern-run", "signal-hill")
        .flatMap(
            sample ->
                Stream.of(SourceTreatment.values())
                    .map(
                        treatment ->
                            DynamicTest.dynamicTest(
                                sample + " " + treatment, () -> byHand(sample, treatment))));
  }

  private static void byHand(String sample, SourceTreatment treatment) throws Exception {
    Document document = ByHand.sample(sample);
    Plan plan = ByHand.planFor(sample, document.score());
    assertEquals(
        List.of(),
        WrittenRules.broken(document.origin().text(), written(document, plan, treatment)));
  }

  private static String written(Document document, Plan plan, SourceTreatment treatment)
      throws UnwritablePlan {
    WrittenScore written = ScoreWriter.write(document, plan, treatment, player -> Optional.empty());
    return new String(written.bytes(), StandardCharsets.UTF_8);
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void random_plans_are_written_by_the_rules(
      @ForAll long seed, @ForAll SourceTreatment treatment, @ForAll boolean chromatic)
      throws Exception {
    RandomPlansTest.Case line = RandomPlansTest.score(seed);
    String text = chromatic ? chromatic(line.text(), seed) : line.text();
    Document document = TwoParts.read(text);
    Plan plan =
        RandomPlansTest.plan(new RandomPlansTest.Case(text, line.taken(), line.seed()), document);
    String after = written(document, plan, treatment);
    assertEquals(List.of(), WrittenRules.broken(text, after), after);
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void random_shares_of_a_line_are_written_by_the_rules(
      @ForAll long seed, @ForAll SourceTreatment treatment, @ForAll boolean chromatic)
      throws Exception {
    String line = RandomSharesTest.score(seed);
    String text = chromatic ? chromatic(line, seed) : line;
    Document document = TwoParts.read(text);
    Plan plan = RandomSharesTest.plan(document, ByHand.line(document.score(), "P1", "#1-#3"), seed);
    String after = written(document, plan, treatment);
    assertEquals(List.of(), WrittenRules.broken(text, after), after);
  }

  /** The same with sharps and flats, and the accidentals that these need. */
  private static String chromatic(String text, long seed) {
    Random random = new Random(seed + 3);
    Map<String, Integer> inForce = new HashMap<>();
    Matcher found = BAR_OR_NOTE.matcher(text);
    return found.replaceAll(
        match -> {
          if (match.group(1) == null) {
            inForce.clear();
            return match.group();
          }
          String step = match.group(1);
          int alter = ALTERS.get(random.nextInt(ALTERS.size()));
          Integer held = inForce.put(step, alter);
          String accidental =
              (held == null ? 0 : held) == alter
                  ? ""
                  : "<accidental>" + ACCIDENTALS.get(alter + 1) + "</accidental>";
          return "<step>"
              + step
              + "</step><alter>"
              + alter
              + "</alter>"
              + match.group(2)
              + accidental;
        });
  }

  @Test
  void a_natural_goes_with_the_sharp_that_it_took_back() throws Exception {
    String sharp =
        Xml.note("F", 4, 24, "<accidental>sharp</accidental>")
            .replace("</step>", "</step><alter>1</alter>");
    String natural = Xml.note("F", 4, 24, "<accidental>natural</accidental>");
    String before = TwoParts.of(List.of(Xml.ATTRIBUTES + sharp + natural), List.of(Xml.rest(48)));
    Document document = TwoParts.read(before);
    Line line = ByHand.line(document.score(), "P1", "#1");
    List<Player> players =
        List.of(
            ByHand.player("Piano", "piano", document.score()),
            ByHand.player("Flute", "flute", document.score()));
    List<Segment> segments = List.of(new Segment(1, 0, 0, 0), new Segment(0, 0, 1, 1));
    Plan plan = new Plan(new Brief(line, players, Invented.rules()), segments);
    assertEquals(
        List.of(), WrittenRules.broken(before, written(document, plan, SourceTreatment.KEEP)));
  }

  @Test
  void a_triplet_over_the_border_of_a_beat_is_beamed_whole() throws Exception {
    String metre =
        Xml.ATTRIBUTES.replace("<beats>4<", "<beats>6<").replace("<beat-type>4<", "<beat-type>8<");
    String triplet =
        Xml.note(
            "A",
            4,
            4,
            "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>");
    String line =
        metre
            + Xml.note("A", 4, 3, "").repeat(4)
            + triplet.repeat(3)
            + Xml.note("A", 4, 6, "").repeat(2);
    String before = TwoParts.of(List.of(line), List.of(metre + Xml.rest(36)));
    Document document = TwoParts.read(before);
    Plan plan = TwoParts.plan(document, 0, 8);
    assertEquals(
        List.of(), WrittenRules.broken(before, written(document, plan, SourceTreatment.KEEP)));
  }
}
