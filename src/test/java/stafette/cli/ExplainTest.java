package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan costs and what it does to the ear, from the command line. */
class ExplainTest {
  private static final String LANTERN = "samples/lantern-run.musicxml";
  private static final String SEATS = "flute 1: -2 3.5; Flute 2: 1 7.5";

  @TempDir private Path folder = Path.of("");

  @Test
  void the_parts_of_the_text_add_up_to_the_cost_of_the_plan() {
    String out = lantern("preview", "--explain", "--overlap", "2..3").out();
    int sum = sumOf(out, "(?m)^  Flute [12] .* ([0-9]+)$");
    sum += sumOf(out, "(?m) (?:handoff|entry|landing|phrase|overlap|blend) +([0-9]+)  ");
    sum += sumOf(out, "(?m)^  players +([0-9]+) ");
    sum += sumOf(out, "(?m)^  idle +([0-9]+) ");
    assertEquals(sumOf(out, "(?m)^  sum +([0-9]+)$"), sum, out);
  }

  @Test
  void the_text_says_why_and_calls_the_estimate_one_with_its_sources() {
    String out = lantern("preview", "--explain", "--overlap", "2..3").out();
    for (String words :
        List.of(
            "enters on the first beat of the bar",
            "lands off the beat",
            "1 note more shared than the landing note alone",
            "flute to flute",
            "2 used",
            "At the handoffs (an estimate, outside the cost)",
            "+3.0 dB",
            "27 to 37 ms",
            "6.0 ms",
            "Rasch",
            "Friberg")) {
      assertTrue(out.contains(words), words + "\n" + out);
    }
    assertFalse(out.contains("2.91 ms a metre"), "without seats nothing is said of them");
  }

  @Test
  void unasked_nothing_of_it_is_told() {
    String out = lantern("preview").out();
    assertFalse(out.contains("At the handoffs") || out.contains("fast notes"), out);
  }

  /** Three metres across and four back are five; at 343.42 m/s they take 14.6 ms. */
  @Test
  void seats_tell_how_far_and_how_late() {
    String out = lantern("preview", "--seats", SEATS).out();
    assertTrue(out.contains("5.0 m, 14.6 ms"), out);
    assertTrue(out.contains("2.91 ms a metre (343 m/s"), out);
    assertFalse(out.contains("fast notes"), "the cost was not asked for");
  }

  @Test
  void the_parts_of_the_json_add_up_and_each_handoff_has_its_ear() {
    JsonObject json =
        JsonParser.parseString(lantern("split", "--json", "--seats", SEATS).out())
            .getAsJsonObject();
    int sum = json.get("playersCost").getAsInt() + json.get("hocketsCost").getAsInt();
    for (String group : List.of("segments", "handoffs")) {
      for (JsonElement entry : json.getAsJsonArray(group)) {
        sum +=
            entry.getAsJsonObject().getAsJsonObject("cost").entrySet().stream()
                .mapToInt(part -> part.getValue().getAsInt())
                .sum();
      }
    }
    assertEquals(json.get("cost").getAsInt(), sum);
    JsonObject handoff = json.getAsJsonArray("handoffs").get(0).getAsJsonObject();
    assertEquals(
        "enters on the first beat of the bar",
        handoff.getAsJsonObject("why").get("entry").getAsString());
    JsonObject ear = handoff.getAsJsonObject("ear");
    JsonObject together = ear.getAsJsonObject("together");
    assertEquals(3.0103, together.get("aboveLouder").getAsDouble(), 1e-6);
    assertEquals("[0.027,0.037]", together.get("onsetsApart").toString());
    assertEquals(0.006, together.get("noticeable").getAsDouble());
    assertEquals(5, ear.getAsJsonObject("distance").get("metres").getAsDouble());
    assertEquals(0.01456, ear.getAsJsonObject("distance").get("delay").getAsDouble(), 1e-5);
    assertTrue(json.getAsJsonObject("ear").get("note").getAsString().contains("estimate"));
    assertEquals(4, json.getAsJsonObject("ear").getAsJsonArray("sources").size());
  }

  @Test
  void seats_and_costs_are_kept_with_a_plan_and_other_seats_can_be_tried() throws IOException {
    Path score = folder.resolve("lantern.musicxml");
    Files.copy(Path.of(LANTERN), score);
    Path plan = folder.resolve("lantern.json");
    assertEquals(
        0, command("split", score, "--seats", SEATS, "--plan", plan.toString()).exitCode());
    String kept = Ran.command("preview", plan.toString(), "--explain").out();
    assertTrue(kept.contains("5.0 m, 14.6 ms") && kept.contains("fast notes"), kept);
    String moved = Ran.command("preview", plan.toString(), "--seats", "Flute 1: 1 6.5").out();
    assertTrue(moved.contains("1.0 m, 2.9 ms"), moved);
  }

  @Test
  void a_players_file_gives_seats_and_the_option_others() throws IOException {
    Path players = folder.resolve("players.json");
    Files.writeString(
        players,
        """
        {"format": "stafette-players", "version": 1, "players": [
          {"name": "Flute 1", "techniques": [], "seat": {"across": -2, "back": 3.5}},
          {"name": "Flute 2", "techniques": [], "seat": {"across": 1, "back": 7.5}}]}
        """);
    String out = lantern("preview", "--players-file", players.toString()).out();
    assertTrue(out.contains("5.0 m, 14.6 ms"), out);
    String moved =
        lantern("preview", "--players-file", players.toString(), "--seats", "Flute 2: 0 3.5").out();
    assertTrue(moved.contains("2.0 m, 5.8 ms"), moved);
  }

  @Test
  void a_seat_for_nobody_or_of_no_figures_is_refused() {
    assertRefused("Tuba has a seat but is none of the players", "Tuba: 1 2");
    assertRefused("--seats \"Flute 1: here\": write a player and metres", "Flute 1: here");
    assertRefused("metres across and back", "Flute 1: 1 -2");
    assertRefused("metres across and back", "1 2");
    assertRefused("two seats", "Flute 1: 1 2; FLUTE 1: 2 2");
  }

  private static void assertRefused(String says, String seats) {
    Ran ran = lantern("split", "--seats", seats);
    assertEquals(Commands.WRONG_USE, ran.exitCode(), ran.out());
    assertTrue(ran.err().contains(says), ran.err());
  }

  private static int sumOf(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    int sum = 0;
    while (matcher.find()) {
      sum += Integer.parseInt(matcher.group(1));
    }
    return sum;
  }

  private static Ran lantern(String command, String... more) {
    return command(command, Path.of(LANTERN), more);
  }

  private static Ran command(String command, Path score, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of(
                command, score.toString(), "--part", "Piano", "--staff", "1", "--bars", "5-16"));
    args.addAll(List.of("--players", "Flute 1, Flute 2, Clarinet 1"));
    args.addAll(Arrays.asList(more));
    return Ran.command(args.toArray(String[]::new));
  }
}
