package stafette.desktop.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import stafette.Invented;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.check.Finding;
import stafette.check.HandoffReasons;
import stafette.check.Judge;
import stafette.check.RandomPlans;
import stafette.check.TempoWindow;
import stafette.check.Traits;
import stafette.check.alone.LineTrial;
import stafette.check.alone.VerdictWords;
import stafette.desktop.SplitSample;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Lock;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Tremolo;
import stafette.split.Reason;
import stafette.split.SplitResult;
import stafette.split.rotate.RotationOrCheapest;
import stafette.split.why.WhyNot;
import stafette.tables.LimitTables;
import stafette.time.BarBeat;
import stafette.time.Rational;
import stafette.words.Objection;
import stafette.words.Refusal;
import stafette.words.Sayable;
import stafette.work.OpenPlan;
import stafette.work.ScoreChanges;
import stafette.work.SplitLine;

/** What a German window says of plans, without an English word. */
class GermanTest {
  private static final Texts GERMAN = Texts.in(Locale.GERMANY);
  private static final Line LINE = Invented.line(4, 4, 120);
  private static final Player FLUTE = player("Anna", "flute", 10);
  private static final Player CLARINET = player("Jonas", "clarinet in B-flat", 10);

  /** With its second technique, that of one note after the other. */
  private static Player player(String name, String instrument, double peak) {
    Instrument known = LimitTables.builtIn().catalogue().find(instrument).orElseThrow();
    Capability capability =
        new Capability((int) (peak * 1000), 7_000, 20_000, 8_000, Capability.UNLIMITED);
    Skill tongued = new Skill(known.techniques().get(1), capability);
    return new Player(name, known, Optional.empty(), List.of(tongued), List.of());
  }

  private static Plan plan(Line line, Player... players) {
    return new Plan(Invented.brief(line, players), List.of(new Segment(0, 0, 0, line.count() - 1)));
  }

  private static Plan locked(Lock lock) {
    Brief brief = Invented.brief(LINE, FLUTE, CLARINET);
    return new Plan(
        brief.with(brief.rules().with(List.of(lock))),
        List.of(new Segment(0, 0, 0, 20), new Segment(1, 0, 16, 62)));
  }

  /** Of two players who share too little, too much, or leave notes out. */
  private static Plan relay(int last, int first) {
    return new Plan(
        Invented.brief(LINE, FLUTE, CLARINET),
        List.of(new Segment(0, 0, 1, last), new Segment(1, 0, first, 62)));
  }

  /** Of two who would have to take notes in turn that are too close. */
  private static Plan hocket() {
    Brief fast = Invented.brief(Invented.line(1, 4, 200), FLUTE, CLARINET);
    return new Plan(
        fast.with(fast.rules().with(Hocket.STROKE)),
        List.of(
            new Segment(0, 0, 0, 0, 15, Pattern.ODD), new Segment(0, 1, 0, 0, 15, Pattern.EVEN)));
  }

  private static Stream<Plan> plans() {
    Player tuba = player("Emil", "tuba", 10);
    Player slow = player("Anna", "flute", 6);
    Instrument violin = LimitTables.builtIn().catalogue().find("violin").orElseThrow();
    Player pizzicato =
        new Player(
            "Vera",
            violin,
            Optional.empty(),
            List.of(new Skill(violin.techniques().get(0), FLUTE.skills().get(0).capability())),
            List.of());
    return Stream.concat(
        Stream.of(
            plan(Invented.line(16, 4, 120, i -> new Pitch(Step.F, 1, 6)), tuba),
            plan(LINE, slow),
            plan(LINE, pizzicato),
            plan(Invented.line(3, 4, 120, i -> Invented.A4), player("Anna", "flute", 7)),
            relay(15, 16),
            relay(16, 11),
            relay(16, 16),
            relay(16, 18),
            hocket(),
            locked(new Lock.At(0, 15, 16)),
            locked(new Lock.In(0, 1, 4, 8)),
            locked(new Lock.Out(0, 0, 4, 8)),
            locked(new Lock.Exactly(0, 0, OptionalInt.empty(), 4, 8))),
        LongStream.range(0, 100).mapToObj(RandomPlans::any));
  }

  @Test
  void findings_of_each_kind_are_german() throws IOException {
    List<Finding> findings =
        plans().flatMap(plan -> Judge.judge(plan).findings().stream()).toList();
    assertEquals(
        EnumSet.complementOf(EnumSet.of(Finding.FindingKind.MOVING)),
        findings.stream()
            .map(Finding::kind)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Finding.FindingKind.class))));
    assertGerman(findings.stream().map(Finding::message).map(GERMAN::say).toList());
  }

  @Test
  void a_finding_reads_as_a_musician_would_say_it() {
    Finding finding = Judge.judge(plan(LINE, player("Anna", "flute", 6))).findings().get(0);
    assertEquals(
        "Anna, Takt 1, Schlag 2: 8,0 Noten in der Sekunde sind mehr als 6,0, die Grenze für"
            + " einfache Zunge; einem schnelleren Spieler geben oder das Tempo auf Viertel = 90"
            + " senken",
        GERMAN.say(finding.message()));
  }

  @Test
  void what_limits_the_tempo_is_german() throws IOException {
    assertGerman(
        LongStream.range(0, 8)
            .mapToObj(RandomPlans::holding)
            .flatMap(plan -> TempoWindow.of(plan).stream())
            .flatMap(
                window ->
                    Stream.of(
                        window.slowestText(),
                        window.slowestLimit(),
                        window.fastestText(),
                        window.fastestLimit()))
            .map(GERMAN::say)
            .toList());
  }

  @Test
  void what_a_handoff_costs_is_german() throws IOException {
    Brief brief = Invented.brief(LINE, FLUTE, CLARINET);
    Stream<Plan> own =
        Stream.of(16, 17, 18)
            .map(
                at ->
                    new Plan(brief, List.of(new Segment(0, 0, 0, at), new Segment(1, 0, 16, 63))));
    assertGerman(
        Stream.concat(own, LongStream.range(0, 40).mapToObj(RandomPlans::any))
            .flatMap(
                plan ->
                    plan.handoffs().stream()
                        .map(handoff -> HandoffReasons.of(plan.brief(), handoff)))
            .flatMap(
                why ->
                    Stream.of(
                        why.handoff(), why.entry(), why.landing(), why.overlap(), why.blend()))
            .map(GERMAN::say)
            .toList());
  }

  @Test
  void how_plans_differ_is_german() throws IOException {
    Brief brief = Invented.brief(LINE, FLUTE, CLARINET);
    Traits one = traits(new Plan(brief, List.of(new Segment(0, 0, 0, 63))));
    Traits other =
        traits(
            new Plan(
                brief,
                List.of(
                    new Segment(0, 0, 0, 16),
                    new Segment(1, 0, 16, 32),
                    new Segment(0, 0, 32, 63))));
    assertGerman(
        Stream.of(one.against(other), other.against(one), one.against(one))
            .flatMap(Collection::stream)
            .map(GERMAN::say)
            .toList());
  }

  private static Traits traits(Plan plan) {
    return Traits.of(plan, plan.brief().rules());
  }

  @Test
  void a_place_within_a_beat_is_german() {
    BarBeat place = new BarBeat("7", Rational.of(29, 6));
    assertEquals("Takt 7, letztes Sechstel von Schlag 4", GERMAN.say(place));
    assertEquals("7.4, letztes Sechstel", GERMAN.say(place.inShort()));
    assertEquals(
        "Takt 7, zweite Hälfte von Schlag 4", GERMAN.say(new BarBeat("7", Rational.of(9, 2))));
  }

  @Test
  void what_decides_is_german() throws IOException {
    List<String> said =
        Stream.of(
                Invented.line(2, 4, 240),
                Invented.line(20, 4, 140),
                Invented.line(40, 4, 100),
                Invented.line(8, 4, 60, i -> new Pitch(Step.C, 0, 1)))
            .map(GermanTest::deciding)
            .toList();
    assertGerman(said);
    assertEquals(
        "Anschläge in Folge, Takt 1, Schlag 2: 5 Noten mit 16,0 in der Sekunde; 84 von 100 schaffen"
            + " bis zu 11,4",
        said.get(0));
  }

  private static String deciding(Line line) {
    Instrument flute = FLUTE.instrument();
    return GERMAN.say(
        VerdictWords.deciding(
            LineTrial.of(line, flute, Assurance.DEFAULT, flute.techniques()), line));
  }

  @Test
  void reasons_for_no_plan_are_german() throws IOException {
    Stream<Brief> briefs =
        Stream.of(
            Invented.brief(Invented.line(4, 4, 240), FLUTE, CLARINET),
            Invented.brief(Invented.line(20, 4, 120), FLUTE),
            Invented.brief(
                Invented.line(16, 4, 120, i -> new Pitch(Step.B, -1, 1)), FLUTE, CLARINET));
    assertGerman(
        briefs
            .flatMap(brief -> Stream.concat(smallest(brief), plainest(brief)))
            .map(reason -> GERMAN.say(reason.text()))
            .toList());
  }

  private static Stream<Reason> smallest(Brief brief) {
    return WhyNot.of(brief, searches -> () -> false).stream();
  }

  private static Stream<Reason> plainest(Brief brief) {
    return RotationOrCheapest.of(brief, () -> false) instanceof SplitResult.None none
        ? none.reasons().stream()
        : Stream.of();
  }

  @Test
  void what_writing_changes_is_german() throws Refusal, IOException {
    SplitLine.SplitOutcome outcome = SplitSample.plans(0).main();
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    Plan plan = outcome.plan().orElseThrow().plan();
    List<String> said =
        ScoreChanges.of(outcome.score(), plan, WrittenAs.plain(SourceTreatment.CUE), limits)
            .sentences()
            .stream()
            .map(GERMAN::say)
            .toList();
    assertTrue(said.contains("Piano: die Linie wird zu Stichnoten"), said.toString());
    assertGerman(said);
  }

  @Test
  void what_is_refused_is_german(@TempDir Path folder) throws IOException {
    LimitTables tables = LimitTables.builtIn();
    Path torn = Files.writeString(folder.resolve("torn.musicxml"), "<score-partwise><part-list>");
    Path poem = Files.writeString(folder.resolve("poem.xml"), "<poem/>");
    Path plan = Files.writeString(folder.resolve("3.json"), "{}");
    LimitsInForce limits =
        new LimitsInForce(
            tables.catalogue(), tables.weights(), tables.evidence(), tables.registers());
    LineChoice nobody =
        new LineChoice(
            "Viola", Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
    assertGerman(
        Stream.<Executable>of(
                () -> OpenScore.open(folder, Tremolo.AS_WRITTEN, false, limits),
                () -> OpenScore.open(folder.resolve("0.mxl"), Tremolo.AS_WRITTEN, false, limits),
                () -> OpenScore.open(torn, Tremolo.AS_WRITTEN, false, limits),
                () -> OpenScore.open(poem, Tremolo.AS_WRITTEN, false, limits),
                () -> OpenPlan.onDesk(plan, Optional.empty(), limits),
                () -> limits.instrument("fluta"),
                () -> PlayerWish.parse("Anna, Anna"),
                () -> new BarChoice("2-1").in(LINE.bars()),
                () -> new BarChoice("400").in(LINE.bars()),
                () -> LineRequest.whole(SplitSample.SCORE).with(nobody).find(limits))
            .map(step -> assertThrows(Objection.class, step))
            .map(GERMAN::say)
            .toList());
  }

  /** None of the words that English sentences have and German ones have not. */
  private static void assertGerman(Collection<String> said) throws IOException {
    Set<String> english = new TreeSet<>();
    Set<String> german = new TreeSet<>();
    for (String bundle : List.of("sentences", "names")) {
      Properties words = TranslationTest.read(bundle);
      words.stringPropertyNames().forEach(key -> english.addAll(words(key)));
      words.values().forEach(value -> german.addAll(words(value.toString())));
    }
    english.removeAll(german);
    english.removeAll(words(Invented.tonguing("tonguing").name()));
    english.remove(Invented.instrument("pipe").name());
    for (String each : said) {
      Set<String> left = words(each);
      left.retainAll(english);
      assertEquals(Set.of(), left, each);
    }
    assertFalse(said.isEmpty());
  }

  /** Without what is quoted, which the user has typed or a file says. */
  private static Set<String> words(String text) {
    return Arrays.stream(text.replaceAll("„[^“]*“|\"[^\"]*\"", "").split("[^\\p{L}]+"))
        .filter(word -> word.length() > 1)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Names of the tables are known to say nothing in English. */
  @Test
  void names_are_german() {
    assertEquals("Klarinette in B", GERMAN.say(CLARINET.instrument()));
    assertEquals("einfache Zunge", GERMAN.say((Sayable) FLUTE.skills().get(0).technique()));
    assertEquals("Fis6", GERMAN.say(new Pitch(Step.F, 1, 6)));
    assertEquals("H4", GERMAN.say(new Pitch(Step.B, 0, 4)));
  }
}
