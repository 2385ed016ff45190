package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.Xml;

/** What a check of a whole score tells first and last. */
class CheckReportTest {
  private static final String FAST = Xml.note("A", 4, 3, "").repeat(16);
  private static final String TEMPO = "<sound tempo=\"150\"/>";

  @TempDir private Path folder = Path.of("");

  /** A score whose parts, given as "name" or "name|sound", all play the same bars. */
  private Ran check(List<String> parts, List<String> bars, String... options) throws IOException {
    return check(parts, bars, IntStream.rangeClosed(1, bars.size()).toArray(), options);
  }

  private Ran check(List<String> parts, List<String> bars, int[] numbers, String... options)
      throws IOException {
    StringBuilder list = new StringBuilder();
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < parts.size(); i++) {
      String id = "P" + (i + 1);
      String[] names = parts.get(i).split("\\|", -1);
      list.append("<score-part id=\"" + id + "\"><part-name>" + names[0] + "</part-name>");
      if (names.length > 1) {
        list.append(
            "<score-instrument id=\"I1\"><instrument-name>x</instrument-name><instrument-sound>"
                + names[1]
                + "</instrument-sound></score-instrument>");
      }
      list.append("</score-part>");
      all.append("<part id=\"" + id + "\">");
      for (int bar = 0; bar < bars.size(); bar++) {
        all.append("<measure number=\"" + numbers[bar] + "\">");
        all.append(bar == 0 ? Xml.ATTRIBUTES : "").append(bars.get(bar)).append("</measure>");
      }
      all.append("</part>");
    }
    Path score = folder.resolve("report.musicxml");
    Files.writeString(
        score,
        "<score-partwise version=\"4.0\"><part-list>"
            + list
            + "</part-list>"
            + all
            + "</score-partwise>");
    return Ran.command(
        Stream.concat(Stream.of("check", score.toString()), Stream.of(options))
            .toArray(String[]::new));
  }

  private String check(String... parts) throws IOException {
    return check(List.of(parts), List.of(TEMPO + FAST, Xml.rest(48), FAST)).out();
  }

  private static String slashed(int slashes) {
    return Xml.note(
            "A",
            4,
            12,
            "<type>quarter</type><notations><ornaments><tremolo>"
                + slashes
                + "</tremolo></ornaments></notations>")
        .repeat(4);
  }

  private static String tempo(int perMinute) {
    return "<sound tempo=\"" + perMinute + "\"/>";
  }

  private static List<String> linesWith(String said, String text) {
    return said.lines().filter(line -> line.contains(text)).toList();
  }

  @Test
  void how_many_there_are_of_each_kind_stands_above() throws IOException {
    String said = check("Flute", "Clarinet");
    assertEquals("4 fast passages: 2 for the few, 2 comfortable", List.of(said.split("\n")).get(0));
  }

  @Test
  void a_part_that_nobody_knows_is_told_once_with_all_its_passages() throws IOException {
    String said = check("Flute", "Theramin of Glass", "Whirligig");
    assertEquals(
        List.of(
            "not judged: unknown instruments (Theramin of Glass, bars 1, 3; Whirligig, bars 1, 3);"
                + " check them with --part and --as INSTRUMENT"),
        linesWith(said, "Theramin"));
    assertTrue(said.startsWith("6 fast passages: 2 comfortable\n"), said);
  }

  @Test
  void data_names_each_part_that_is_not_judged_once() throws IOException {
    String said =
        check(
                List.of("Flute", "Whirligig", "Tenor Solo"),
                List.of(FAST, Xml.rest(48), FAST),
                "--json")
            .out();
    List<String> parts = new ArrayList<>();
    JsonParser.parseString(said)
        .getAsJsonObject()
        .getAsJsonArray("notJudged")
        .forEach(part -> parts.add(part.getAsJsonObject().get("name").getAsString()));
    assertEquals(List.of("Whirligig", "Tenor Solo"), parts);
  }

  @Test
  void singers_are_told_once() throws IOException {
    String said =
        check("Voice", "Tenor Solo", "Mezzosopran", "Chœur", "Rosina|voice.soprano", "Flute");
    assertEquals(
        List.of("not judged: singers (Voice, Tenor Solo, Mezzosopran, Chœur, Rosina)"),
        linesWith(said, "not judged"));
  }

  @Test
  void instruments_with_the_name_of_a_voice_do_not_sing() throws IOException {
    String said = check("Alto Flute", "Tenor Trombone", "Bass|pluck.guitar.bass");
    assertEquals(List.of(), linesWith(said, "singers"));
  }

  @Test
  void no_cell_is_left_with_a_dash_or_a_riddle() throws IOException {
    String said = check("Double Bass", "Clarinet", "Harp");
    for (String riddle : List.of(" 0.0 s", " nothing", " - ")) {
      assertFalse(said.contains(riddle), said);
    }
    assertFalse(said.contains("pedals"), said);
  }

  @Test
  void the_worst_stands_first_and_equals_by_part_and_bar() throws IOException {
    List<String> heads = linesWith(check("Flute", "Clarinet", "Oboe"), "staff 1, voice");
    assertEquals(
        List.of("bar 1", "bar 3", "bar 1", "bar 3", "bar 1", "bar 3"),
        heads.stream().map(head -> head.replaceAll(".*(bar \\d).*", "$1")).toList());
    assertTrue(heads.get(4).startsWith("Flute"), heads.toString());
  }

  @Test
  void what_is_for_the_few_has_its_command_too() throws IOException {
    Ran ran = check(List.of("Clarinet", "Flute"), List.of(TEMPO + FAST));
    assertEquals(Commands.FINE, ran.exitCode());
    assertTrue(ran.out().contains("for the few"), ran.out());
    assertEquals(1, linesWith(ran.out(), "split ").size(), ran.out());
    assertTrue(linesWith(ran.out(), "split ").get(0).contains("--part P1"), ran.out());
  }

  @Test
  void a_tempo_that_makes_most_of_it_implausible_is_suspected_once() throws IOException {
    List<String> bars = List.of(tempo(240) + FAST, Xml.rest(48), FAST);
    String said = check(List.of("Oboe", "Clarinet", "Bassoon"), bars).out();
    assertEquals(
        List.of(
            "Caution: the tempo may be wrong: quarter = 240, at which 6 of 6 fast passages are"
                + " beyond their own instruments or for the few."),
        linesWith(said, "Caution"));
    String json = check(List.of("Oboe", "Clarinet", "Bassoon"), bars, "--json").out();
    assertTrue(
        json.contains("\"suspicions\": [\n    \"the tempo may be wrong: quarter = 240"), json);
  }

  @Test
  void each_movement_has_a_suspicion_of_its_own() throws IOException {
    List<String> winds = List.of("Oboe", "Clarinet", "Bassoon", "Cor anglais");
    List<String> bars = List.of(tempo(100) + FAST, Xml.rest(48), tempo(240) + FAST);
    List<String> cautions = linesWith(check(winds, bars, new int[] {1, 2, 1}).out(), "Caution");
    assertEquals(1, cautions.size(), cautions.toString());
    assertTrue(
        cautions.get(0).startsWith("Caution: movement 2: the tempo may be wrong: quarter = 240"),
        cautions.toString());
  }

  @Test
  void half_of_the_passages_or_a_tempo_that_the_user_gives_raise_no_suspicion() throws IOException {
    assertEquals(List.of(), linesWith(check("Flute", "Flute", "Clarinet", "Clarinet"), "Caution"));
    List<String> bars = List.of(TEMPO + FAST, Xml.rest(48), FAST);
    String said = check(List.of("Oboe", "Clarinet", "Bassoon"), bars, "--tempo", "240").out();
    assertEquals(List.of(), linesWith(said, "Caution"));
  }

  @Test
  void tremolo_that_is_not_measured_is_told_once_for_each_part() throws IOException {
    List<String> bars =
        List.of(
            tempo(132) + Xml.note("A", 4, 48, ""),
            slashed(3),
            slashed(3),
            Xml.rest(48),
            slashed(3),
            tempo(200) + slashed(2),
            tempo(50) + slashed(3));
    Ran ran = check(List.of("Violin I", "Flute"), bars);
    assertEquals(
        List.of(
            "Violin I: tremolo not measured in bar 6 (slashes that outrun the bow), bars 2-3, 5"
                + " (three slashes); tremolo counted, but in doubt, in bar 7 (three slashes, but"
                + " slow enough to be counted)"),
        linesWith(ran.out(), "tremolo not measured"));
    assertEquals(1, linesWith(ran.out(), "--tremolo unmeasured").size());
    String json = check(List.of("Violin I"), bars, "--json").out();
    assertTrue(json.contains("\"why\": \"slashes that outrun the bow\""), json);
    String one = check(List.of("Violin I"), bars, "--part", "P1", "--bars", "5-5").out();
    assertTrue(one.contains("Violin I: tremolo not measured in bar 5 (three slashes)\n"), one);
  }

  @Test
  void a_passage_that_is_hard_is_held_against_the_repertoire() throws IOException {
    Ran ran = check(List.of("Violin"), List.of(tempo(186) + FAST));
    List<String> said = linesWith(ran.out(), "faster than");
    assertEquals(1, said.size(), ran.out());
    assertTrue(
        said.get(0)
            .trim()
            .matches("faster than \\d+ of 100 fast passages of .* for the violin in \\d+ scores"),
        said.get(0));
    String json = check(List.of("Violin"), List.of(tempo(186) + FAST), "--json").out();
    assertTrue(json.contains("\"fasterThan\": "), json);
    assertTrue(
        linesWith(check(List.of("Violin"), List.of(tempo(120) + FAST)).out(), "faster").isEmpty());
  }
}
