package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.MusicXmlReader;
import stafette.score.Dynamic;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.time.Span;

/** What is said of joins on the command line. */
class JoinsTest {
  private static final String PAIR = "Flute 1, Trumpet 1";
  private static final String IN_PP = "trumpet in B-flat ppp against flute p";
  private static final String IN_MF = "trumpet in B-flat p against flute mf";

  /** The score has pp at bar 7, mf from bar 9 and f from bar 13. */
  @Test
  void what_is_to_be_done_at_joins_is_listed_once_with_its_places() {
    String out = preview(PAIR).out();
    assertTrue(out.contains("\nJoins      " + IN_PP + " (at 7.1)\n"), out);
    assertTrue(out.contains("\n           " + IN_MF + " (at 9.1, 11.1)\n"), out);
    assertFalse(out.contains("accent"), "who leaves keeps it, as always");
  }

  @Test
  void where_nothing_is_to_be_done_nothing_is_said() {
    String out = preview("Flute 1, Flute 2").out();
    assertFalse(out.contains("Joins"), out);
  }

  @Test
  void an_explanation_has_a_row_for_each_join_instead() {
    String out = preview(PAIR, "--explain").out();
    assertFalse(out.contains("\nJoins      "), out);
    assertTrue(out.contains("\nJoins\n\n"), out);
    String rows = out.substring(out.indexOf("\nJoins\n\n"));
    for (String place : List.of("7.1", "9.1", "11.1", "13.1", "15.1")) {
      assertTrue(rows.contains("\n  " + place + " "), place + rows);
    }
    assertTrue(
        rows.contains(IN_MF + "; the accent stays with who leaves; nothing covers it"), rows);
  }

  @Test
  void a_whole_beat_of_one_repeated_note_together_flams() {
    String out = preview("Flute 1, Flute 2", "--overlap", "4..4").out();
    assertTrue(out.contains("4 repeated notes together flam, 27 to 37 ms apart"), out);
  }

  @Test
  void the_json_has_the_join_of_each_handoff_with_dynamics_to_be_written() {
    JsonObject json = JsonParser.parseString(preview(PAIR, "--json").out()).getAsJsonObject();
    for (JsonElement each : json.getAsJsonArray("handoffs")) {
      JsonObject join = each.getAsJsonObject().getAsJsonObject("join");
      assertEquals("kept by leaving", join.get("accent").getAsString());
      assertEquals(10, join.getAsJsonObject("balance").get("decibel").getAsDouble());
      assertEquals(0, join.get("attacksBeside").getAsInt());
      assertTrue(join.get("flam").isJsonNull());
      assertEquals(0, join.getAsJsonArray("cuts").size());
    }
    JsonObject join =
        json.getAsJsonArray("handoffs").get(1).getAsJsonObject().getAsJsonObject("join");
    JsonObject balance = join.getAsJsonObject("balance");
    assertEquals("trumpet in B-flat", balance.get("louder").getAsString());
    assertEquals("mf", balance.get("written").getAsString());
    assertEquals("p", balance.get("louderPlays").getAsString());
    assertEquals("mf", balance.get("softerPlays").getAsString());
    assertEquals(IN_MF, join.getAsJsonArray("toDo").get(0).getAsString());
  }

  @Test
  void a_plan_that_is_written_balanced_has_the_louder_instrument_softer(@TempDir Path folder)
      throws Exception {
    for (boolean balanced : List.of(false, true)) {
      Path file = folder.resolve(balanced + ".musicxml");
      List<String> more = new ArrayList<>(List.of("-o", file.toString()));
      more.addAll(balanced ? List.of("--balance") : List.of());
      LanternRun.run("split", LanternRun.FILE, "5-16", PAIR, more.toArray(String[]::new));
      Score written = MusicXmlReader.read(Files.readAllBytes(file)).score();
      Set<Dynamic> trumpet = dynamics(written, "Trumpet 1");
      assertEquals(
          balanced
              ? Set.of(Dynamic.PPP, Dynamic.P, Dynamic.MP)
              : Set.of(Dynamic.P, Dynamic.MF, Dynamic.F),
          trumpet);
    }
  }

  /** From bar 5 to 16. */
  private static Set<Dynamic> dynamics(Score score, String part) {
    Span line = new Span(score.bars().get(4).span().start(), score.bars().get(15).span().end());
    return score.part(part).orElseThrow().voices().stream()
        .flatMap(voice -> voice.within(line).stream())
        .map(Stroke::dynamic)
        .collect(Collectors.toSet());
  }

  private static Ran preview(String players, String... more) {
    return LanternRun.run("preview", LanternRun.FILE, "5-16", players, more);
  }
}
