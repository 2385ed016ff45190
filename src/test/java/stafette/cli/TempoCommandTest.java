package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The command that holds tempo against the number of players, on the smallest sample. */
class TempoCommandTest {
  @Test
  void the_table_has_a_row_for_each_tempo_and_a_column_for_each_number_of_players() {
    Ran ran = tempo("--tempi", "80-120/20");
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    String table = ran.out().substring(ran.out().indexOf("  tempo"), ran.out().indexOf("\n- no"));
    List<String> rows = table.lines().map(row -> row.replaceAll("  +", "|")).toList();
    assertEquals("|tempo|1 player|2 players|3 players", rows.get(0));
    assertTrue(rows.get(1).matches("\\|quarter = 80\\|-\\|\\d+ %\\|\\d+ %"), rows.get(1));
    assertTrue(rows.get(2).startsWith("|quarter = 100|"), rows.get(2));
    assertTrue(rows.get(3).startsWith("|quarter = 104, now|"), rows.get(3));
    assertEquals("|quarter = 120|-|-|-", rows.get(4));
    assertEquals(5, rows.size());
  }

  @Test
  void below_it_stand_the_fastest_tempo_the_fewest_players_the_window_and_the_odds() {
    String out = tempo("--tempi", "100-110/10").out();
    assertTrue(out.contains("Fastest    1 player at none of these tempi\n"), out);
    assertTrue(out.contains("           2 players up to quarter = 114: Flute 1, Flute 2\n"), out);
    assertTrue(out.contains("Fewest     2 players at quarter = 104: Flute 1, Flute 2\n"), out);
    assertTrue(out.contains("Tempo      holds from quarter = 41"), out);
    assertTrue(
        out.contains("Share      about 95 of 100 manage the hardest part; no published figure\n"),
        out);
  }

  @Test
  void without_a_plan_at_the_present_tempo_it_says_why_and_ends_with_1() {
    Ran ran = tempo("--tempi", "100-130/30", "--tempo", "130");
    assertEquals(Commands.FINDINGS, ran.exitCode());
    assertTrue(
        ran.out().contains("Fewest     all together can't play it at quarter = 130\n"), ran.out());
    assertTrue(ran.out().contains("are beyond the peak"), ran.out());
    assertFalse(ran.out().contains("Share  "), ran.out());
  }

  @Test
  void where_time_runs_out_a_question_mark_stands_and_nothing_is_claimed() {
    Ran ran = tempo("--tempi", "80-110/10", "--time", "0.001");
    assertEquals(Commands.FINDINGS, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("?  "), ran.out());
    assertTrue(ran.out().contains("? not known in the time set (--time)"), ran.out());
  }

  @Test
  void the_json_has_the_same_figures() {
    Ran ran = tempo("--tempi", "100-110/10", "--json");
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
    assertEquals("stafette-tempo", json.get("format").getAsString());
    assertEquals("quarter = 104", json.get("present").getAsString());
    assertEquals(3, json.getAsJsonArray("rows").size());
    assertEquals(2, json.getAsJsonObject("fewest").get("players").getAsInt());
    JsonObject three = json.getAsJsonArray("fastest").get(2).getAsJsonObject();
    assertEquals("quarter = 114", three.get("tempo").getAsString());
    assertTrue(three.get("proven").getAsBoolean());
    assertTrue(json.get("oddsAtHeadroom").getAsDouble() < json.get("odds").getAsDouble());
  }

  @Test
  void tempi_that_are_none_are_refused() {
    Ran ran = tempo("--tempi", "fast");
    assertEquals(Commands.WRONG_USE, ran.exitCode());
    assertTrue(ran.err().contains("--tempi \"fast\": write SLOWEST-FASTEST"), ran.err());
  }

  private static Ran tempo(String... more) {
    return LanternRun.run("tempo", more);
  }
}
