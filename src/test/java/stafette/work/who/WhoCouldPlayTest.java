package stafette.work.who;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.SplitLine;

/** Who could play a line, in scores of our own. */
class WhoCouldPlayTest {
  private static final Path WEIR_GATE = Path.of("samples", "weir-gate.musicxml");
  private static final int BARS = 8;
  private static final String REST = "<note><rest measure=\"yes\"/><duration>16</duration></note>";

  @TempDir Path folder = Path.of("");

  @Test
  void the_flutes_of_a_shared_staff_are_the_best_crew_for_a_line_of_both_hands() throws Exception {
    WhoCouldPlay who = who(WEIR_GATE, "Piano", "3-14");
    assertEquals(List.of("Flute 1", "Flute 2"), names(who.best().orElseThrow()));
    assertTrue(who.holds());
    Candidate second = candidate(who, "Clarinet 2");
    assertEquals("plays in 3-6", second.busy().map(Sentence::toString).orElse(""));
    assertTrue(candidate(who, "Clarinet 1").isFree());
    assertEquals("written 2 semitones higher", second.written().map(Sentence::toString).orElse(""));
    assertFalse(candidate(who, "Bassoon").stretches().get(5).inRange());
  }

  @Test
  void a_section_divides_before_it_calls_a_flute() throws Exception {
    Path score = score(Map.of("Violins I", line(), "Flute 1", rests(), "Flute 2", rests()), "156");
    Optional<SolvedCrew> best = who(score, "Violins I", "1-8").best();
    assertEquals(List.of("Violins I outside", "Violins I inside"), names(best.orElseThrow()));
  }

  @Test
  void who_has_a_mute_on_or_a_solo_or_another_instrument_is_told() throws Exception {
    List<String> muted = rests();
    muted.set(0, words("con sord.") + note("C", 5, 4, "") + rest(12));
    List<String> solo = rests();
    solo.set(7, words("1. Solo") + note("C", 5, 16, ""));
    List<String> piccolo = rests();
    piccolo.set(0, words("muta in Piccolo") + note("C", 6, 4, "") + rest(12));
    List<String> piano = rests();
    piano.set(2, run());
    piano.set(3, run());
    Path score =
        score(
            Map.of("Piano", piano, "Trumpet 1", muted, "Oboes 1.2", solo, "Flute/Piccolo", piccolo),
            "110");
    WhoCouldPlay who = who(score, "Piano", "3-4");
    assertEquals("muted there", said(candidate(who, "Trumpet 1").before()));
    assertEquals("a solo after, in bar 8", said(candidate(who, "Oboe 1").after()));
    assertEquals("", said(candidate(who, "Oboe 2").after()));
    assertEquals("has the piccolo there", said(candidate(who, "Flute/Piccolo").before()));
    assertEquals("piccolo", candidate(who, "Piccolo").player().instrument().name());
  }

  @Test
  void a_climb_is_shared_by_register() throws Exception {
    WhoCouldPlay who = who(Path.of("samples", "mill-stairs.musicxml"), "Piano", "1-19");
    assertTrue(who.holds());
    assertTrue(
        names(who.best().orElseThrow()).stream().anyMatch(name -> name.startsWith("Bassoon")),
        who.best().orElseThrow().inWords().toString());
  }

  @Test
  void the_same_score_gives_the_same_answer() throws Exception {
    String one = WhoReport.json(who(WEIR_GATE, "Piano", "3-14"), crew -> Optional.empty());
    String again = WhoReport.json(who(WEIR_GATE, "Piano", "3-14"), crew -> Optional.empty());
    assertEquals(one, again);
  }

  @Test
  void a_crews_plan_is_what_a_split_among_them_gives() throws Exception {
    for (SolvedCrew crew : who(WEIR_GATE, "Piano", "3-14").crews()) {
      SplitLine.SplitOutcome outcome = SplitLine.split(crew.asked(), limits());
      assertEquals(crew.judged().plan().segments(), outcome.plan().orElseThrow().plan().segments());
    }
  }

  @Property(tries = 12)
  void crews_are_unlike_each_other_and_nobody_sits_on_two_chairs(
      @ForAll @Size(min = 1, max = 4) @UniqueElements List<Staff> staves) throws Exception {
    folder = Files.createTempDirectory("who");
    Map<String, List<String>> parts =
        staves.stream().collect(Collectors.toMap(staff -> staff.part, staff -> staff.bars()));
    parts.put("Piano", line());
    WhoCouldPlay who = who(score(parts, "120"), "Piano", "1-8");
    Set<Object> players = new HashSet<>();
    for (SolvedCrew crew : who.crews()) {
      assertTrue(players.add(Set.copyOf(crew.judged().plan().playing())), "twice the same");
      Set<Object> chairs = new HashSet<>();
      for (Candidate member : crew.members()) {
        assertTrue(member.chair().isEmpty() || chairs.add(member.chair().get()));
      }
    }
    assertTrue(who.crews().size() <= 6);
  }

  /** A staff of the random scores. */
  enum Staff {
    FLUTES("Flutes 1.2"),
    OBOE("Oboe"),
    CLARINETS("2 Klarinetten in B"),
    TRUMPETS("Trombe 1.2.3"),
    VIOLINS("Violini I"),
    FLUTE("Flute 3/Piccolo");

    private final String part;

    Staff(String part) {
      this.part = part;
    }

    List<String> bars() {
      List<String> bars = rests();
      bars.set(ordinal(), note("C", 5, 16, ""));
      return bars;
    }
  }

  private static String said(Optional<Sentence> words) {
    return words.map(Sentence::toString).orElse("");
  }

  private static List<String> names(SolvedCrew crew) {
    return crew.players().stream().map(PlayerWish::name).toList();
  }

  private static Candidate candidate(WhoCouldPlay who, String name) {
    return who.candidates().stream()
        .filter(one -> one.player().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static WhoCouldPlay who(Path file, String part, String bars) throws Refusal {
    LineChoice choice =
        new LineChoice(
            part,
            Optional.of(new BarChoice(bars)),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.of(new ToneChoice.All()));
    return WhoCouldPlay.of(SplitRequest.usual(LineRequest.whole(file).with(choice)), limits());
  }

  private static LimitsInForce limits() throws Refusal {
    return LimitsInForce.load(Optional.empty());
  }

  private static List<String> rests() {
    List<String> bars = new ArrayList<>();
    for (int i = 0; i < BARS; i++) {
      bars.add(REST);
    }
    return bars;
  }

  private static List<String> line() {
    List<String> bars = rests();
    bars.replaceAll(any -> run());
    return bars;
  }

  private static String run() {
    return note("A", 4, 1, "").repeat(2).concat(note("B", 4, 1, "").repeat(2)).repeat(4);
  }

  private Path score(Map<String, List<String>> parts, String tempo) throws IOException {
    StringBuilder list = new StringBuilder();
    StringBuilder bodies = new StringBuilder();
    int number = 1;
    for (Map.Entry<String, List<String>> part : new TreeMap<>(parts).entrySet()) {
      list.append("<score-part id=\"P" + number + "\"><part-name>" + part.getKey())
          .append("</part-name></score-part>");
      bodies.append("<part id=\"P" + number + "\">\n");
      for (int i = 0; i < BARS; i++) {
        bodies
            .append("<measure number=\"" + (i + 1) + "\">")
            .append(
                i == 0
                    ? "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4"
                        + "</beat-type></time></attributes><sound tempo=\""
                        + tempo
                        + "\"/>"
                    : "")
            .append(part.getValue().get(i))
            .append("</measure>\n");
      }
      bodies.append("</part>\n");
      number++;
    }
    return Files.writeString(
        folder.resolve("score.musicxml"),
        "<score-partwise version=\"4.0\"><part-list>"
            + list
            + "</part-list>\n"
            + bodies
            + "</score-partwise>\n");
  }

  private static String words(String words) {
    return "<direction><direction-type><words>" + words + "</words></direction-type></direction>";
  }
}
