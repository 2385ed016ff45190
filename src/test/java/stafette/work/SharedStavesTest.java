package stafette.work;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stafette.musicxml.read.Xml.note;
import static stafette.musicxml.read.Xml.rest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.Relaying;
import stafette.ask.SplitRequest;
import stafette.chairs.Chair;
import stafette.chairs.Chairs;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.write.ScoreWriter;
import stafette.musicxml.write.WrittenScore;
import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;

/**
 * Writes into staves of several players. Invented: a piano has a line on one note, sixteen
 * sixteenths a bar, and a second part is shared.
 */
class SharedStavesTest {
  private static final String WHOLE = "<note><rest measure=\"yes\"/><duration>16</duration></note>";
  private static final String HALF = note("C", 5, 8, "") + rest(8);
  private static final LimitsInForce LIMITS = limits();

  @TempDir Path folder = Path.of("");

  @Test
  void two_flutes_take_turns_in_one_voice_and_labels_say_who_plays() throws Exception {
    Written written =
        written("Flutes 1.2", List.of(WHOLE, WHOLE, HALF), "Flute 1: 1.1-1.4", 0, 16, 31);
    assertEquals(
        "1: [1.] E E E E E E E E E E E E E E E E | 2: [a 2] E [2.] E E E E E E E E E E E E E E E"
            + " | 3: [a 2] C r",
        written.staff());
    assertEquals(List.of("Piano", "Flutes 1.2"), written.parts());
  }

  @Test
  void an_italian_staff_is_written_into_as_well() throws Exception {
    Written written = written("Flauti 1.2", List.of(WHOLE, WHOLE), "Flute", 0, 16, 31);
    assertTrue(written.staff().startsWith("1: [1.] E E"), written.staff());
  }

  @Test
  void a_mark_that_was_in_force_is_said_again() throws Exception {
    String second = words("2.") + note("C", 5, 16, "");
    Written written = written("Oboi 1.2", List.of(second, WHOLE, HALF), "Oboe", 16, 16, 31);
    assertTrue(written.staff().contains("2: [a 2] E [2.] E E"), written.staff());
    assertTrue(written.staff().endsWith("3: C r"), written.staff());
  }

  @Test
  void who_is_free_beside_another_gets_a_voice_of_its_own() throws Exception {
    String second = words("2.") + note("C", 5, 16, "");
    Written written = written("Flutes 1.2", List.of(second, WHOLE), 0, 15, "Flute 1");
    assertEquals(
        "1: [2.] C <back> [1. in voice 2] E E E E E E E E E E E E E E E E | 2: r", written.staff());
    assertEquals(
        "1: 16 of the line, 2: 0 of the line and 1 more", written.chairs(), written.staff());
  }

  @Test
  void a_free_voice_is_used_where_there_is_one() throws Exception {
    String both =
        voiced(rest(16), 1)
            + "<backup><duration>16</duration></backup>"
            + voiced(note("C", 5, 16, ""), 2);
    Written written = written("Flutes 1.2", List.of(both, WHOLE), 0, 15, "Flute 1");
    assertEquals("1: 16 of the line, 2: 0 of the line and 1 more", written.chairs());
    assertTrue(!written.text().contains("<voice>3</voice>"), written.text());
  }

  @Test
  void a_line_in_the_staff_of_its_own_players_only_gets_labels() throws Exception {
    Path file = folder.resolve("own.musicxml");
    String bar = note("E", 5, 1, "").repeat(16);
    Files.writeString(file, score("Flutes 1.2", List.of(words("a 2") + bar, bar, HALF), 2));
    Written written = split(file, "P2", "Flute 1, Flute 2", List.of(0, 16), List.of(16, 31));
    assertEquals(
        "1: [1.] E E E E E E E E E E E E E E E E | 2: [a 2] E [2.] E E E E E E E E E E E E E E E"
            + " | 3: [a 2] C r",
        written.staff());
  }

  @Test
  void a_section_divides_in_its_own_staff() throws Exception {
    Path file = folder.resolve("section.musicxml");
    Files.writeString(file, score("Violins I", List.of(WHOLE, WHOLE, HALF), 2));
    Written written = split(file, "P1", "Violins I div. a 2", List.of(0, 16), List.of(16, 31));
    assertEquals(
        "1: [div. a 2, outside] E E E E E E E E E E E E E E E E | 2: [unis.] E [inside] E E E E E E"
            + " E E E E E E E E E | 3: [unis.] C r",
        written.staff());
    assertEquals(List.of("Piano", "Violins I"), written.parts());
  }

  @Test
  void three_trumpets_are_numbered() throws Exception {
    Path file = folder.resolve("trumpets.musicxml");
    Files.writeString(file, score("Trumpets in C 1.2.3", List.of(WHOLE, WHOLE, HALF), 2));
    Written written = split(file, "P1", "Trumpet 2, Trumpet 3", List.of(0, 16), List.of(16, 31));
    assertTrue(written.staff().contains("2: [2.3.] E [3.] E"), written.staff());
    assertTrue(written.staff().endsWith("3: [a 3] C r"), written.staff());
  }

  @Test
  void players_who_have_different_notes_at_a_time_get_a_voice_each() throws Exception {
    Path file = folder.resolve("hocket.musicxml");
    Files.writeString(file, score("Flutes 1.2", List.of(WHOLE, WHOLE, HALF), 2));
    Written written = hocket(file, "P1");
    assertEquals("1: 16 of the line and 1 more, 2: 16 of the line and 1 more", written.chairs());
    assertEquals(List.of("Piano", "Flutes 1.2"), written.parts());
  }

  @Test
  void a_hocket_in_the_staff_of_its_own_players_loses_no_note() throws Exception {
    Path file = folder.resolve("own-hocket.musicxml");
    String bar = note("E", 5, 1, "").repeat(16);
    Files.writeString(file, score("Flutes 1.2", List.of(bar, bar, HALF), 2));
    Written written = hocket(file, "P2");
    assertTrue(written.chairs().startsWith("1: 16 of the line"), written.chairs());
  }

  @Test
  void a_cue_stands_in_the_staff_where_all_of_its_players_have_rested_long() throws Exception {
    Written written = afterTenBars(160, WHOLE);
    assertTrue(written.staff().contains("9: r | 10: r <back> [Oboe] E E"), written.staff());
    assertTrue(written.staff().contains(" | 11: [1.] [from Oboe] E"), written.staff());
    assertEquals(16, written.text().split("<cue/>", -1).length - 1);
  }

  @Test
  void the_cue_goes_on_to_an_entry_within_a_bar() throws Exception {
    Written written = afterTenBars(168, WHOLE);
    assertEquals(24, written.text().split("<cue/>", -1).length - 1, written.staff());
  }

  @Test
  void nothing_is_cued_to_who_sits_beside_somebody_who_plays() throws Exception {
    Written written = afterTenBars(160, words("2.") + note("C", 5, 16, ""));
    assertTrue(!written.text().contains("<cue/>"), written.staff());
  }

  /** An oboe has the line until a flute enters, whose staff has something in its fifth bar. */
  private Written afterTenBars(int entry, String fifth) throws Exception {
    Path file = folder.resolve("long.musicxml");
    List<String> bars = new ArrayList<>(Collections.nCopies(11, WHOLE));
    bars.set(4, fifth);
    StringBuilder oboe = new StringBuilder();
    part(oboe, "P3", Collections.nCopies(11, WHOLE));
    Files.writeString(
        file,
        score("Flutes 1.2", bars, 11)
            .replace(
                "</part-list>",
                "<score-part id=\"P3\"><part-name>Oboe</part-name></score-part></part-list>")
            .replace("</score-partwise>", oboe + "</score-partwise>"));
    SplitRequest request = request(file, "P1", "1-11", "Oboe, Flute 1, Flute 2");
    OpenLine line = OpenLine.in(open(file), request, LIMITS);
    return write(
        file,
        new Plan(
            line.brief(), List.of(new Segment(0, 0, 0, entry), new Segment(1, 0, entry, 175))));
  }

  /** Both flutes take every other beat of all of it, or every other stroke. */
  private static Written hocket(Path file, String part) throws Exception {
    SplitRequest request = request(file, part, "Flute 1, Flute 2");
    Relaying relaying = new Relaying(Hocket.BEAT, 1, false, List.of());
    OpenLine line = OpenLine.in(open(file), request.with(relaying), LIMITS);
    return write(
        file,
        new Plan(
            line.brief(),
            List.of(
                new Segment(0, 0, 0, 0, 31, stafette.plan.Pattern.ODD),
                new Segment(0, 1, 0, 0, 31, stafette.plan.Pattern.EVEN))));
  }

  @Property(tries = 60)
  void each_chair_has_its_share_and_what_it_had(
      @ForAll @Size(min = 3, max = 3) List<Bar> bars, @ForAll boolean swapped) throws Exception {
    folder = Files.createTempDirectory("shared");
    List<String> texts = bars.stream().map(bar -> bar.text).toList();
    Path file = folder.resolve("random.musicxml");
    Files.writeString(file, score("Flutes 1.2", texts, 2));
    String players = swapped ? "Flute 2, Flute 1" : "Flute 1, Flute 2";
    Optional<Written> written = trySplit(file, players);
    if (written.isPresent()) {
      written.get().demandShares();
    }
  }

  /** What a bar of the flutes may hold. */
  enum Bar {
    EMPTY(WHOLE),
    UNMARKED(words("a 2") + note("C", 5, 4, "") + rest(12)),
    FIRST(words("1.") + rest(4) + note("D", 5, 8, "") + rest(4)),
    SECOND(words("2.") + note("B", 4, 16, "")),
    BOTH(
        voiced(note("D", 5, 8, "") + rest(8), 1)
            + "<backup><duration>16</duration></backup>"
            + voiced(note("B", 4, 4, "") + rest(12), 2));

    private final String text;

    Bar(String text) {
      this.text = text;
    }
  }

  private Written written(
      String name, List<String> bars, String players, int firstEnd, int second, int last)
      throws Exception {
    Path file = folder.resolve("score.musicxml");
    Files.writeString(file, score(name, bars, 2));
    String instrument = players.replaceAll(" .*", "");
    return split(
        file,
        "P1",
        instrument + " 1, " + instrument + " 2",
        List.of(0, Math.max(firstEnd, second)),
        List.of(second, last));
  }

  private Written written(String name, List<String> bars, int first, int last, String player)
      throws Exception {
    Path file = folder.resolve("score.musicxml");
    Files.writeString(file, score(name, bars, 2));
    return split(file, "P1", player, List.of(first, last));
  }

  /** Gives each player a stretch of the line, by hand, and writes that. */
  @SafeVarargs
  private Written split(Path file, String part, String players, List<Integer>... stretches)
      throws Exception {
    OpenLine line = OpenLine.in(open(file), request(file, part, players), LIMITS);
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < stretches.length; i++) {
      segments.add(new Segment(i, 0, stretches[i].get(0), stretches[i].get(1)));
    }
    return write(file, new Plan(line.brief(), segments));
  }

  /** The turns that a search finds, if there is a plan. */
  private Optional<Written> trySplit(Path file, String players) throws Exception {
    OpenLine line = OpenLine.in(open(file), request(file, "P1", players), LIMITS);
    SplitLine.SplitOutcome outcome = line.plan(() -> false, progress -> {});
    return outcome.plan().isPresent()
        ? Optional.of(write(file, outcome.plan().get().plan()))
        : Optional.empty();
  }

  private static OpenScore open(Path file) throws Exception {
    return OpenScore.open(file, Tremolo.AS_WRITTEN, false, LIMITS);
  }

  private static SplitRequest request(Path file, String part, String players) throws Exception {
    return request(file, part, "1-2", players);
  }

  private static SplitRequest request(Path file, String part, String bars, String players)
      throws Exception {
    LineChoice choice =
        new LineChoice(
            part,
            Optional.of(new BarChoice(bars)),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.of(new ToneChoice.All()));
    SplitRequest usual = SplitRequest.usual(LineRequest.whole(file).with(choice));
    return usual.with(PlayerWish.parse(players), List.of());
  }

  private static Written write(Path file, Plan plan) throws Exception {
    Document before = MusicXmlReader.read(Files.readAllBytes(file));
    ScoreSeating seating = new ScoreSeating(before.score(), LIMITS.catalogue());
    WrittenScore once = ScoreWriter.write(before, plan, SourceTreatment.KEEP, seating);
    Document after = MusicXmlReader.read(once.bytes());
    ScoreSeating again = new ScoreSeating(after.score(), LIMITS.catalogue());
    WrittenScore twice = ScoreWriter.write(after, plan, SourceTreatment.KEEP, again);
    assertArrayEquals(once.bytes(), twice.bytes(), "written twice");
    return new Written(before, after, plan);
  }

  /** A score before and after. */
  private record Written(Document before, Document after, Plan plan) {
    String text() {
      return after.origin().text();
    }

    List<String> parts() {
      return after.score().parts().stream().map(part -> part.name()).toList();
    }

    /** The second part: labels, names of notes, rests, bar by bar. */
    String staff() {
      String part = text().substring(text().indexOf("<part id=\"P2\""));
      Matcher measures =
          Pattern.compile("<measure number=\"(\\d+)\">(.*?)</measure>", Pattern.DOTALL)
              .matcher(part);
      List<String> bars = new ArrayList<>();
      while (measures.find()) {
        bars.add(measures.group(1) + ": " + elements(measures.group(2)));
      }
      return String.join(" | ", bars);
    }

    private static String elements(String measure) {
      Matcher element =
          Pattern.compile(
                  "<direction\\b.*?</direction>|<note\\b.*?</note>|<backup>", Pattern.DOTALL)
              .matcher(measure);
      List<String> all = new ArrayList<>();
      while (element.find()) {
        String text = element.group();
        if (text.startsWith("<direction")) {
          if (text.contains("<words")) {
            String voice =
                text.contains("<voice>")
                    ? " in voice " + text.replaceAll("(?s).*<voice>(.*?)</voice>.*", "$1")
                    : "";
            all.add("[" + text.replaceAll("(?s).*<words[^>]*>(.*?)</words>.*", "$1") + voice + "]");
          }
        } else if (text.startsWith("<backup")) {
          all.add("<back>");
        } else {
          all.add(text.contains("<rest") ? "r" : text.replaceAll("(?s).*<step>(.)</step>.*", "$1"));
        }
      }
      return String.join(" ", all);
    }

    /** What each chair has of the line, and besides. */
    String chairs() {
      return heard(after.score()).entrySet().stream()
          .map(entry -> entry.getKey() + ": " + counted(entry.getValue()))
          .collect(Collectors.joining(", "));
    }

    private String counted(Set<String> heard) {
      Set<String> line =
          plan.line().strokes().stream().map(Written::of).collect(Collectors.toSet());
      long own = heard.stream().filter(line::contains).count();
      long more = heard.size() - own;
      return own + " of the line" + (more == 0 ? "" : " and " + more + " more");
    }

    /** By the places of chairs. */
    private static Map<Integer, Set<String>> heard(Score score) {
      Chairs chairs = Chairs.of(score, LIMITS.catalogue());
      return chairs.all().stream()
          .filter(chair -> chair.part().equals("P2"))
          .collect(
              Collectors.toMap(
                  Chair::place,
                  chair ->
                      chairs.given(chair).stream()
                          .map(note -> of(note.stroke()))
                          .collect(Collectors.toCollection(TreeSet::new))));
    }

    private static String of(Stroke stroke) {
      return stroke.onset().quarters() + " " + stroke.keys();
    }

    void demandShares() {
      Map<Integer, Set<String>> expected = heard(before.score());
      for (Segment segment : plan.segments()) {
        Set<String> own =
            Objects.requireNonNull(expected.get(plan.player(segment).chair().orElseThrow()));
        IntStream.rangeClosed(segment.first(), segment.last())
            .mapToObj(plan.line()::stroke)
            .map(Written::of)
            .forEach(own::add);
      }
      assertEquals(expected, heard(after.score()), staff());
    }
  }

  private static LimitsInForce limits() {
    try {
      return LimitsInForce.load(Optional.empty());
    } catch (Refusal e) {
      throw new IllegalStateException(e);
    }
  }

  private static String score(String name, List<String> shared, int lineBars) {
    StringBuilder text =
        new StringBuilder(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">\n"
                + "<part-list><score-part id=\"P1\"><part-name>Piano</part-name></score-part>"
                + "<score-part id=\"P2\"><part-name>"
                + name
                + "</part-name></score-part></part-list>\n");
    List<String> piano = new ArrayList<>();
    for (int i = 0; i < shared.size(); i++) {
      piano.add(i < lineBars ? note("E", 5, 1, "").repeat(16) : WHOLE);
    }
    part(text, "P1", piano);
    part(text, "P2", shared);
    return text.append("</score-partwise>\n").toString();
  }

  private static void part(StringBuilder text, String id, List<String> bars) {
    text.append("<part id=\"").append(id).append("\">\n");
    for (int i = 0; i < bars.size(); i++) {
      text.append("<measure number=\"").append(i + 1).append("\">");
      if (i == 0) {
        text.append(
            "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type>"
                + "</time></attributes><direction><sound tempo=\"100\"/></direction>");
      }
      text.append(bars.get(i)).append("</measure>\n");
    }
    text.append("</part>\n");
  }

  private static String words(String words) {
    return "<direction><direction-type><words>" + words + "</words></direction-type></direction>";
  }

  private static String voiced(String notes, int voice) {
    return notes.replace("</duration>", "</duration><voice>" + voice + "</voice>");
  }
}
