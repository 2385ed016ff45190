package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.Xml;

/** What is printed says something, and no number contradicts its neighbour. */
class SaysSomethingTest {
  /** What says nothing to a musician. */
  private static final List<Pattern> EMPTY =
      Stream.of(
              "(lasts|last for|goes for) 0\\.0 s",
              "otherwise nothing",
              "up to -",
              "not thinned either",
              "goes at no tempo",
              "(?m)^\\s*(slowest|fastest)\\b.* -( |$)",
              "\\d\\+\\d+/\\d+",
              "beat \\d+, \\d+ of \\d+",
              " gives {2}")
          .map(Pattern::compile)
          .toList();

  private static final Pattern COMPARED =
      Pattern.compile("at ([0-9.]+) a second, managed by [0-9.]+ of 100 up to ([0-9.]+)");
  private static final List<List<String>> LINES =
      List.of(
          List.of("lantern-run", "Piano", "5-16"),
          List.of("mill-stairs", "Piano", "1-19"),
          List.of("signal-hill", "Trumpet 1", "9-20"));

  @TempDir private Path folder = Path.of("");

  private static String[] command(String name, List<String> line, String... more) {
    return Stream.concat(
            Stream.of(
                name,
                "samples/" + line.get(0) + ".musicxml",
                "--part",
                line.get(1),
                "--staff",
                "1",
                "--bars",
                line.get(2)),
            Stream.of(more))
        .toArray(String[]::new);
  }

  private static Stream<String[]> commands(List<String> line) {
    String all = "Bassoon 1, Clarinet 1, Flute 1, Trumpet 2, Tuba 1";
    return Stream.of(
        new String[] {"check", "samples/" + line.get(0) + ".musicxml"},
        command(
            "check", line, "--as", "flute, clarinet, oboe, trumpet, tuba, harp, marimba, piano"),
        command("split", line, "--players", all, "--time", "2"),
        command("split", line, "--players", "Clarinet 1", "--time", "2"),
        command("thin", line, "--players", all, "--time", "2"),
        command(
            "tempo",
            line,
            "--players",
            "Flute 1, Clarinet 1",
            "--tempi",
            "90-110/20",
            "--time",
            "2"));
  }

  @TestFactory
  Stream<DynamicTest> no_sample_is_told_of_in_empty_words() {
    return LINES.stream()
        .flatMap(SaysSomethingTest::commands)
        .map(args -> DynamicTest.dynamicTest(String.join(" ", args), () -> says(args)));
  }

  private static void says(String... args) {
    String printed = Ran.command(args).out();
    assertFalse(printed.isEmpty());
    for (Pattern empty : EMPTY) {
      assertFalse(empty.matcher(printed).find(), () -> empty + " in\n" + printed);
    }
    assertFalse(printed.contains("triple tonguing"), "no sample has triplets:\n" + printed);
    printed.lines().filter(row -> row.contains("too fast")).forEach(SaysSomethingTest::isFaster);
  }

  private static void isFaster(String row) {
    for (MatchResult compared : COMPARED.matcher(row).results().toList()) {
      double asked = Double.parseDouble(compared.group(1));
      double managed = Double.parseDouble(compared.group(2));
      assertTrue(asked > managed, row);
    }
  }

  /** A bar of notes, so many to a quarter, as one flute part, at a tempo. */
  private List<String> check(int perQuarter, int perMinute, int bars, String as)
      throws IOException {
    String notes = Xml.note("A", 5, 12 / perQuarter, "").repeat(4 * perQuarter);
    String[] measures = new String[bars];
    Arrays.fill(measures, notes);
    measures[0] = Xml.ATTRIBUTES + "<sound tempo=\"" + perMinute + "\"/>" + notes;
    Path file = folder.resolve("words.musicxml");
    Files.writeString(file, Xml.score(measures));
    return Ran.command("check", file.toString(), "--part", "Flute", "--as", as)
        .out()
        .lines()
        .map(String::strip)
        .toList();
  }

  @Test
  void a_line_that_is_too_fast_at_once_says_how_fast_it_is_and_may_be() throws IOException {
    List<String> told = check(4, 180, 2, "clarinet");
    assertEquals(
        "decides: burst at bar 1, beat 2: 5 notes at 12.0 a second, managed by 84 of 100 up to 8.8;"
            + " with single tonguing",
        told.get(2));
    assertEquals("too fast from the first beat", told.get(3));
    assertEquals(
        "84 of 100 manage it up to quarter = 132; thinned at this tempo: half", told.get(4));
  }

  @Test
  void a_line_that_tires_says_how_long_it_lasts_and_to_where() throws IOException {
    List<String> told = check(4, 150, 20, "flute");
    assertTrue(
        told.get(2)
            .matches(
                "decides: tiredness at bar 20, last quarter of beat 4: \\d+ % of what 84 of 100 can spend; .*"),
        told.get(2));
    assertTrue(
        told.get(3).matches("84 of 100 last for [1-9][0-9.]* s, to bar \\d+, .*beat \\d"),
        told.get(3));
  }

  @Test
  void a_line_that_no_tempo_helps_says_why() throws IOException {
    List<String> told = check(4, 150, 20, "flute");
    assertEquals(
        "at no tempo: it is too long for the breath; no thinning of it can be played", told.get(4));
  }

  @Test
  void a_line_out_of_range_says_from_where() throws IOException {
    List<String> told = check(4, 60, 2, "tuba");
    assertEquals(
        "decides: range: the first note that the instrument lacks is at bar 1, beat 1",
        told.get(2));
  }
}
