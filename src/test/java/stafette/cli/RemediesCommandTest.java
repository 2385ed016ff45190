package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Where a split has no plan: the smallest set of reasons, and remedies that really help. */
class RemediesCommandTest {
  private static final List<String> LANTERN =
      List.of("samples/lantern-run.musicxml", "--part", "Piano", "--staff", "1", "--bars", "5-8");
  private static final List<String> STAIRS =
      List.of("samples/mill-stairs.musicxml", "--part", "P1", "--staff", "1", "--bars", "1-8");
  private static final List<String> HILL =
      List.of("samples/signal-hill.musicxml", "--part", "Trumpet 1", "--bars", "9-14");
  private static final Pattern ADDED = Pattern.compile("\"([^\"]+)\"");

  @Test
  void each_remedy_typed_as_it_is_given_makes_a_plan() {
    List<String> options = helped(HILL, "Flute 1, Oboe 2");
    assertTrue(options.stream().anyMatch(option -> option.startsWith("add ")), options.toString());
    assertTrue(
        options.stream().anyMatch(option -> option.startsWith("--tempo ")), options.toString());
  }

  @Test
  void a_technique_that_not_everybody_has_is_the_smallest_change() {
    List<String> options = helped(STAIRS, "Bassoon 1, Bassoon 2, Clarinet 1, Clarinet 2");
    assertEquals("--allow \"double tonguing\"", options.get(0));
    assertEquals("--slur two-and-two", options.get(1));
  }

  @Test
  void where_notes_come_too_fast_a_slower_tempo_comes_last_and_other_ways_to_make_them_first() {
    List<String> options = helped(LANTERN, "Clarinet 1, Clarinet 2");
    List<String> kinds =
        options.stream().map(option -> option.split(" ", 2)[0]).distinct().toList();
    assertEquals(List.of("add", "--hocket", "thin", "--tempo"), kinds);
    assertFalse(options.stream().anyMatch(option -> option.contains("Clarinet")), kinds.toString());
  }

  @Test
  void where_players_are_spent_one_more_of_the_same_kind_comes_first() {
    List<String> options = helped(LANTERN, "Flute 1");
    assertEquals("add \"Flute 2\"", options.get(0), options.toString());
  }

  @Test
  void where_no_rotation_holds_turns_of_any_length_do() {
    List<String> options = helped(HILL, "Flute 3", "--favour", "regular");
    assertEquals("--favour balance", options.get(0), options.toString());
  }

  @Test
  void beside_each_remedy_stand_the_turns_it_makes() {
    String out = split(LANTERN, "Clarinet 1, Clarinet 2").out();
    assertTrue(
        out.contains(
            "Clarinet 1, 2 in turn, a bar each (4 turns); Clarinet 1 from 5.1, Clarinet 2 from 6.1"),
        out);
  }

  @Test
  void where_locks_want_more_notes_together_a_wider_overlap_helps() {
    assertEquals("--overlap 1..beat", widened("1..1", "6.2"));
    assertEquals("--overlap 1..8", widened("1..beat", "6.2+1/6"));
    assertEquals("--overlap 1..beat", widened("8..beat", "6.2"));
  }

  /** Flute 2 enters on 6.1, and Flute 1 leaves after it. */
  private static String widened(String overlap, String leaves) {
    return helped(
            LANTERN,
            "Flute 1, Flute 2",
            "--overlap",
            overlap,
            "--lock",
            "Flute 1 = 5.1-" + leaves,
            "--lock",
            "Flute 2 = 6.1-8.4+5/6")
        .stream()
        .filter(option -> option.startsWith("--overlap "))
        .findFirst()
        .orElse("none");
  }

  @Test
  void the_text_says_where_why_and_what_helps() {
    Ran ran = split(HILL, "Flute 1, Oboe 2");
    assertEquals(Commands.FINDINGS, ran.exitCode(), ran.err());
    String out = ran.out();
    assertTrue(out.contains("No plan was found that 84 of 100 manage"), out);
    assertTrue(out.contains("Trumpet 1, bar 13, beat 1"), out);
    assertTrue(out.contains("other notes: the score gives Flute 1 something else"), out);
    assertTrue(out.contains("Each of these makes a plan possible, in the order to try them"), out);
  }

  /** The options given, each of them typed and found to make a plan. */
  private static List<String> helped(List<String> line, String players, String... more) {
    Ran ran = split(line, players, with(more, "--json", "--time", "60"));
    assertEquals(Commands.FINDINGS, ran.exitCode(), ran.err());
    JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
    assertFalse(json.getAsJsonArray("findings").isEmpty());
    List<String> options = new ArrayList<>();
    for (JsonElement remedy : json.getAsJsonArray("remedies")) {
      String option = remedy.getAsJsonObject().get("option").getAsString();
      options.add(option);
      Ran again =
          option.startsWith("thin") ? new Ran(0, "", "") : typed(line, players, option, more);
      assertEquals(Commands.FINE, again.exitCode(), option + again.err() + again.out());
    }
    return options;
  }

  private static Ran typed(List<String> line, String players, String option, String... more) {
    if (option.startsWith("add ")) {
      StringBuilder all = new StringBuilder(players);
      Matcher names = ADDED.matcher(option);
      while (names.find()) {
        all.append(", ").append(names.group(1));
      }
      return split(line, all.toString(), more);
    }
    String[] words = option.split(" ", 2);
    List<String> others = new ArrayList<>(Arrays.asList(more));
    int before = others.indexOf(words[0]);
    if (before >= 0) {
      others.subList(before, before + 2).clear();
    }
    return split(
        line, players, with(others.toArray(String[]::new), words[0], words[1].replace("\"", "")));
  }

  private static String[] with(String[] options, String... more) {
    List<String> all = new ArrayList<>(Arrays.asList(options));
    all.addAll(Arrays.asList(more));
    return all.toArray(String[]::new);
  }

  private static Ran split(List<String> line, String players, String... more) {
    List<String> args = new ArrayList<>(List.of("split"));
    args.addAll(line);
    args.addAll(List.of("--players", players));
    args.addAll(Arrays.asList(more));
    return Ran.command(args.toArray(String[]::new));
  }
}
